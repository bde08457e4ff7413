package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published densities of solutions, reached by mixing a dry solid with water. */
class SolutionsTest {
    private static final double AIR = 0.0012;

    /** NBS Circular C440 (1942), in air at 20 °C. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(resources = "sucrose-checks.csv", numLinesToSkip = 1)
    void sucrose(String brix, String quantity, double published) {
        double percent = Double.parseDouble(brix.replace(" Brix", ""));
        Contents syrup = solution(Samples.SUGAR, percent);
        double inAir = (syrup.density() - AIR) / (1 - AIR / 8.4);
        if (quantity.startsWith("lb per US gal")) {
            assertThat(inAir * 3785.411784 / 453.59237).isCloseTo(published, within(0.001));
        } else {
            assertThat(1e6 / inAir / 3785.411784).isCloseTo(published, within(0.05));
        }
        assertThat(syrup.massPercent(syrup.sugarG())).isCloseTo(percent, within(1e-9));
    }

    /** USP 29-NF 24, Syrup: 850 g of sucrose in 1000 ml has a specific gravity of not less than 1.30. */
    @Test
    void officialSyrup() {
        Contents syrup =
                Samples.analysis(null, null, "85", null, null, null, null).ofMl();
        assertThat(syrup.density() / EthanolWater.density(0)).isBetween(1.30, 1.33);
        assertThat(syrup.massPercent(syrup.sugarG())).isBetween(64.0, 65.0);
    }

    /** Antokolskaya et al. (1964), in Mohos (2010), table A2.2: saturated at 20 °C 1332.7 kg/m³. */
    @Test
    void saturatedSyrup() {
        assertThat(SucroseSolution.density(203.9 / 303.9)).isCloseTo(1.3327, within(0.004));
    }

    /** The apparent volume is that of the polynomial, also for next to no sugar. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.1, 0.5, 0.7})
    void sucroseVolumeFollowsItsDensity(double w) {
        double water = (1 - w) / 0.9982012;
        assertThat(water + w * SucroseSolution.apparentVolume(w))
                .isCloseTo(1 / SucroseSolution.density(w), within(1e-12));
        assertThat(SucroseSolution.apparentVolume(0)).isCloseTo(SucroseSolution.apparentVolume(1e-9), within(1e-9));
    }

    /** Poradnik fizykochemiczny (WNT 1974); g per l as printed there, half a unit of the density's last digit apart. */
    @ParameterizedTest(name = "{0} %")
    @CsvFileSource(resources = "salt-densities.csv", numLinesToSkip = 1)
    void salt(double percent, double density, double gramsPerLitre) {
        Contents brine = solution(Samples.SALT, percent);
        assertThat(1000 * brine.density()).isCloseTo(density, within(0.05));
        assertThat(10 * brine.per100Ml(brine.saltG())).isCloseTo(gramsPerLitre, within(0.03));
        assertThat(brine.estimated()).isFalse();
    }

    /** CRC Handbook (citric) and a producer's sheet after Lange and Sinks 1930 (malic). */
    @ParameterizedTest(name = "{0} {1} %")
    @CsvFileSource(resources = "acid-densities.csv", numLinesToSkip = 1)
    void acids(String acid, double percent, double density) {
        boolean citric = acid.startsWith("citric");
        Contents solution = solution(citric ? Samples.CITRIC : Samples.MALIC, percent);
        assertThat(solution.density()).isCloseTo(density, within(citric ? 0.00005 : 0.0005));
        assertThat(solution.estimated()).isFalse();
    }

    /** Other acid counts as citric acid, in volume as in acidity; CRC Handbook: 20 % citric acid 1.0858 g/ml. */
    @Test
    void otherAcidCountsAsCitric() {
        Contents acid = new Contents(1, 0.6, 0, 0, 0, 0, 0, 1, 0, false);
        Contents other = acid.withVolume(VolumeModel.volume(acid), 0, false);
        Contents solution = Mixtures.mix(List.of(other.times(10), Samples.CITRIC.times(10), Contents.water(80)));
        assertThat(solution.density()).isCloseTo(1.0858, within(0.00005));
        assertThat(solution.acidityAsCitricG()).isCloseTo(20, within(1e-12));
    }

    /** 1 kg of sugar and 1 kg of water: 1626 ml of 50 °Bx (derived from the ICUMSA polynomial). */
    @Test
    void syrupByMass() {
        Contents syrup = Mixtures.mix(List.of(Samples.SUGAR.times(1000), Contents.water(1000)));
        assertThat(syrup.volumeMl()).isCloseTo(1626, within(0.5));
        assertThat(syrup.massPercent(syrup.sugarG())).isCloseTo(50, within(1e-9));
    }

    /** A cup of sugar (200 g, USDA 19335) and a cup of water (236.59 ml): 45.9 °Bx. */
    @Test
    void syrupByVolume() {
        Contents syrup = Mixtures.mix(List.of(Samples.SUGAR.times(200), Samples.WATER_ML.times(236.5882365)));
        assertThat(syrup.massPercent(syrup.sugarG())).isCloseTo(45.9, within(0.05));
    }

    /** The same through ml of sugar with its bulk density: the bulk is not the volume of the solution. */
    @Test
    void bulkDensityTurnsCupsIntoGramsOnly() {
        Contents bulk = Samples.analysis("0.8454", null, "84.54", null, null, null, null)
                .ofMl();
        assertThat(bulk.massG()).isCloseTo(0.8454, within(1e-12));
        assertThat(bulk.volumeMl()).isCloseTo(0.8454 * 0.631, within(0.001));
        Contents typed =
                Samples.analysis("0.8454", null, "100", null, null, null, null).ofGram();
        assertThat(typed.volumeMl()).isCloseTo(Samples.SUGAR.volumeMl(), within(1e-12));
        assertThat(typed.sugarG()).isEqualTo(1);
    }

    /** 20 g of salt in 80 ml of water is 20 % by mass but 23 % by volume. */
    @Test
    void saltByMassAndByVolume() {
        Contents brine = Mixtures.mix(List.of(Samples.SALT.times(20), Samples.WATER_ML.times(80)));
        assertThat(brine.massPercent(brine.saltG())).isCloseTo(20, within(0.05));
        assertThat(brine.per100Ml(brine.saltG())).isCloseTo(23, within(0.05));
    }

    private static Contents solution(Contents solid, double percent) {
        return Mixtures.mix(List.of(solid.times(percent), Contents.water(100 - percent)));
    }
}
