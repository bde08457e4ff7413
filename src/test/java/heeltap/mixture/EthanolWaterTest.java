package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class EthanolWaterTest {
    private static final double SIXTY_FAHRENHEIT = (60 - 32) / 1.8;
    private static final double AIR = 0.0012;
    private static final double POUND_G = 453.59237;
    private static final double GALLON_ML = 3785.411784;

    /** Published densities and strengths, each with its source in the file. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvFileSource(resources = "ethanol-densities.csv", numLinesToSkip = 1)
    void agreesWithPublishedTables(String input, double value, String quantity, double published) {
        switch (input + ", " + quantity) {
            case "% vol 20C, density kg/m3 20C" ->
                assertThat(1000 * EthanolWater.density(EthanolWater.massFraction(value, 20)))
                        .isCloseTo(published, within(0.006));
            // older tables than OIML R 22: they differ from it by up to 0.00007
            case "% mass, density g/ml 20C" ->
                assertThat(EthanolWater.density(value / 100)).isCloseTo(published, within(0.00008));
            case "% vol at 15.56C, % by weight" ->
                assertThat(100 * EthanolWater.massFraction(value, SIXTY_FAHRENHEIT))
                        .isCloseTo(published, within(0.005));
            case "% vol at 15.56C, specific gravity in air 15.56/15.56C" ->
                assertThat(specificGravityInAir(EthanolWater.massFraction(value, SIXTY_FAHRENHEIT)))
                        .isCloseTo(published, within(0.0001));
            // read off by interpolation in its source
            case "% vol 20C, g ethanol per 100 g" ->
                assertThat(100 * EthanolWater.massFraction(value, 20)).isCloseTo(published, within(0.04));
            case "% vol 20C, g ethanol per 100 ml" ->
                assertThat(value * Contents.ETHANOL_DENSITY).isCloseTo(published, within(0.005));
            default -> throw new AssertionError("no check for " + input + ", " + quantity);
        }
    }

    private static double specificGravityInAir(double massFraction) {
        return (EthanolWater.density(massFraction, SIXTY_FAHRENHEIT) - AIR)
                / (EthanolWater.density(0, SIXTY_FAHRENHEIT) - AIR);
    }

    /** 27 CFR 30.63 to 30.65; its own older tables agree with OIML R 22 within 0.03 %. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            30.64 | wine gallons per lb, 190 proof             | 0.14718
            30.64 | proof gallons per lb, 190 proof            | 0.27964
            30.64 | proof gallons of 81000 lb at 190 proof     | 22650.8
            30.64 | proof gallons of 1000 lb at 200 proof      | 302.58
            30.64 | lb of water to cut 1000 lb from 200 to 190 | 82.03
            30.65 | lb per wine gallon, 190 proof              | 6.79434
            30.65 | lb per proof gallon, 190 proof             | 3.57597
            30.63 | proof gallons of 60378 lb at 190 proof     | 16884.1
            30.63 | proof gallons of 321.5 lb at 86 proof      | 35.1
            """)
    void agreesWithTheGaugingManual(String section, String quantity, double published) {
        double computed = switch (quantity) {
            case "wine gallons per lb, 190 proof" -> 1 / poundsPerGallon(190);
            case "proof gallons per lb, 190 proof" -> proofGallons(1, 190);
            case "proof gallons of 81000 lb at 190 proof" -> proofGallons(81000, 190);
            case "proof gallons of 1000 lb at 200 proof" -> proofGallons(1000, 200);
            case "lb of water to cut 1000 lb from 200 to 190" ->
                1000 / EthanolWater.massFraction(95, SIXTY_FAHRENHEIT) - 1000;
            case "lb per wine gallon, 190 proof" -> poundsPerGallon(190);
            case "lb per proof gallon, 190 proof" -> 1 / proofGallons(1, 190);
            case "proof gallons of 60378 lb at 190 proof" -> proofGallons(60378, 190);
            case "proof gallons of 321.5 lb at 86 proof" -> proofGallons(321.5, 86);
            default -> throw new AssertionError(quantity);
        };
        double digits = published == 35.1 ? 0.05 : 0;
        assertThat(computed).as(section).isCloseTo(published, within(0.0003 * published + digits));
    }

    private static double poundsPerGallon(double proof) {
        double fraction = EthanolWater.massFraction(proof / 2, SIXTY_FAHRENHEIT);
        double inAir = (EthanolWater.density(fraction, SIXTY_FAHRENHEIT) - AIR) / (1 - AIR / 8.4);
        return inAir * GALLON_ML / POUND_G;
    }

    private static double proofGallons(double pounds, double proof) {
        return pounds / poundsPerGallon(proof) * proof / 100;
    }

    /** 1 l of water and 1 l of ethanol, computed two ways: by volumes and by the density of the mixture. */
    @Test
    void contractsOnMixing() {
        double water = 998.20;
        double ethanol = 789.24;
        double together = EthanolWater.volume(water, ethanol);
        assertThat(EthanolWater.contraction(water, ethanol)).isCloseTo(2000 - together, within(0.01));
        assertThat(together).isBetween(1920.0, 1940.0);
        assertThat((water + ethanol) / EthanolWater.density(ethanol / (water + ethanol)))
                .isCloseTo(together, within(1e-9));
        assertThat(EthanolWater.contraction(100, 0)).isZero();
    }

    @Property
    void strengthAndMassFractionAreInverse(
            @ForAll @DoubleRange(min = 0, max = 100) double abv,
            @ForAll @DoubleRange(min = -20, max = 40) double celsius) {
        double back = EthanolWater.abvPercent(EthanolWater.massFraction(abv, celsius), celsius);
        assertThat(back).isCloseTo(abv, within(1e-9));
    }
}
