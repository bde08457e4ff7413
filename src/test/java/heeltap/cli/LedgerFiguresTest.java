package heeltap.cli;

import static heeltap.cli.WrittenBar.Reviewed.number;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.WrittenBar.Reviewed;
import heeltap.document.CellValue;
import heeltap.quantity.Exact;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures that an accountant sets beside each other agree to the cent. Constructed, in thirds so that all is rounded. */
class LedgerFiguresTest {
    @TempDir
    private Path folder;

    private WrittenBar bar;

    @BeforeEach
    void write() {
        bar = new WrittenBar()
                .file(
                        "book/settings.csv",
                        "Setting|Value",
                        "currency|EUR",
                        "menu prices include tax|no",
                        "drink cost price|fifo",
                        "stock value price|fifo")
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Group|Measure|Par",
                        "Gin|Spirits|ml|9000",
                        "Rum|Spirits|ml|9000",
                        "Tonic|Soft|ml|9000",
                        "Lime|Fresh|each|90")
                .file("book/drinks.csv", "Drink|Price|Fixed cost", "Gin tonic|10|", "Rum lime|11|", "Crisps|3|1")
                .file(
                        "book/specs.csv",
                        "Item|Ingredient|Amount|Unit",
                        "Gin tonic|Gin|50|ml",
                        "Gin tonic|Tonic|150|ml",
                        "Rum lime|Rum|50|ml",
                        "Rum lime|Lime|1|each")
                .file(
                        "2026-09/sales.csv",
                        "Date|Item|Quantity|Net",
                        "2026-09-02|Gin tonic|31|307.77",
                        "2026-09-02|Rum lime|17|181.31",
                        "2026-09-02|Crisps|10|30")
                .file(
                        "2026-10/sales.csv",
                        "Date|Item|Quantity|Net",
                        "2026-10-02|Gin tonic|37|366.66",
                        "2026-10-02|Rum lime|13|139.99",
                        "2026-10-02|Crisps|20|60")
                .file(
                        "2026-09/invoices.csv",
                        "Supplier|Invoice|Date|Product|Pack|Quantity|Line total",
                        "Hof|1|2026-09-03|Gin|70cl|9|100.03",
                        "Hof|1|2026-09-03|Rum|70cl|9|110.09",
                        "Hof|1|2026-09-03|Tonic|1 l|17|19.99",
                        "Hof|1|2026-09-03|Lime|each|90|31.13")
                .file(
                        "2026-10/invoices.csv",
                        "Supplier|Invoice|Date|Product|Pack|Quantity|Line total",
                        "Hof|2|2026-10-03|Gin|70cl|1|12.01",
                        "Hof|2|2026-10-03|Rum|70cl|3|37.03")
                .file("2026-09/stock-opening.csv", "Ingredient|Count", "Gin|0", "Rum|0", "Tonic|0", "Lime|0")
                .file("2026-09/stock.csv", "Ingredient|Count", "Gin|4711", "Rum|5417", "Tonic|12117", "Lime|71")
                .file("2026-10/stock.csv", "Ingredient|Count", "Gin|3571", "Rum|6997", "Tonic|6550", "Lime|55");
    }

    private static Exact sum(Reviewed review, String table, String column) {
        return review.rows(table).stream().map(row -> number(row, column)).reduce(Exact.ZERO, Exact::plus);
    }

    private static Exact steps(Reviewed review, String measure) {
        return review.rows("changes").stream()
                .filter(row -> CellValue.of(measure).equals(row.get("measure")))
                .map(row -> number(row, "amount"))
                .reduce(Exact.ZERO, Exact::plus);
    }

    private static Optional<Exact> step(Reviewed review, String measure, CellValue effect) {
        return review.rows("changes").stream()
                .filter(row -> CellValue.of(measure).equals(row.get("measure")) && effect.equals(row.get("effect")))
                .map(row -> number(row, "amount"))
                .findFirst();
    }

    /** Ten bags of crisps at 1 more; with these counts the rounded lines come to a cent more than their rounded sum. */
    @Test
    void theChainOfCostEndsInThePrintedStock() {
        Reviewed september = bar.review(folder, "2026-09");
        Reviewed october = bar.review(folder, "2026-10");
        assertThat(steps(october, "cost of goods"))
                .isEqualTo(sum(october, "stock", "actual_cost")
                        .minus(sum(september, "stock", "actual_cost"))
                        .plus(Exact.of(10)));
        assertThat(number(october.row("controls", "steps = difference of cost of goods"), "difference"))
                .isEqualTo(Exact.ZERO);
    }

    @Test
    void oneEffectReadsTheSameInEveryChain() {
        Reviewed review = bar.review(folder);
        for (Map<String, CellValue> row : review.rows("changes")) {
            CellValue effect = Optional.ofNullable(row.get("effect")).orElseThrow();
            if (CellValue.of("margin").equals(row.get("measure"))) {
                assertThat(number(row, "amount"))
                        .as(effect.toString())
                        .isEqualTo(step(review, "net sales", effect)
                                .orElse(Exact.ZERO)
                                .minus(step(review, "cost of goods", effect).orElse(Exact.ZERO)));
            }
        }
    }

    /** 71 limes less 13 are 58, of which 55 are left; of gin 4711 + 700 - 1850 = 3561 and ten too many. */
    @Test
    void missingAndSurplusStandApartAndASurplusOrdersNoLess() {
        Reviewed review = bar.review(folder);
        assertThat(review.findings())
                .anyMatch(finding ->
                        finding.startsWith("Lime, counted by the piece: 3 missing beyond spec and recorded losses"));
        assertThat(number(review.row("stock", "Gin"), "unexplained")).isEqualTo(Exact.of(-10));
        // November has 30 days to October's 31
        assertThat(number(review.row("stock", "Gin"), "expected_use").times(Exact.of(31)))
                .isEqualTo(Exact.of(1850L * 30));
    }

    /** The oldest gin of the 3571 ml left is of September's invoice. */
    @Test
    void aLayerOfTheOpeningStockKnowsItsInvoice() {
        Map<String, CellValue> gin = bar.review(folder).row("ingredients", "Gin");
        assertThat(gin)
                .containsEntry("price_basis", CellValue.of("fifo"))
                .containsEntry("supplier", CellValue.of("Hof"))
                .containsEntry("invoice", CellValue.of("1"))
                .containsEntry("file", CellValue.of("2026-09/invoices.csv"))
                .containsEntry("row", CellValue.of(2));
    }

    /** Crisps have a fixed cost and are in no group of goods: 366.66 + 139.99 of 566.65. */
    @Test
    void theTotalPercentDividesByTheSalesOfTheGoods() {
        Reviewed review = bar.review(folder);
        var table = review.table("stock_groups");
        var total = table.total().orElseThrow();
        int percent =
                table.columns().stream().map(column -> column.key()).toList().indexOf("actual_cost_percent");
        Exact expected =
                sum(review, "stock", "actual_cost").times(Exact.HUNDRED).dividedBy(Exact.of("506.65"));
        assertThat(total.cells().get(percent)).isEqualTo(CellValue.of(expected));
    }
}
