package heeltap.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {
    private static final Units UNITS = Units.standard();

    /** NIST Handbook 44, Appendix C; the rows carry their source. */
    @Test
    void factorsAreThoseOfThePublishedTables() {
        List<CSVRecord> rows = Table.read("units.csv");
        assertThat(rows).hasSize(12);
        for (CSVRecord row : rows) {
            Measure measure = row.get("kind").equals("mass") ? Measure.G : Measure.ML;
            assertThat(get(row.get("unit"), measure).factor())
                    .as(row.get("unit"))
                    .isEqualTo(Exact.of(row.get("value")));
        }
    }

    /** UN/ECE Recommendation 20 prints rounded factors; ours agree to half a unit of the last printed digit. */
    @Test
    void factorsAgreeWithTheCodeList() {
        for (CSVRecord row : Table.read("unit_codes.csv")) {
            // Recommendation 20 prints two factors that are not the legal ones to the last digit
            BigDecimal printed = new BigDecimal(row.get("printed_factor"));
            Exact half = Exact.of(BigDecimal.ONE.movePointLeft(printed.scale()));
            Measure measure = row.get("unit").endsWith("g") || row.get("unit").equals("lb") ? Measure.G : Measure.ML;
            Exact difference = get(row.get("unit"), measure)
                    .factor()
                    .minus(Exact.of(printed))
                    .abs();
            assertThat(difference).as(row.toString()).isLessThanOrEqualTo(half);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ML, ml",
        "cL, cl",
        "L, l",
        "Litre, l",
        "liters, l",
        "LTR, l",
        "millilitres, ml",
        "Fl. Oz., fl oz",
        "floz, fl oz",
        "fl-oz, fl oz",
        "oz, fl oz",
        "OZ., fl oz",
        "ounces, fl oz",
        "uk fl oz, uk fl oz",
        "UK Pints, uk pint",
        "Pint, pint",
        "gal, gallon",
        "gallons, gallon",
        "qt, quart",
        "dashes, dash",
        "Dash, dash",
        "drops, drop",
        "bar spoon, bar spoon",
        "Barspoons, bar spoon",
        "bar-spoon, bar spoon",
        "tsp., tsp",
        "teaspoons, tsp",
        "Tablespoon, tbsp",
        "tbsps, tbsp",
        "cups, cup",
        "splash, splash",
        "shots, shot",
        "jigger, jigger",
        "pinch, pinch",
        "g, g",
        "grams, g",
        "gr, g",
        "Kilos, kg",
        "kg., kg",
        "mg, mg",
        "lbs, lb",
        "pounds, lb",
        "each, each",
        "pieces, each",
        "slice, each",
        "wedges, each",
        "peel, each",
        "sprigs, each",
        "leaves, each",
        "leaf, each",
        "twist, each",
        "Stück, each",
        "serve, serve",
        "serves, serve",
        "batch, batch",
        "batches, batch",
        "part, part",
        "parts, part"
    })
    void understands(String text, String name) {
        assertThat(get(text, Measure.ML).name()).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "z", "bottle", "case", "keg", "T", "c", "m", "xyz", "handful", "s", "%"})
    void refuses(String text) {
        assertThat(UNITS.find(text, Measure.ML)).isEmpty();
    }

    /** inputs.md: {@code oz} by the ingredient's measure. */
    @Test
    void anOunceIsFluidOrAvoirdupoisByTheIngredient() {
        assertThat(get("oz", Measure.ML).factor()).isEqualTo(Exact.of("29.5735295625"));
        assertThat(get("oz", Measure.G).factor()).isEqualTo(Exact.of("28.349523125"));
        assertThat(get("fl oz", Measure.G).factor()).isEqualTo(Exact.of("29.5735295625"));
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "dash, VOLUME, 0.92",
        "drop, VOLUME, 0.05",
        "bar spoon, VOLUME, 5",
        "splash, VOLUME, 5",
        "shot, VOLUME, 30",
        "jigger, VOLUME, 44.36",
        "pinch, MASS, 0.4"
    })
    void measuresWithoutAStandardHaveUsualSizes(String name, Unit.Kind kind, String factor) {
        assertThat(get(name, Measure.ML)).isEqualTo(new Unit(name, kind, Exact.of(factor)));
    }

    @Test
    void theBarMaySetItsOwnMeasures() {
        Units own = UNITS.with("Dash", Exact.of("0.8"))
                .with("oz", Exact.of(30))
                .with("pinch", Exact.of("0.3"))
                .with("pump", Exact.of(7))
                .with("slice", Exact.of(2));
        assertThat(own.find("dashes", Measure.ML).orElseThrow().factor()).isEqualTo(Exact.of("0.8"));
        assertThat(own.find("fl oz", Measure.ML).orElseThrow().factor()).isEqualTo(Exact.of(30));
        assertThat(own.find("oz", Measure.G).orElseThrow().factor()).isEqualTo(Exact.of("28.349523125"));
        assertThat(own.find("pinch", Measure.G)).contains(new Unit("pinch", Unit.Kind.MASS, Exact.of("0.3")));
        assertThat(own.find("pumps", Measure.ML)).contains(new Unit("pump", Unit.Kind.VOLUME, Exact.of(7)));
        assertThat(own.find("slices", Measure.ML)).contains(new Unit("slice", Unit.Kind.VOLUME, Exact.of(2)));
        assertThat(own.find("wedge", Measure.ML).orElseThrow().name()).isEqualTo("each");
        assertThat(get("dash", Measure.ML).factor()).isEqualTo(Exact.of("0.92"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ml", "Litre", "g", "kg", "lb", "uk pint", "piece", "each", "serve", "batch", "part", ""})
    void standardsAreNotForSetting(String name) {
        assertThat(UNITS.isSettable(name)).isFalse();
        assertThatThrownBy(() -> UNITS.with(name, Exact.ONE)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aMeasureHoldsSomething() {
        assertThatThrownBy(() -> UNITS.with("dash", Exact.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Unit get(String text, Measure measure) {
        return UNITS.find(text, measure).orElseThrow(() -> new AssertionError("no unit: " + text));
    }
}
