package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import heeltap.quantity.Exact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class AlcoholTest {
    /** Servings that national bodies publish, each with its source in the file. */
    @ParameterizedTest(name = "{0}: {3}")
    @CsvFileSource(resources = "alcohol-grams.csv", numLinesToSkip = 1)
    void publishedServings(String name, double ml, double abv, String published) {
        Contents serving = spirit(abv).times(ml);
        double ethanolMl = ml * abv / 100;
        assertThat(serving.ethanolMl()).isCloseTo(ethanolMl, within(1e-9));
        if (published.contains("unit")) {
            double units = Double.parseDouble(published.replaceAll(" unit.*", ""));
            assertThat(serving.ethanolMl() / 10).isCloseTo(units, within(0.05));
            assertThat(Alcohol.standardDrinks(serving, 8)).isCloseTo(units, within(0.06));
        } else {
            double grams = Double.parseDouble(published.replace(" g", ""));
            // the Canadian serving of 43 ml is rounded up from 42.6 ml
            double rounding = name.contains("43 ml") ? 0.13 : 0.01;
            assertThat(serving.ethanolG()).isCloseTo(grams, within(rounding));
            assertThat(Alcohol.standardDrinks(serving, grams)).isCloseTo(1, within(0.01));
        }
    }

    /** Grams in a standard drink: Kalinowski and Humphreys 2016, Addiction 111:1293-1298. */
    @ParameterizedTest
    @CsvSource({
        "Iceland, 8, 3.50",
        "United Kingdom, 8, 3.50",
        "Australia, 10, 2.80",
        "France, 10, 2.80",
        "Germany, 10, 2.80",
        "Ireland, 10, 2.80",
        "Denmark, 12, 2.33",
        "Luxembourg, 12.8, 2.19",
        "Canada, 13.6, 2.06",
        "Chile, 14, 2.00",
        "United States, 14, 2.00",
        "Austria, 20, 1.40"
    })
    void threeUsOuncesOfEightyProof(String country, double grams, double drinks) {
        Contents serving = spirit(40).times(3 * 29.5735295625);
        assertThat(Alcohol.standardDrinks(serving, grams)).as(country).isCloseTo(drinks, within(0.005));
    }

    /** Irish reckoning: 35.5 ml at 40 % with 0.789 g/ml is 11.2038 g (derived). */
    @Test
    void legalGramsAreUnrounded() {
        Exact grams = Alcohol.legalGrams(spirit(40).times(35.5));
        assertThat(grams.toDouble()).isCloseTo(11.2038, within(1e-12));
        assertThat(Alcohol.legalGrams(Contents.NOTHING)).isEqualTo(Exact.ZERO);
    }

    /** Factors of Regulation (EU) 1169/2011, Annex XIV, from memory: 10 g of alcohol and 20 g of sugar. */
    @Test
    void energy() {
        Contents drink = new Contents(100, 98, 10, 20, 1, 0, 0, 0, 0, false);
        assertThat(Alcohol.energyKj(drink)).isCloseTo(290 + 340, within(1e-9));
        assertThat(Alcohol.energyKcal(drink)).isCloseTo(70 + 80, within(1e-9));
    }

    /** Published factors from citric: malic 1.047, tartaric 1.172 (geraldmcdonald.com, fruit juice acids). */
    @Test
    void acidEquivalents() {
        assertThat(1 / Samples.MALIC.acidityAsCitricG()).isCloseTo(1.047, within(0.0005));
        assertThat(1 / Samples.TARTARIC.acidityAsCitricG()).isCloseTo(1.172, within(0.0005));
        assertThat(Samples.CITRIC.acidityAsCitricG()).isEqualTo(1);
        Contents sour = new Contents(100, 98, 0, 8, 1, 0, 0, 1, 0, false);
        assertThat(sour.sugarToAcid()).hasValue(4);
        assertThat(Samples.WATER_ML.sugarToAcid()).isEmpty();
    }

    @Test
    void refusesAnEmptyStandardDrink() {
        assertThatIllegalArgumentException().isThrownBy(() -> Alcohol.standardDrinks(Contents.NOTHING, 0));
    }

    private static Contents spirit(double abv) {
        return Samples.analysis(null, Exact.ofPhysical(abv).toString(), null, null, null, null, null)
                .ofMl();
    }
}
