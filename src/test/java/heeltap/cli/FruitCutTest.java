package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.WrittenBar.Reviewed;
import heeltap.quantity.Exact;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A month of a bar that peels lemons at 0.40 for one drink and juices them for another. */
class FruitCutTest {
    @TempDir
    Path folder;

    private static WrittenBar bar(int twists, int sours, String percent) {
        return new WrittenBar()
                .file("book/settings.csv", "Setting|Value", "currency|EUR", "menu prices include tax|no")
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Measure|Juice ml|List price|List pack|Peel cost percent",
                        "Lemon|each|40|40|100|" + percent,
                        "Gin|ml||20|1 l|")
                .file(
                        "book/drinks.csv",
                        "Drink|Price|On menu from",
                        "Twist|5|2026-01-01",
                        "Sour|6|2026-01-01",
                        "Pressed|6|2026-01-01")
                .file(
                        "book/specs.csv",
                        "Item|Ingredient|Amount|Unit",
                        "Twist|Gin|50|ml",
                        "Twist|Lemon|1|peel",
                        "Sour|Gin|50|ml",
                        "Sour|Lemon|juice of 1/2|",
                        "Pressed|Lemon|juice of 1|")
                .file(
                        "2026-10/sales.csv",
                        "Item|Date|Qty|Net",
                        "Twist|2026-10-05|" + twists + "|" + 5 * twists,
                        "Sour|2026-10-06|" + sours + "|" + 6 * sours,
                        "Gin|2026-10-06|0|0");
    }

    /** Pressed is never sold. Sours juice half a lemon each; theoretical use is what had to be cut. */
    @ParameterizedTest
    @CsvSource({
        "30, 0, '', 1.4, 1.2, 30, 0",
        "30, 100, '', 1, 1.2, 50, 0",
        "30, 100, 50, 1.2, 1.14, 50, 0",
        "100, 50, '', 1.3, 1.2, 100, 1",
    })
    void onlyAsMuchPeelIsFreeAsTheMonthJuices(
            int twists, int sours, String percent, String twist, String sour, String lemons, int notices) {
        Reviewed reviewed = bar(twists, sours, percent).review(folder);
        assertThat(Reviewed.number(reviewed.row("drinks", "Twist"), "cost")).isEqualTo(Exact.of(twist));
        assertThat(Reviewed.number(reviewed.row("drinks", "Sour"), "cost")).isEqualTo(Exact.of(sour));
        assertThat(Reviewed.number(reviewed.row("stock", "Lemon"), "theoretical_use"))
                .isEqualTo(Exact.of(lemons));
        assertThat(reviewed.review().problems())
                .filteredOn(problem -> problem.reason().contains("was peeled"))
                .hasSize(notices);
    }
}
