package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import heeltap.quantity.Exact;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AnalysisTest {
    /** 40 % vol weighs 948.05 g/l (pharmacy ethanol-dilution table). */
    @Test
    void densityComesFromTheContents() {
        Contents spirit = Samples.SPIRIT_ML;
        assertThat(spirit.density()).isCloseTo(0.94805, within(0.00001));
        assertThat(spirit.abvPercent()).isCloseTo(40, within(1e-12));
        assertThat(spirit.volumeMl()).isEqualTo(1);
        assertThat(Samples.analysis(null, "100", null, null, null, null, null)
                        .ofMl()
                        .waterG())
                .isCloseTo(0, within(1e-12));
        assertThat(Samples.WATER_ML.massG()).isCloseTo(0.99820, within(0.000005));
        assertThat(Samples.analysis(null, null, "61.48", null, null, null, null)
                        .ofMl()
                        .massG())
                .as("1:1 syrup, ICUMSA polynomial")
                .isCloseTo(1.2296, within(0.0001));
    }

    @Test
    void typedDensityWins() {
        Contents liqueur =
                Samples.analysis("1.05", "20", "30", null, null, null, null).ofMl();
        assertThat(liqueur.massG()).isEqualTo(1.05);
        assertThat(liqueur.estimated()).isFalse();
        Contents gram =
                Samples.analysis("1.05", "20", "30", null, null, null, null).ofGram();
        assertThat(gram.volumeMl()).isCloseTo(1 / 1.05, within(1e-12));
        assertThat(gram.abvPercent()).isCloseTo(20, within(1e-9));
    }

    @Test
    void honeyIsALiquidAndSugarIsNot() {
        Contents honey = Samples.analysis("1.4329", null, "82.12", null, null, null, null)
                .ofGram();
        assertThat(honey.volumeMl()).isCloseTo(1 / 1.4329, within(1e-12));
        Contents sugar =
                Samples.analysis("0.8454", null, "99.8", null, null, null, null).ofGram();
        assertThat(sugar.volumeMl()).isLessThan(0.65);
        assertThat(sugar.estimated()).isFalse();
        assertThat(Samples.SUGAR.estimated()).isFalse();
        Analysis strongSyrup = Samples.analysis(null, null, "85", null, null, null, null);
        assertThat(strongSyrup.ofGram().estimated())
                .as("its volume is beyond the table")
                .isTrue();
    }

    @Test
    void nothingSaidIsMarked() {
        assertThat(Analysis.UNKNOWN.isUnknown()).isTrue();
        assertThat(Analysis.UNKNOWN.ofMl().unknownMl()).isEqualTo(1);
        assertThat(Analysis.UNKNOWN.ofGram().unknownMl()).isCloseTo(1.0018, within(0.0001));
        assertThat(Samples.analysis(null, null, "0", null, null, null, null)
                        .ofMl()
                        .estimated())
                .as("no sugar is something said")
                .isFalse();
    }

    @Test
    void takesWhatIsNotSaidFromAnother() {
        Analysis own = Samples.analysis("1.03", null, null, "5", null, null, null);
        Analysis table = new Analysis(
                Exact.of("1.02"),
                Exact.ONE,
                Exact.of(2),
                Exact.of(4),
                Exact.of(3),
                Exact.of(6),
                Exact.of(7),
                Exact.of(8));
        assertThat(own.orElse(table))
                .isEqualTo(new Analysis(
                        Exact.of("1.03"),
                        Exact.ONE,
                        Exact.of(2),
                        Exact.of(5),
                        Exact.of(3),
                        Exact.of(6),
                        Exact.of(7),
                        Exact.of(8)));
        assertThat(table.orElse(own)).isEqualTo(table);
        assertThat(Analysis.UNKNOWN.orElse(table)).isEqualTo(table);
    }

    @Test
    void saysWhatCannotBe() {
        assertThat(Samples.analysis("1.05", null, "120", null, null, null, null).faultPerMl())
                .contains("the sugar, acid, salt and alcohol in 100 ml weigh 120 g, the whole 105 g");
        assertThat(Samples.analysis(null, "60", "80", null, null, null, null).faultPerMl())
                .hasValueSatisfying(
                        fault -> assertThat(fault).contains("alone fill").contains("of 100 ml"));
        assertThat(Samples.analysis(null, null, "80", "30", null, null, null).faultPerGram())
                .contains("the sugar, acid, salt and alcohol in 100 g weigh 110 g, the whole 100 g");
        assertThat(Samples.analysis(null, "96", "60", null, null, null, null).faultPerGram())
                .isPresent();
        assertThat(Samples.analysis(null, "101", null, null, null, null, null).faultPerMl())
                .contains("the strength is above 100 % vol");
        assertThat(Samples.analysis(null, null, "-1", null, null, null, null).faultPerGram())
                .contains("a content is below 0");
        assertThat(Samples.analysis("-1", null, null, null, null, null, null).faultPerMl())
                .contains("the density is below 0");
        assertThat(Samples.analysis("0", null, null, null, null, null, null).faultPerGram())
                .contains("the density is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Samples.analysis(null, "101", null, null, null, null, null)
                        .ofMl())
                .withMessage("the strength is above 100 % vol");
        assertThat(Samples.analysis("1.23", "0", "61.5", "1", "1", "1", "1").faultPerMl())
                .isEmpty();
    }

    /** A ml and a g of the same liquid are the same liquid. */
    @Property(tries = 200)
    void mlAndGramAgree(@ForAll @IntRange(max = 60) int abv, @ForAll @IntRange(max = 40) int sugar) {
        Contents ml = Samples.analysis(null, "" + abv, "" + sugar, "1", null, null, "0.5")
                .ofMl();
        String perGram = Exact.ofPhysical(100 * ml.sugarG() / ml.massG()).toString();
        String citric = Exact.ofPhysical(100 * ml.citricG() / ml.massG()).toString();
        String salt = Exact.ofPhysical(100 * ml.saltG() / ml.massG()).toString();
        Contents gram = Samples.analysis(null, "" + abv, perGram, citric, null, null, salt)
                .ofGram();
        assertThat(gram.density()).isCloseTo(ml.density(), within(1e-9));
        assertThat(gram.abvPercent()).isCloseTo(abv, within(1e-7));
    }
}
