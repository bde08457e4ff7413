package heeltap.cli;

import static heeltap.cli.WrittenBar.Reviewed.number;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.WrittenBar.Reviewed;
import heeltap.document.CellValue;
import heeltap.document.LineChart;
import heeltap.quantity.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published stock examples through the whole program, from the files to the tables. */
class PublishedStockTest {
    @TempDir
    private Path folder;

    private static BigDecimal cents(Map<String, CellValue> row, String column) {
        return number(row, column).round(2, RoundingMode.HALF_UP);
    }

    /**
     * Standard against actual cost: hospitality course quiz HB 267 (worked example 08b; inputs and outputs seen). The
     * source counts in money; here one unit of goods costs 1.00. It gives net sales in all, shared here over the items as
     * one likes: 7210.0375 each.
     */
    @Test
    void standardAgainstActualCost() {
        WrittenBar bar = new WrittenBar()
                .file("book/settings.csv", "Setting|Value", "currency|USD", "menu prices include tax|no")
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Group|Measure|List price|List pack",
                        "Goods|Food|each|1.00|1 each")
                .file("book/drinks.csv", "Drink|Price|Category")
                .file("book/specs.csv", "Item|Ingredient|Amount|Unit")
                .file("2026-10/sales.csv", "Item|Quantity|Net")
                .file("2026-10/stock-opening.csv", "Ingredient|Count|Unit", "Goods|6415.60|each")
                .file("2026-10/stock.csv", "Ingredient|Count|Unit", "Goods|6852.65|each")
                .file(
                        "2026-10/invoices.csv",
                        "Supplier|Invoice number|Date|Product|Pack|Quantity|Line total",
                        "Grocer|1|2026-10-05|Goods|1 each|19950.30|19950.30");
        String[][] items = {
            {"A", "580", "4.45"}, {"B", "285", "6.20"}, {"C", "600", "4.15"}, {"D", "200", "6.00"},
            {"E", "475", "5.95"}, {"F", "320", "7.05"}, {"G", "545", "6.10"}, {"H", "200", "6.95"}
        };
        for (String[] item : items) {
            bar.row("book/drinks.csv", "Item " + item[0] + "|20|Food")
                    .row("book/specs.csv", "Item " + item[0] + "|Goods|" + item[2] + "|each")
                    .row("2026-10/sales.csv", "Item " + item[0] + "|" + item[1] + "|7210.0375");
        }
        Reviewed review = bar.review(folder);
        Map<String, CellValue> group = review.row("stock_groups", "Food");
        assertThat(cents(group, "theoretical_cost")).isEqualTo("17834.75");
        assertThat(cents(group, "theoretical_cost_percent")).isEqualTo("30.92");
        assertThat(cents(group, "actual_cost")).isEqualTo("19513.25");
        assertThat(cents(group, "actual_cost_percent")).isEqualTo("33.83");
        assertThat(cents(group, "unexplained_cost")).isEqualTo("1678.50");
        assertThat(cents(group, "net_sales")).isEqualTo("57680.30");
        assertThat(sum(review, "sold")).isEqualTo(Exact.of(3205));
        assertThat(sum(review, "total_margin")).isEqualTo(Exact.of("39845.55"));
        assertThat(number(group, "actual_cost_percent")
                        .minus(number(group, "theoretical_cost_percent"))
                        .round(2, RoundingMode.HALF_UP))
                .isEqualTo("2.91");
    }

    private static Exact sum(Reviewed review, String column) {
        return review.rows("drinks").stream().map(row -> number(row, column)).reduce(Exact.ZERO, Exact::plus);
    }

    /** Sales of 11340 less cost of goods under FIFO: 4140 of gross margin (worked example 08c, seen). */
    @Test
    void leavesThePrintedMargin() {
        Reviewed review = openStax("fifo").review(folder);
        Exact sales = number(review.row("drinks", "Camera"), "net_sales");
        assertThat(sales).isEqualTo(Exact.of(11340));
        assertThat(sales.minus(number(review.row("stock", "Spy camera"), "actual_cost")))
                .isEqualTo(Exact.of(4140));
    }

    /**
     * OpenStax, Principles of Accounting vol. 1, 10.1 to 10.3 (worked example 08c; inputs and outputs seen): 150 at 21,
     * bought 225 at 27 and 210 at 33, 285 left. Printed: FIFO 7200 and 8955; the average of 8283 and 7872 comes from the
     * unit rounded to 27.62, exactly they are 8284.62 and 7870.38 (computed). The latest price is not in the source.
     */
    @ParameterizedTest
    @CsvSource({"fifo,7200.00,8955.00", "average,8284.62,7870.38", "latest,6750.00,9405.00"})
    void valuesStock(String rule, String costOfGoods, String closing) {
        Map<String, CellValue> line = openStax(rule).review(folder).row("stock", "Spy camera");
        assertThat(cents(line, "opening_value")).isEqualTo("3150.00");
        assertThat(cents(line, "purchases_value")).isEqualTo("13005.00");
        assertThat(cents(line, "actual_cost")).isEqualTo(costOfGoods);
        assertThat(cents(line, "closing_value")).isEqualTo(closing);
    }

    private static WrittenBar openStax(String rule) {
        return new WrittenBar()
                .file(
                        "book/settings.csv",
                        "Setting|Value",
                        "currency|USD",
                        "menu prices include tax|no",
                        "stock value price|" + rule)
                .file("book/ingredients.csv", "Ingredient|Measure|List price|List pack", "Spy camera|each|21|1 each")
                .file("book/drinks.csv", "Drink|Price", "Camera|36")
                .file("book/specs.csv", "Item|Ingredient|Amount|Unit", "Camera|Spy camera|1|each")
                .file(
                        "2026-07/sales.csv",
                        "Date|Item|Quantity|Net",
                        "2026-07-05|Camera|120|4320",
                        "2026-07-15|Camera|180|7020")
                .file("2026-07/stock-opening.csv", "Ingredient|Count|Unit", "Spy camera|150|each")
                .file("2026-07/stock.csv", "Ingredient|Count|Unit", "Spy camera|285|each")
                .file(
                        "2026-07/invoices.csv",
                        "Supplier|Invoice number|Date|Product|Pack|Quantity|Unit price",
                        "Maker|1|2026-07-10|Spy camera|1 each|225|27",
                        "Maker|2|2026-07-25|Spy camera|1 each|210|33");
    }

    /** Turnover of the same year, cost of goods over average stock (worked example 08e, seen): 1.19 under FIFO. */
    @Test
    void turnsStockOver() {
        Map<String, CellValue> line = openStax("fifo").review(folder).row("stock", "Spy camera");
        assertThat(cents(line, "turnover")).isEqualTo("1.19");
        // the print's 306.79 days are of a year and of rounded figures; of July's 31 days: 31 / 1.18959 (computed)
        assertThat(cents(line, "days_in_stock")).isEqualTo("26.06");
    }

    /** Constructed: the same month last year is compared too, and three months or more give a chart. */
    @Test
    void comparesWithTheSameMonthLastYear() {
        WrittenBar bar = openStax("fifo");
        for (String month : List.of("2025-07", "2026-05", "2026-06")) {
            bar.file(month + "/sales.csv", "Date|Item|Quantity|Net", month + "-03|Camera|100|3000");
        }
        Reviewed review = bar.review(folder);
        assertThat(review.rows("changes").stream().map(row -> row.get("from")).distinct())
                .containsExactly(CellValue.of("2026-06"), CellValue.of("2025-07"));
        // 300 at 37.80 against 100 at 30.00: (37.8 - 30) x 300 of price, 200 x 30 of volume
        assertThat(review.rows("changes").stream()
                        .filter(row -> CellValue.of("2025-07").equals(row.get("from"))
                                && CellValue.of("net sales").equals(row.get("measure")))
                        .map(row -> cents(row, "amount").toPlainString()))
                .containsExactly("2340.00", "0.00", "6000.00", "0.00", "0.00");
        List<LineChart> charts = review.review().document().sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(LineChart.class::isInstance)
                .map(LineChart.class::cast)
                .toList();
        assertThat(charts).hasSize(1);
        LineChart chart = charts.get(0);
        assertThat(chart.name()).isEqualTo("cost-by-month");
        assertThat(chart.labels()).containsExactly("July 2025", "May 2026", "June 2026", "July 2026");
        // only July was counted: the other months have no actual cost
        assertThat(chart.lines().get(0).values())
                .extracting(Optional::isPresent)
                .containsExactly(false, false, false, true);
        assertThat(chart.lines().get(1).values()).allMatch(Optional::isPresent);
    }

    @Test
    void twoMonthsGiveNoChart() {
        WrittenBar bar = openStax("fifo").file("2026-06/sales.csv", "Date|Item|Quantity|Net", "2026-06-03|Camera|1|30");
        assertThat(bar.review(folder).review().document().sections().stream()
                        .flatMap(section -> section.blocks().stream())
                        .filter(LineChart.class::isInstance))
                .isEmpty();
    }
}
