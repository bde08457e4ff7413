package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.BookBuilder;
import heeltap.quantity.Measure;
import heeltap.source.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AllergensTest {
    /** The fourteen of Regulation (EU) 1169/2011, Annex II, as food law pages print them, and words of other languages. */
    @ParameterizedTest
    @CsvSource({
        "Cereals containing gluten, gluten",
        "Barley, gluten",
        "Crustaceans, crustaceans",
        "EGGS, eggs",
        "Fish, fish",
        "Peanuts, peanuts",
        "Soybeans, soybeans",
        "Milk, milk",
        "Nuts, nuts",
        "Nuts (almond), nuts",
        "Celery, celery",
        "Mustard, mustard",
        "Sesame seeds, sesame",
        "Sulphur dioxide and sulphites, sulphites",
        "Lupin, lupin",
        "Molluscs, molluscs",
        "Schalenfrüchte, nuts",
        "Œufs, eggs",
        "Anidride solforosa, sulphites",
    })
    void wordsOfTheList(String word, String entry) {
        assertThat(Allergens.listed(word)).containsExactly(entry);
    }

    @Test
    void aWordThatIsNotOnTheListIsANoticeAndIsKept() {
        Costs costs = Bar.costs(new BookBuilder()
                .ingredient(
                        "Odd foam", Measure.ML, cells -> cells.list("1", "1").allergens("Eggs", "Coconut"))
                .drink("Odd")
                .line("Odd", "Odd foam", "10", "ml"));
        assertThat(costs.problems())
                .extracting(Problem::reason)
                .containsExactly(
                        "\"Coconut\" is none of the fourteen allergens of Regulation (EU) 1169/2011, Annex II.");
        assertThat(costs.drink("Odd").allergens()).containsExactly("Coconut", "Eggs");
    }
}
