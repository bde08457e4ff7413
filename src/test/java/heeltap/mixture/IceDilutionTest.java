package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IceDilutionTest {
    /** 2 fl oz of 40 % spirit at 20 °C and half an ounce of ice or ice water: americastestkitchen.com, 2023-12-20. */
    private static final double SPIRIT_G = 56.07;

    private static final double HALF_OUNCE_G = 14.1748;
    private static final Contents SPIRIT = Samples.SPIRIT_ML.times(SPIRIT_G / Samples.SPIRIT_ML.massG());

    /** Published: 4.7 kJ to melt half an ounce of ice. */
    @Test
    void heatToMeltHalfAnOunce() {
        assertThat(HALF_OUNCE_G * IceDilution.LATENT_HEAT / 1000).isCloseTo(4.7, within(0.05));
    }

    /** Published: 61 °F after water of 0 °C, 30 °F after ice of 0 °C; the handbook's specific heat gives 1 °F more. */
    @Test
    void publishedEndTemperatures() {
        double handbook = SpecificHeat.of(Samples.SPIRIT_ML, 10);
        assertThat(handbook).isBetween(4.05, 4.15);
        assertThat(endFahrenheit(handbook, 1)).isCloseTo(61, within(0.5));
        assertThat(endFahrenheit(handbook, 0)).isCloseTo(30, within(1.5));
        assertThat(endFahrenheit(3.9, 0))
                .as("with the specific heat fitted to it")
                .isCloseTo(30, within(0.5));
    }

    /** Where half an ounce, so much of it water already, leaves the spirit: all of it melts, wished colder than that. */
    private static double endFahrenheit(double specificHeat, double wetness) {
        IceConditions conditions = new IceConditions(20, -20, HALF_OUNCE_G / SPIRIT_G, 0, wetness, 0, specificHeat);
        IceDilution.Balance balance = IceDilution.balance(SPIRIT, conditions);
        assertThat(balance.enoughIce()).isFalse();
        assertThat(balance.waterG()).isCloseTo(HALF_OUNCE_G, within(1e-9));
        return 32 + 1.8 * balance.endC();
    }

    /** The balance turned round: to end where melting half an ounce ends, half an ounce melts. */
    @Test
    void waterAndEndTemperatureAreInverse() {
        double end = (endFahrenheit(3.9, 0) - 32) / 1.8;
        IceConditions justEnough = new IceConditions(20, end, HALF_OUNCE_G / SPIRIT_G * (1 + 1e-12), 0, 0, 0, 3.9);
        IceDilution.Balance balance = IceDilution.balance(SPIRIT, justEnough);
        assertThat(balance.waterG()).isCloseTo(HALF_OUNCE_G, within(1e-6));
        assertThat(balance.endC()).isEqualTo(end);
    }

    /** Beside ice a drink gets no colder than it freezes: 0 °C for juice, -4 °C for 10 % vol (engineeringtoolbox.com). */
    @Test
    void noColderThanItFreezes() {
        IceDilution.Balance juice = IceDilution.balance(Samples.LIME_ML.times(100), IceConditions.SHAKEN);
        assertThat(juice.endC()).isCloseTo(0, within(1e-9));
        IceConditions colder = IceConditions.of(20, -10, 3);
        Contents wine = Samples.analysis(null, "14", null, null, null, null, null)
                .ofMl()
                .times(100);
        IceDilution.Balance balance = IceDilution.balance(wine, colder);
        Contents diluted = Mixtures.mix(List.of(wine, Contents.water(balance.waterG())));
        assertThat(diluted.abvPercent()).isBetween(9.0, 11.0);
        assertThat(balance.endC()).isCloseTo(FreezingPoint.of(diluted.abvPercent()), within(1e-9));
        assertThat(FreezingPoint.of(10)).isEqualTo(-4);
        assertThat(FreezingPoint.of(35)).isEqualTo(-19);
        assertThat(FreezingPoint.of(90)).isEqualTo(-37);
    }

    /** Derived independently from the same balance (reference recalculation, no published values). */
    @ParameterizedTest
    @CsvSource({
        "4.2, 20,  0,   0,    0, 25.18",
        "4.2, 20, -4,   0,    0, 34.88",
        "4.2, 20, -4, -18,    0, 17.44",
        "3.9, 20, -2,   0,    0, 27.96",
        "3.9,  5, -2,   0,    0, 10.20",
        "3.9, 20, -2,   0, 2000, 34.04"
    })
    void hundredGramsOnHundredAndFiftyOfIce(
            double specificHeat, double start, double end, double ice, double heat, double melted) {
        Contents drink = SPIRIT.times(100 / SPIRIT.massG());
        IceConditions conditions = new IceConditions(start, end, 1.5, ice, 0, heat / 100, specificHeat);
        assertThat(IceDilution.water(drink, conditions)).isCloseTo(melted, within(0.005));
        assertThat(IceDilution.water(drink.times(2), conditions)).isCloseTo(2 * melted, within(0.01));
    }

    /** Clinging water goes into the drink without cooling it by melting. */
    @Test
    void wetIceDilutesMore() {
        Contents drink = Contents.water(100);
        IceConditions wet = new IceConditions(20, 0, 1.5, 0, 0.1, 0, 4.2);
        assertThat(IceDilution.water(drink, wet)).isCloseTo(15 + 25.18, within(0.005));
        // to -4 °C by hand: (100 × 4.2 × 24 + 135 × 2.1 × 4 + 15 × 4.2 × 4) ÷ (333.55 - 2.1 × 4) = 35.26
        IceConditions colder = new IceConditions(20, -4, 1.5, 0, 0.1, 0, 4.2);
        Contents spirit = SPIRIT.times(100 / SPIRIT.massG());
        assertThat(IceDilution.water(spirit, colder)).isCloseTo(15 + 35.26, within(0.005));
    }

    @Test
    void sayWhenTheIceIsNotEnough() {
        Contents drink = Contents.water(100);
        IceDilution.Balance balance = IceDilution.balance(drink, IceConditions.of(20, 0, 0.1));
        assertThat(balance.enoughIce()).isFalse();
        assertThat(balance.waterG()).isEqualTo(10);
        // (100 × 4.2 × 20 - 10 × 333.55) ÷ (110 × 4.2), with the specific heat of water at 10 °C
        assertThat(balance.endC()).isCloseTo(10.96, within(0.05));
        assertThat(IceDilution.balance(drink, IceConditions.SHAKEN).enoughIce()).isTrue();
        IceConditions frozen = new IceConditions(0, 0, 1, -18, 0, 0, null);
        assertThat(IceDilution.water(drink, frozen)).as("no ice melts").isZero();
    }

    /** Against the usual water of common practice: shaken 30, stirred 22, thrown 20, built 10 %. */
    @Test
    void defaultsComeNearTheUsualWater() {
        Contents drink = Samples.SPIRIT_ML.times(100);
        assertThat(percent(drink, IceConditions.SHAKEN)).isBetween(25.0, 38.0);
        assertThat(percent(drink, IceConditions.STIRRED)).isBetween(20.0, 30.0);
        assertThat(percent(drink, IceConditions.THROWN)).isBetween(17.0, 27.0);
        assertThat(percent(drink, IceConditions.BUILT)).isBetween(5.0, 12.0);
    }

    @Test
    void refusesWhatCannotBe() {
        Stream.<Runnable>of(
                        () -> IceConditions.of(0, 5, 1),
                        () -> IceConditions.of(20, 0, -1),
                        () -> new IceConditions(20, 0, 1, 1, 0, 0, null),
                        () -> new IceConditions(20, 0, 1, 0, 1.1, 0, null),
                        () -> new IceConditions(20, 0, 1, -5, 0.1, 0, null),
                        () -> new IceConditions(20, 0, 1, 0, 0, -1, null),
                        () -> new IceConditions(20, 0, 1, 0, 0, 0, 0.0))
                .forEach(each -> assertThatIllegalArgumentException().isThrownBy(each::run));
    }

    /** Perry, table 2-205, cal/(g K). */
    @ParameterizedTest
    @CsvSource({"0.1, 23, 1.02", "0.249, 3, 1.02", "0.6, 3, 0.805", "0.6, 41, 0.875", "0.8, 23, 0.727", "1, 41, 0.621"})
    void specificHeats(double fraction, double celsius, double calories) {
        assertThat(SpecificHeat.ofEthanolWater(fraction, celsius) / 4.184).isCloseTo(calories, within(0.0005));
    }

    @Test
    void sugarLowersTheSpecificHeat() {
        assertThat(SpecificHeat.of(Contents.NOTHING, 20)).isCloseTo(4.18, within(0.01));
        assertThat(SpecificHeat.of(Samples.SUGAR, 20)).isCloseTo(1.4, within(1e-9));
        Contents syrup = Samples.analysis("1.2296", null, "61.48", null, null, null, null)
                .ofMl();
        assertThat(SpecificHeat.of(syrup, 20)).isBetween(2.7, 2.9);
    }

    private static double percent(Contents drink, IceConditions conditions) {
        return 100 * IceDilution.water(drink, conditions) / drink.volumeMl();
    }
}
