package heeltap.cli;

import static heeltap.cli.WrittenBar.Reviewed.isBlank;
import static heeltap.cli.WrittenBar.Reviewed.number;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.WrittenBar.Reviewed;
import heeltap.document.CellValue;
import heeltap.quantity.Exact;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A row that was read and fits nothing is set aside with its money; what it speaks of is not reckoned. Constructed. */
class RowsSetAsideLaterTest {
    @TempDir
    private Path folder;

    private Reviewed review;

    @BeforeEach
    void review() {
        review = new WrittenBar()
                .file("book/settings.csv", "Setting|Value", "currency|EUR", "menu prices include tax|no")
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Group|Measure|Bottle ml|List pack",
                        "Gin|Spirits|ml|700|",
                        "Vermouth|Wine|ml|750|",
                        "Lager|Beer|ml||30 L keg",
                        "Cola|Soft|ml||")
                .file("book/drinks.csv", "Drink|Price", "Martini|10", "Beer|5")
                .file(
                        "book/specs.csv",
                        "Item|Ingredient|Amount|Unit",
                        "Martini|Gin|50|ml",
                        "Martini|Vermouth|10|ml",
                        "Beer|Lager|300|ml")
                .file("book/names.csv", "As written|Means|In", "Pfand|(ignore)|invoices")
                .file(
                        "2026-10/sales.csv",
                        "Date|Item|Quantity|Net",
                        "2026-10-02|Martini|10|100",
                        "2026-10-02|Beer|50|250")
                .file(
                        "2026-10/invoices.csv",
                        "Supplier|Invoice|Date|Product|Pack|Quantity|Line total|Discount",
                        "Hof|1|2026-10-03|Gin|70cl|2|28|",
                        "Hof|1|2026-10-03|Vermouth||6|48|",
                        "Hof|1|2026-10-03|Pfand||1|3|",
                        "Hof|2|2026-10-04|Lager|30 L keg|2|150|",
                        "Hof|3|2026-10-05|Lager|1 l|6|18|",
                        "Hof|3|2026-10-05|Cola|1 l|6|6|")
                .file(
                        "2026-10/stock-opening.csv",
                        "Ingredient|Count|Unit",
                        "Gin|2|bottle",
                        "Vermouth|2|bottle",
                        "Lager|0|keg",
                        "Cola|0|ml")
                .file(
                        "2026-10/stock.csv",
                        "Ingredient|Count|Unit",
                        "Gin|3|bottle",
                        "Vermouth|3|bottle",
                        "Lager|1.5|keg",
                        "Cola|1|keg")
                .review(folder);
    }

    private Map<String, CellValue> file(String name) {
        return review.row("files", "2026-10/" + name);
    }

    @Test
    void aLineWithoutAPackIsSetAsideWithItsMoney() {
        Map<String, CellValue> row = review.row("set_aside", "2026-10/invoices.csv");
        assertThat(number(row, "row")).isEqualTo(Exact.of(3));
        assertThat(number(row, "money")).isEqualTo(Exact.of(48));
        assertThat(number(row, "quantity")).isEqualTo(Exact.of(6));
        Map<String, CellValue> file = file("invoices.csv");
        assertThat(number(file, "set_aside")).isEqualTo(Exact.ONE);
        assertThat(number(file, "set_aside_money")).isEqualTo(Exact.of(48));
        assertThat(number(file, "used")).isEqualTo(Exact.of(4));
        assertThat(number(file, "used_money")).isEqualTo(Exact.of(202));
        assertThat(review.rows("invoices").get(0).get("finding").toString())
                .contains("Lines set aside because nothing says how much they hold: 1.");
    }

    @Test
    void itsIngredientHasNoActualUse() {
        Map<String, CellValue> vermouth = review.row("stock", "Vermouth");
        assertThat(isBlank(vermouth, "actual_use")).isTrue();
        assertThat(isBlank(vermouth, "unexplained")).isTrue();
        assertThat(number(vermouth, "closing")).isEqualTo(Exact.of(2250));
        assertThat(review.review().problems())
                .anyMatch(problem -> problem.reason().startsWith("A purchase of Vermouth was set aside"));
    }

    @Test
    void ignoredLinesAndLinesSetAsideAreBookedApart() {
        assertThat(number(review.row("journal", "Purchases not for stock"), "debit"))
                .isEqualTo(Exact.of(3));
        assertThat(number(review.row("journal", "Cost of goods (none)"), "debit"))
                .isEqualTo(Exact.of(48));
    }

    /** The last purchase by the litre says nothing of a keg: 1.5 x 30 l; of Cola nothing says what a keg holds. */
    @Test
    void aKegIsWhatTheLastKegHeld() {
        assertThat(number(review.row("stock", "Lager"), "closing")).isEqualTo(Exact.of(45_000));
        assertThat(isBlank(review.row("stock", "Cola"), "closing")).isTrue();
        Map<String, CellValue> row = review.row("set_aside", "2026-10/stock.csv");
        assertThat(row.get("reason")).isEqualTo(CellValue.of("Nothing says how much one keg of Cola holds."));
        assertThat(number(file("stock.csv"), "set_aside")).isEqualTo(Exact.ONE);
        assertThat(number(file("stock.csv"), "used_quantity")).isEqualTo(Exact.of("7.5"));
    }
}
