package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.WrittenBar.Reviewed;
import heeltap.quantity.Exact;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whose alcohol is known where something in the drink was described by nobody. */
class LegalAlcoholTest {
    @TempDir
    Path folder;

    /**
     * 700 ml of 40 % vol with 20 g of leaves or 20 ml of a liquid: 50 ml hold 20 × 0.789 g, 10 euros a gram. Where it is not known,
     * no price below the menu's 200 is suggested.
     */
    @ParameterizedTest
    @CsvSource({"g, 157.8", "ml, 200"})
    void dryGoodsThatNobodyDescribedHoldNoAlcohol(String measure, String floor) {
        Reviewed reviewed = new WrittenBar()
                .file(
                        "book/settings.csv",
                        "Setting|Value",
                        "currency|EUR",
                        "menu prices include tax|no",
                        "price step|0.10",
                        "legal lowest price per gram of alcohol|10")
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Measure|ABV|List price|List pack",
                        "Gin|ml|40|20|1 l",
                        "Dried leaves|" + measure + "||20|1000 " + measure)
                .file("book/preparations.csv", "Preparation|Measure|Loss percent", "Leaf gin|ml|0")
                .file("book/drinks.csv", "Drink|Price", "Leaf and ice|200")
                .file(
                        "book/specs.csv",
                        "Item|Ingredient|Amount|Unit",
                        "Leaf gin|Gin|700|ml",
                        "Leaf gin|Dried leaves|20|" + measure,
                        "Leaf and ice|Leaf gin|50|ml")
                .file("2026-10/sales.csv", "Item|Date|Qty|Net", "Leaf and ice|2026-10-05|10|2000")
                .review(folder);
        assertThat(Reviewed.number(reviewed.row("prices", "Leaf and ice"), "floor"))
                .isEqualTo(Exact.of(floor));
    }
}
