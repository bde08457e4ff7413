package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.BookBuilder;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.record.Method;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlassTest {
    private static Glass glass(Method method, String water) {
        BookBuilder builder = new BookBuilder()
                .ingredient("Gin", Measure.ML, cells -> cells.list("1", "1").with("abv", "40"))
                .ingredient(
                        "Sour mix",
                        Measure.ML,
                        cells -> cells.list("1", "1")
                                .with("citric", "4")
                                .with("malic", "2")
                                .with("sugar", "30")
                                .with("salt", "1"))
                .drink("Sour", cells -> (water.isEmpty() ? cells : cells.with("water", water)).method(method))
                .line("Sour", "Gin", "50", "ml")
                .line("Sour", "Sour mix", "50", "ml");
        return Bar.costs(builder).drink("Sour").glass();
    }

    /** Usual water by method, percent of the mixed volume: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "SHAKEN, '', 30",
        "STIRRED, '', 22",
        "THROWN, '', 20",
        "BUILT, '', 10",
        "BLENDED, '', 60",
        "NONE, '', 0",
        "SHAKEN, 12.5, 12.5",
        "NONE, 5, 5",
        "SHAKEN, 0, 0",
    })
    void waterIsTheDrinksOwnOrTheMethodsUsual(Method method, String water, double percent) {
        Glass glass = glass(method, water);
        assertThat(glass.waterPercent()).isEqualTo(percent);
        assertThat(glass.waterMl()).isCloseTo(glass.mixedMl() * percent / 100, within(1e-9));
        assertThat(glass.servedMl()).isCloseTo(glass.mixedMl() + glass.waterMl(), within(1.0));
    }

    @Test
    void whatIsInTheGlassIsWhatWentIn() {
        Glass glass = glass(Method.SHAKEN, "");
        assertThat(glass.alcoholG()).isCloseTo(50 * 0.4 * 0.78924, within(1e-9));
        assertThat(glass.standardDrinks(Exact.of(10))).isCloseTo(1.57848, within(1e-9));
        assertThat(glass.abvPercent()).isCloseTo(100 * 20 / glass.servedMl(), within(1e-9));
        assertThat(glass.sugarG()).isCloseTo(15, within(1e-9));
        assertThat(glass.acidG()).isCloseTo(3, within(1e-9));
        assertThat(glass.saltG()).isCloseTo(0.5, within(1e-9));
        // one gram of malic acid neutralises what 0.9552 g of citric acid does: equivalents 67.04 and 64.04
        assertThat(glass.acidityAsCitricG()).isCloseTo(2 + 64.04 / 67.04, within(1e-4));
        assertThat(glass.energyKcal()).isCloseTo(7 * 15.7848 + 4 * 15, within(1e-6));
    }
}
