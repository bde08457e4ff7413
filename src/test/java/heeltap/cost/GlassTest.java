package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.BookBuilder;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.record.IceWater;
import heeltap.record.Method;
import heeltap.record.Setting;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlassTest {
    private static Glass glass(Method method, String water, UnaryOperator<BookBuilder> settings) {
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
        return Bar.costs(settings.apply(builder)).drink("Sour").glass();
    }

    private static BookBuilder usual(BookBuilder builder) {
        return builder.set(Setting.WATER_FROM_ICE, IceWater.USUAL_PERCENT);
    }

    /** Usual water by method, percent of the mixed volume: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "SHAKEN, '', 30, METHOD",
        "STIRRED, '', 22, METHOD",
        "THROWN, '', 20, METHOD",
        "BUILT, '', 10, METHOD",
        "BLENDED, '', 60, METHOD",
        "NONE, '', 0, NOTHING",
        "SHAKEN, 12.5, 12.5, DRINK",
        "NONE, 5, 5, DRINK",
        "SHAKEN, 0, 0, DRINK",
    })
    void withoutHeatBalanceWaterIsTheDrinksOwnOrTheMethodsUsual(
            Method method, String water, double percent, WaterFrom from) {
        Glass glass = glass(method, water, GlassTest::usual);
        assertThat(glass.waterPercent()).isEqualTo(percent);
        assertThat(glass.waterFrom()).isEqualTo(from);
        assertThat(glass.endC()).isEmpty();
        assertThat(glass.waterMl()).isCloseTo(glass.mixedMl() * percent / 100, within(1e-9));
        assertThat(glass.servedMl()).isCloseTo(glass.mixedMl() + glass.waterMl(), within(1.0));
    }

    /**
     * 50 ml of 40 % vol worked by hand: 47.4025 g (948.05 kg/m³, OIML R 22) of 33.3 % by mass, specific heats between the
     * rows of Perry's table 2-205, ice of 333.55 J/g and 2.1 J/(g K). Stirred with 71.1 g of ice from 20 to -2 °C: (47.4025
     * × 4.0785 × 22 + 71.1 × 2.1 × 2) ÷ (333.55 - 8.4 + 4.2) = 13.82 g, 27.69 % of the volume. So too the others, with ice of
     * -18 °C, with 5 % clinging water and 2 kJ gained by 100 g, and built from 10 to 3 °C; spirit of -5 °C melts what its ice gives up on the way to -5 °C.
     */
    @ParameterizedTest
    @CsvSource({
        "STIRRED, 0, 0, 0, 20, 27.69, -2",
        "STIRRED, -18, 0, 0, 20, 11.34, -2",
        "STIRRED, 0, 5, 2, 20, 40.67, -2",
        "BUILT, 0, 0, 0, 20, 7.81, 3",
        "STIRRED, 0, 0, 0, -5, 4.63, -5",
    })
    void waterByHeatBalanceFollowsTheSettings(
            Method method, String ice, String wet, String heat, String start, double percent, double end) {
        BookBuilder builder = new BookBuilder()
                .ingredient("Gin", Measure.ML, cells -> cells.list("1", "1").with("abv", "40"))
                .drink("Neat", cells -> cells.method(method))
                .line("Neat", "Gin", "50", "ml")
                .set(Setting.ICE_STARTS_AT, Exact.of(ice))
                .set(Setting.WET_ICE_PERCENT, Exact.of(wet))
                .set(Setting.STIRRED_HEAT, Exact.of(heat))
                .set(Setting.LIQUIDS_START_AT, Exact.of(start));
        Glass glass = Bar.costs(builder).drink("Neat").glass();
        assertThat(glass.waterFrom()).isEqualTo(WaterFrom.HEAT_BALANCE);
        assertThat(glass.waterPercent()).isCloseTo(percent, within(0.01));
        assertThat(glass.endC()).hasValue(end);
        assertThat(glass.alcoholG()).isCloseTo(20 * 0.78924, within(1e-9));
    }

    /** The drink's own percent wins; a blender takes all its ice; of what nobody described no heat is known. */
    @Test
    void heatBalanceIsForDrinksThatAreKnown() {
        UnaryOperator<BookBuilder> same = builder -> builder;
        assertThat(glass(Method.SHAKEN, "12.5", same).waterFrom()).isEqualTo(WaterFrom.DRINK);
        assertThat(glass(Method.SHAKEN, "12.5", same).waterPercent()).isEqualTo(12.5);
        assertThat(glass(Method.SHAKEN, "", same).waterFrom()).isEqualTo(WaterFrom.HEAT_BALANCE);
        assertThat(glass(Method.BLENDED, "", same).waterPercent()).isEqualTo(60);
        assertThat(glass(Method.NONE, "", same).waterMl()).isZero();
        Glass unknown = Bar.costs(new BookBuilder()
                        .ingredient(
                                "Gin", Measure.ML, cells -> cells.list("1", "1").with("abv", "40"))
                        .priced("House mystery", Measure.ML, "1", "1")
                        .drink("Odd", cells -> cells.method(Method.SHAKEN))
                        .line("Odd", "Gin", "50", "ml")
                        .line("Odd", "House mystery", "10", "ml"))
                .drink("Odd")
                .glass();
        assertThat(unknown.waterFrom()).isEqualTo(WaterFrom.METHOD);
        assertThat(unknown.waterPercent()).isEqualTo(30);
    }

    @Test
    void whatIsInTheGlassIsWhatWentIn() {
        Glass glass = glass(Method.SHAKEN, "", builder -> builder);
        assertThat(glass.alcoholG()).isCloseTo(50 * 0.4 * 0.78924, within(1e-9));
        assertThat(glass.standardDrinks(Exact.of(10))).isCloseTo(1.57848, within(1e-9));
        assertThat(glass.abvPercent()).isCloseTo(100 * 20 / glass.servedMl(), within(1e-9));
        assertThat(glass.sugarG()).isCloseTo(15, within(1e-9));
        assertThat(glass.acidG()).isCloseTo(3, within(1e-9));
        assertThat(glass.saltG()).isCloseTo(0.5, within(1e-9));
        // one gram of malic acid neutralises what 0.9552 g of citric acid does: equivalents 67.04 and 64.04
        assertThat(glass.acidityAsCitricG()).isCloseTo(2 + 64.04 / 67.04, within(1e-4));
        assertThat(glass.sugarToAcid().orElseThrow()).isCloseTo(15 / (2 + 64.04 / 67.04), within(1e-3));
        assertThat(glass.per100Ml(glass.sugarG())).isCloseTo(1500 / glass.servedMl(), within(1e-9));
        assertThat(glass.energyKcal()).isCloseTo(7 * 15.7848 + 4 * 15, within(1e-6));
        assertThat(glass.energyKj()).isCloseTo(29 * 15.7848 + 17 * 15, within(1e-6));
    }
}
