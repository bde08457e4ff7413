package heeltap.cli;

import static heeltap.cli.WrittenBar.Reviewed.isBlank;
import static heeltap.cli.WrittenBar.Reviewed.number;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.WrittenBar.Reviewed;
import heeltap.document.CellValue;
import heeltap.quantity.Exact;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What must hold of every bar, on made-up ones, from the files to the tables. */
class StockPropertiesTest {
    private static final List<String> DRINKS = List.of("Sour", "Martini", "Pair", "Soda highball");
    private static final List<String> INGREDIENTS = List.of("Gin", "Vermouth", "Soda", "Lime", "Sugar");

    @TempDir
    private Path first;

    @TempDir
    private Path second;

    /** A bar of two months with preparations, a nested drink, gifts, credits, losses and part bottles. */
    private static WrittenBar bar(int seed, String rule) {
        Random random = new Random(seed);
        WrittenBar bar = new WrittenBar()
                .file(
                        "book/settings.csv",
                        "Setting|Value",
                        "currency|EUR",
                        "menu prices include tax|no",
                        "stock value price|" + rule,
                        "drink cost price|" + rule)
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Group|Measure|Density|Usable percent|List price|List pack|Bottle ml|Juice ml|Par",
                        "Gin|Spirits|ml||100|16.10|70cl|700||2100",
                        "Vermouth|Wine|ml||100|9.37|1 L|1000||1000",
                        "Soda|Soft|ml||100|11|24 x 200 mL|||4800",
                        "Lime|Fresh|each||90|17.30|case of 54||28|54",
                        "Sugar|Dry|g|0.85|100|12.10|10 kg|||")
                .file("book/preparations.csv", "Preparation|Makes|Unit", "Lime juice|950|ml", "Sour mix|1000|ml")
                .file(
                        "book/drinks.csv",
                        "Drink|Price|Category|Method",
                        "Sour|11|Cocktails|shaken",
                        "Martini|12|Cocktails|stirred",
                        "Pair|20|Cocktails|none",
                        "Soda highball|8|Cocktails|built")
                .file(
                        "book/specs.csv",
                        "Item|Ingredient|Amount|Unit|Waste percent",
                        "Lime juice|Lime|36|each|",
                        "Sour mix|Lime juice|600|ml|",
                        "Sour mix|Sugar|400|g|3",
                        "Sour|Gin|50|ml|",
                        "Sour|Sour mix|45|ml|7",
                        "Martini|Gin|60|ml|2",
                        "Martini|Vermouth|12.5|ml|",
                        "Pair|Sour|1|serve|",
                        "Pair|Martini|1|serve|",
                        "Soda highball|Gin|40|ml|",
                        "Soda highball|Soda|130|ml|15");
        month(bar, YearMonth.of(2026, 8), random, true);
        month(bar, YearMonth.of(2026, 9), random, false);
        return bar;
    }

    private static void month(WrittenBar bar, YearMonth month, Random random, boolean withOpening) {
        String folder = month + "/";
        bar.file(folder + "sales.csv", "Ticket|Date|Item|Quantity|Net|Kind");
        for (int i = 0; i < 25; i++) {
            int quantity = 1 + random.nextInt(6);
            boolean gift = random.nextInt(8) == 0;
            bar.row(
                    folder + "sales.csv",
                    String.join(
                            "|",
                            "T" + month + "-" + i,
                            month.atDay(2 + random.nextInt(26)).toString(),
                            DRINKS.get(random.nextInt(DRINKS.size())),
                            String.valueOf(quantity),
                            gift ? "0.00" : quantity * 9 + "." + (10 + random.nextInt(89)),
                            gift ? "complimentary" : "sale"));
        }
        bar.file(folder + "invoices.csv", "Supplier|Invoice number|Date|Product|Pack|Quantity|Unit price");
        String[] packs = {"6 x 70cl", "1 L", "24 x 200 mL", "case of 54", "10 kg"};
        for (int line = 0; line < 8; line++) {
            int of = line % INGREDIENTS.size();
            // days apart, so that "latest" does not hang on the order of rows
            bar.row(
                    folder + "invoices.csv",
                    String.join(
                            "|",
                            of < 2 ? "Kontor" : "Markt",
                            month + "-" + line,
                            month.atDay(3 + 3 * line).toString(),
                            INGREDIENTS.get(of),
                            packs[of],
                            String.valueOf(2 + 2 * random.nextInt(3)),
                            (9 + random.nextInt(80)) + "." + (10 + random.nextInt(89))));
        }
        if (withOpening) {
            counts(bar, folder + "stock-opening.csv", random);
        }
        counts(bar, folder + "stock.csv", random);
        bar.file(
                folder + "losses.csv",
                "Date|Item|Amount|Unit|Reason",
                month.atDay(4) + "|Gin|" + (1 + random.nextInt(2)) + "|bottle|breakage",
                month.atDay(9) + "|Sour|" + (1 + random.nextInt(3)) + "|serve|staff",
                month.atDay(11) + "|Lime|" + (1 + random.nextInt(9)) + "|each|spoiled",
                month.atDay(12) + "|Vermouth|0." + (1 + random.nextInt(9)) + "|l|transfer out",
                month.atDay(13) + "|Sugar|1|kg|transfer in");
    }

    private static void counts(WrittenBar bar, String path, Random random) {
        bar.file(
                path,
                "Ingredient|Count|Unit|Location",
                "Gin|" + random.nextInt(4) + "." + random.nextInt(10) + "|bottle|Bar",
                "Gin|" + (2 + 2 * random.nextInt(5)) + "|bottle|Cellar",
                "Vermouth|" + (2 + random.nextInt(3)) + "|bottle|Bar",
                "Soda|" + (2 + random.nextInt(3)) + "|case|Cellar",
                "Lime|" + (4 + random.nextInt(60)) + "|each|Bar",
                "Sugar|" + (2 + random.nextInt(6)) + "|kg|Bar",
                "Sour mix|" + 100 * (1 + random.nextInt(9)) + "|ml|Bar fridge");
    }

    @ParameterizedTest
    @CsvSource({"1,average", "2,fifo", "3,latest", "4,fifo", "5,average"})
    void nothingIsLostInMeasureOrMoney(int seed, String rule) {
        Reviewed review = bar(seed, rule).review(first);
        for (Map<String, CellValue> row : review.rows("stock")) {
            assertThat(isBlank(row, "actual_use")).isFalse();
            Exact used = number(row, "opening")
                    .plus(number(row, "purchases"))
                    .plus(number(row, "transfers"))
                    .minus(number(row, "closing"));
            assertThat(number(row, "actual_use")).isEqualTo(used);
            assertThat(number(row, "theoretical_use")
                            .plus(number(row, "recorded_losses"))
                            .plus(number(row, "unexplained")))
                    .isEqualTo(used);
            assertThat(cents(row, "actual_cost").plus(cents(row, "closing_value")))
                    .isEqualTo(cents(row, "opening_value")
                            .plus(cents(row, "purchases_value"))
                            .plus(cents(row, "transfers_value")));
            // what was used is worth its unit value, and its parts are worth the whole
            if (!used.isZero()) {
                assertWithinCents(number(row, "unit_value").times(used), cents(row, "actual_cost"), 2);
                assertWithinCents(
                        cents(row, "theoretical_cost")
                                .plus(cents(row, "unexplained_cost"))
                                .plus(number(row, "unit_value").times(number(row, "recorded_losses"))),
                        cents(row, "actual_cost"),
                        3);
            }
        }
        assertThat(review.rows("controls"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("holds")).isEqualTo(CellValue.of(true)));
    }

    /** Printed money is rounded figure by figure. */
    private static void assertWithinCents(Exact found, Exact expected, int cents) {
        assertThat(found.minus(expected).abs().times(Exact.HUNDRED)).isLessThanOrEqualTo(Exact.of(cents));
    }

    private static Exact cents(Map<String, CellValue> row, String column) {
        return Exact.of(number(row, column).round(2, RoundingMode.HALF_UP));
    }

    /** Tables that say nothing of where a row stood. */
    private static final List<String> PLACELESS = List.of(
            "stock",
            "stock_groups",
            "changes",
            "journal",
            "drinks",
            "prices",
            "preparations",
            "purchases",
            "deposits",
            "orders",
            "use_by_drink");

    private static void assertSame(Reviewed ours, Reviewed other, String... without) {
        for (String table : PLACELESS) {
            assertThat(ours.rows(table, without)).as(table).isEqualTo(other.rows(table, without));
        }
        assertThat(ours.rows("ingredients", "file", "row")).isEqualTo(other.rows("ingredients", "file", "row"));
    }

    @ParameterizedTest
    @CsvSource({"1,fifo", "2,average", "3,latest"})
    void theOrderOfFilesAndRowsChangesNothing(int seed, String rule) {
        WrittenBar bar = bar(seed, rule);
        assertSame(bar.shuffled(new Random(seed)).review(second), bar.review(first));
    }

    @ParameterizedTest
    @CsvSource({"1,average", "2,latest", "3,fifo"})
    void aLineOrACountInTwoPartsIsTheSame(int seed, String rule) {
        WrittenBar bar = bar(seed, rule);
        WrittenBar split = bar.replaced("2026-09/invoices.csv", row -> halves(row, 5))
                .replaced("2026-09/stock.csv", row -> halves(row, 1))
                .replaced("2026-08/stock.csv", row -> halves(row, 1));
        assertThat(split.body("2026-09/stock.csv"))
                .hasSize(2 * bar.body("2026-09/stock.csv").size());
        assertSame(split.review(second), bar.review(first), "lines");
    }

    private static List<List<String>> halves(List<String> row, int column) {
        List<String> half = new ArrayList<>(row);
        half.set(
                column,
                Exact.of(row.get(column))
                        .dividedBy(Exact.of(2))
                        .toSignificant(9)
                        .toPlainString());
        return List.of(half, half);
    }

    @ParameterizedTest
    @CsvSource({"1,average", "2,fifo"})
    void twiceTheSalesShouldUseTwiceAsMuch(int seed, String rule) {
        WrittenBar bar = bar(seed, rule);
        WrittenBar doubled = bar.changed("2026-09/sales.csv", row -> {
            List<String> twice = new ArrayList<>(row);
            twice.set(3, String.valueOf(2 * Integer.parseInt(row.get(3))));
            return twice;
        });
        Reviewed once = bar.review(first);
        Reviewed twice = doubled.review(second);
        for (String name : INGREDIENTS) {
            Exact use = number(once.row("stock", name), "theoretical_use");
            assertThat(use.isPositive()).isTrue();
            assertThat(number(twice.row("stock", name), "theoretical_use")).isEqualTo(use.times(Exact.of(2)));
            assertThat(number(twice.row("stock", name), "actual_use"))
                    .isEqualTo(number(once.row("stock", name), "actual_use"));
        }
    }

    @ParameterizedTest
    @CsvSource({"1,average", "2,fifo", "3,latest"})
    void aMonthOpensWithWhatTheOneBeforeClosedWith(int seed, String rule) {
        WrittenBar bar = bar(seed, rule);
        Reviewed august = bar.review(first, "2026-08");
        Reviewed september = bar.review(first, "2026-09");
        for (String name : INGREDIENTS) {
            Map<String, CellValue> closed = august.row("stock", name);
            Map<String, CellValue> opened = september.row("stock", name);
            assertThat(opened.get("opening")).isEqualTo(closed.get("closing"));
            assertThat(opened.get("opening_value")).isEqualTo(closed.get("closing_value"));
        }
        WrittenBar counted = bar.copy();
        counted.file("2026-09/stock-opening.csv", "Ingredient|Count|Unit|Location");
        bar.body("2026-08/stock.csv").forEach(row -> counted.row("2026-09/stock-opening.csv", String.join("|", row)));
        assertSame(counted.review(second), september);
    }
}
