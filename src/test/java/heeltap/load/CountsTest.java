package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static heeltap.load.MonthFixture.setAside;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.record.Month;
import org.junit.jupiter.api.Test;

/** Stock counts and losses. */
class CountsTest {
    @Test
    void readsCountsWithUnitsAndPlaces() {
        Month month = bar().file(
                        "stock.csv",
                        "Ingredient|Count|Unit|Location",
                        "Spirits",
                        "Gin|3.4|bottle|Back bar",
                        "Gin|2 bottles||Cellar",
                        "Rum|-1|bottle|",
                        "Rum||bottle|",
                        "Absinth|1|bottle|",
                        "Total|6.4||")
                .file("stock-opening.csv", "Ingredient|Count", "Gin|5")
                .load()
                .value();

        assertThat(month.closing())
                .extracting(c -> c.item() + " " + c.count() + " " + c.unit() + " " + c.location())
                .containsExactly("Gin 3.4 bottle Back bar", "Gin 2 bottles Cellar");
        assertThat(month.opening()).hasSize(1);
        assertThat(setAside(month))
                .containsExactly(
                        "5: The count is below zero (column B, Count). -1 null",
                        "6: The count is missing (column B, Count). null null",
                        "7: The name is not known (column A, Ingredient). 1 null");
        assertThat(month.files()).extracting(f -> f.kind()).containsExactly("stock opening", "stock");
    }

    @Test
    void readsLossesWithTheirReasons() {
        Month month = bar().file(
                        "losses.csv",
                        "Date|Item|Amount|Unit|Reason",
                        "2026-10-03|Gin|50|ml|Spill",
                        "2026-10-04|Negroni|1||returned",
                        "2026-10-04|Gin|1|bottle|gone with the wind",
                        "2026-09-04|Gin|1|bottle|Bruch",
                        "2026-10-09|Gin|1|bottle|transfer out")
                .load()
                .value();

        assertThat(month.losses())
                .extracting(l -> l.date() + " " + l.item() + " " + l.amount() + " " + l.unit() + " " + l.reason())
                .containsExactly(
                        "2026-10-03 Gin 50 ml SPILL",
                        "2026-10-04 Negroni 1  RETURNED",
                        "2026-10-09 Gin 1 bottle TRANSFER_OUT");
        assertThat(setAside(month))
                .containsExactly(
                        "4: The reason is not known (column E, Reason). 1 null",
                        "5: The row belongs to another month than 2026-10 (column A, Date). 1 null");
    }
}
