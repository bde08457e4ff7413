package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PublishedCompositionTest {
    @ParameterizedTest
    @CsvSource({
        "lime juice, lime juice",
        "'Lime  Juice, Fresh', lime juice",
        "FRESH LIME-JUICE, lime juice",
        "Zumo de limón, lemon juice",
        "Zitronensäure, citric acid",
        "Citric acid (anhydrous), citric acid",
        "Weißer Zucker, sugar",
        "Jus d’orange, orange juice",
        "Simple syrup (1:1), simple syrup 1:1",
        "2:1 syrup, rich syrup 2:1",
        "Soda water, water",
        "Gin 43 % vol, gin 43 % vol",
        "'Vodka (37,5%)', vodka 37.5 % vol",
        "'White Rum, 40% ABV', white rum 40 % vol"
    })
    void findsByTheWholeName(String name, String entry) {
        assertThat(PublishedComposition.find(name)).hasValueSatisfying(found -> {
            assertThat(found.name()).isEqualTo(entry);
            assertThat(found.source()).isNotBlank();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ginger beer",
                "Gin",
                "Vodka",
                "Lime",
                "Limes",
                "Lime juice cordial",
                "Orange juice concentrate",
                "Sloe gin 26 %",
                "Cream 36 %",
                "Lime juice 50 %",
                "Salted caramel",
                "Coconut water",
                "Tonic water",
                "Simple syrup",
                "Blood orange juice",
                "Brown sugar",
                "Sea salt solution 20 %",
                "Gin 143 %",
                "",
                "%"
            })
    void findsNothingByAPartOfAName(String name) {
        assertThat(PublishedComposition.find(name)).isEmpty();
    }

    /** Penniston et al. 2008: fresh lime 45.86 g/L citric acid; USDA 09160: 1.69 g sugars per 100 g. */
    @Test
    void limeJuice() {
        PublishedComposition lime = PublishedComposition.find("Lime juice").orElseThrow();
        assertThat(lime.measure()).isEqualTo(Measure.ML);
        assertThat(lime.values().citric()).isEqualTo(Exact.of("4.586"));
        assertThat(lime.values().malic()).as("not published").isNull();
        assertThat(lime.sources().get("Citric acid")).contains("Penniston");
        assertThat(lime.sources()).containsOnlyKeys("Density", "Sugar", "Citric acid");
        assertThat(Objects.requireNonNull(lime.in(Measure.G).sugar()).toDouble())
                .isCloseTo(1.69, within(0.005));
    }

    /** 1:1 by mass: 50 % of 1.2296 g/ml; what the table says and what the model gives agree. */
    @Test
    void syrups() {
        Contents syrup =
                PublishedComposition.find("syrup 1:1").orElseThrow().values().ofMl();
        assertThat(syrup.massPercent(syrup.sugarG())).isCloseTo(50, within(0.01));
        Contents rich =
                PublishedComposition.find("syrup 2:1").orElseThrow().values().ofMl();
        assertThat(rich.massPercent(rich.sugarG())).isCloseTo(66.67, within(0.01));
        assertThat(Solubility.beyond(rich)).isEmpty();
    }

    @Test
    void solidsTurnIntoEitherMeasure() {
        PublishedComposition salt = PublishedComposition.find("Salt").orElseThrow();
        assertThat(salt.in(Measure.G).ofGram().saltG()).isEqualTo(1);
        assertThat(salt.in(Measure.ML).ofMl().saltG()).isCloseTo(1.234, within(0.001));
        Analysis citric = PublishedComposition.find("citric acid").orElseThrow().in(Measure.ML);
        assertThat(citric.ofMl().citricG()).isCloseTo(1 / 0.6, within(0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> salt.in(Measure.EACH));
    }

    @Test
    void spiritHasTheDensityOfItsStrength() {
        Analysis gin = PublishedComposition.find("Gin 40 %").orElseThrow().values();
        assertThat(Objects.requireNonNull(gin.density()).toDouble()).isCloseTo(0.94805, within(0.00001));
        assertThat(gin.abvPercent()).isEqualTo(Exact.of(40));
        assertThat(gin.sugar()).isEqualTo(Exact.ZERO);
    }

    /** Every entry can be, has a source for each value, and its typed density is near that of its contents. */
    @Test
    void everyEntryHoldsTogether() {
        assertThat(PublishedTable.BUILT_IN.entries()).hasSizeGreaterThan(25).allSatisfy(entry -> {
            Analysis values = entry.values();
            boolean grams = entry.measure() == Measure.G;
            assertThat(grams ? values.faultPerGram() : values.faultPerMl()).isEmpty();
            assertThat(entry.sources()).isNotEmpty();
            assertThat(entry.sources().values()).noneMatch(String::isBlank);
            Contents one = grams ? values.ofGram() : values.ofMl();
            if (!one.isDry()) {
                assertThat(VolumeModel.volume(one)).isCloseTo(one.volumeMl(), within(0.1 * one.volumeMl()));
            }
        });
    }

    @Test
    void foldsWithoutTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(PublishedComposition.find("LIME JUICE")).isPresent();
            assertThat(PublishedComposition.find("GIN 40 %")).isPresent();
        } finally {
            Locale.setDefault(before);
        }
    }
}
