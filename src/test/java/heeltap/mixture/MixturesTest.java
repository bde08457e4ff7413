package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MixturesTest {
    private static final List<ToDoubleFunction<Contents>> MASSES = List.of(
            Contents::massG,
            Contents::ethanolG,
            Contents::sugarG,
            Contents::citricG,
            Contents::malicG,
            Contents::tartaricG,
            Contents::otherAcidG,
            Contents::saltG,
            Contents::unknownMl);

    @Test
    void mixesNothing() {
        assertThat(Mixtures.mix(List.of())).isEqualTo(Contents.NOTHING);
        assertThat(Mixtures.mix(List.of(Contents.NOTHING, Samples.LIME_ML, Contents.NOTHING)))
                .isEqualTo(Samples.LIME_ML);
    }

    /** A spirit cut with water, two ways: by Mixtures, and by the density that OIML R 22 gives at the mass fraction. */
    @Test
    void dilutesSpirit() {
        Contents cut = Mixtures.mix(List.of(Samples.SPIRIT_ML.times(700), Samples.WATER_ML.times(300)));
        double fraction = 700 * 0.4 * 0.78924 / cut.massG();
        assertThat(cut.density()).isCloseTo(EthanolWater.density(fraction), within(1e-12));
        assertThat(cut.abvPercent()).isCloseTo(EthanolWater.abvPercent(fraction, 20), within(1e-4));
        assertThat(cut.volumeMl()).isBetween(998.0, 999.0);
        assertThat(cut.abvPercent()).isCloseTo(28.04, within(0.005));
        assertThat(cut.estimated()).isFalse();
    }

    /** A sour mixed at once and by way of syrup: masses and volume agree. */
    @Test
    void nestingChangesNothing() {
        List<Contents> parts = List.of(
                Samples.SPIRIT_ML.times(50),
                Samples.LIME_ML.times(25),
                Samples.SUGAR.times(10),
                Samples.CITRIC.times(0.5),
                Contents.water(10));
        Contents syrup = Mixtures.mix(List.of(parts.get(2), parts.get(4)));
        Contents sour = Mixtures.mix(List.of(parts.get(3), parts.get(1)));
        Contents nested = Mixtures.mix(List.of(Mixtures.mix(List.of(syrup, sour)), parts.get(0)));
        assertSame(nested, Mixtures.mix(parts));
        assertThat(nested.estimated()).isFalse();
    }

    /** Against Young's way of adding up: each dissolved substance at the density of all of them together. */
    @Test
    void severalDissolvedSubstancesTwoWays() {
        Contents cordial = Mixtures.mix(List.of(Samples.SUGAR.times(40), Samples.CITRIC.times(5), Contents.water(55)));
        double together = 55 / 0.9982 + 40 * SucroseSolution.apparentVolume(0.45) + 5 * AcidSolution.CITRIC.at(0.30);
        assertThat(cordial.volumeMl()).isCloseTo(together, within(0.002 * together));
    }

    @Test
    void keepsWhatADensitySaysOfUnnamedSolids() {
        Contents cream =
                Samples.analysis("1.006", null, "2.81", null, null, null, null).ofMl();
        Contents mixed = Mixtures.mix(List.of(cream.times(30), Samples.WATER_ML.times(30)));
        assertThat(mixed.volumeMl()).isCloseTo(60, within(0.02));
        assertThat(mixed.massG()).isCloseTo(30 * 1.006 + 30 * 0.99820, within(0.001));
        assertThat(mixed.estimated()).isFalse();
    }

    @Test
    void marksWhatNothingCovers() {
        Contents unknown = Analysis.UNKNOWN.ofMl();
        assertThat(unknown.estimated()).isTrue();
        assertThat(Mixtures.mix(List.of(unknown.times(50), Samples.SPIRIT_ML.times(50)))
                        .estimated())
                .isTrue();
        assertThat(Mixtures.mix(List.of(unknown.times(0.5), Samples.SPIRIT_ML.times(99.5)))
                        .estimated())
                .as("a dash of something")
                .isFalse();
        assertThat(mark(Samples.SUGAR.times(75), Contents.water(25))).isTrue();
        assertThat(mark(Samples.SUGAR.times(69), Contents.water(31))).isFalse();
        assertThat(mark(Samples.SALT.times(27), Contents.water(73))).isTrue();
        assertThat(mark(Samples.CITRIC.times(31), Contents.water(69))).isTrue();
        assertThat(mark(Samples.MALIC.times(41), Contents.water(59))).isTrue();
        assertThat(mark(Samples.TARTARIC.times(3), Contents.water(97))).isTrue();
        Contents strong =
                Samples.analysis(null, "80", null, null, null, null, null).ofMl();
        assertThat(mark(strong.times(100), Samples.SUGAR.times(20))).isTrue();
        Contents heavy =
                Samples.analysis("1.2", "20", null, null, null, null, null).ofMl();
        assertThat(mark(heavy, Samples.WATER_ML)).as("sugar that nobody typed").isTrue();
    }

    /** Beyond the tables every further gram adds the same volume. */
    @Test
    void addsVolumesBeyondTheTables() {
        double at75 = mixed(75, 25).volumeMl();
        double at80 = mixed(80, 25).volumeMl();
        double at85 = mixed(85, 25).volumeMl();
        assertThat(at85 - at80).isCloseTo(at80 - at75, within(1e-9));
    }

    @Test
    void dryMixtureLeavesNoMarkOnItsSolution() {
        Contents powder = Mixtures.mix(List.of(Samples.SUGAR.times(40), Samples.CITRIC.times(4)));
        Contents solution = Mixtures.mix(List.of(powder, Contents.water(60)));
        assertThat(solution.estimated()).isFalse();
    }

    @Property(tries = 300)
    void everythingIsConservedThroughAnyNesting(
            @ForAll("parts") @Size(min = 2, max = 7) List<Contents> parts,
            @ForAll @IntRange(min = 1, max = 6) int cut) {
        int at = Math.min(cut, parts.size() - 1);
        Contents left = Mixtures.mix(parts.subList(0, at));
        Contents right = Mixtures.mix(parts.subList(at, parts.size()));
        assertSame(Mixtures.mix(List.of(right, left)), Mixtures.mix(parts));
    }

    @Property(tries = 300)
    void scalingAndSplittingChangeNothing(
            @ForAll("parts") @Size(min = 1, max = 6) List<Contents> parts,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
        Contents batch = Mixtures.mix(parts);
        Contents scaled =
                Mixtures.mix(parts.stream().map(part -> part.times(factor)).toList());
        assertSame(scaled, batch.times(factor));
        assertThat(scaled.estimated()).isEqualTo(batch.estimated());
        Contents again = Mixtures.mix(List.of(batch.times(0.3), batch.times(0.7)));
        assertSame(again, batch);
        assertThat(again.estimated()).isEqualTo(batch.estimated());
    }

    @Provide
    Arbitrary<List<Contents>> parts() {
        Arbitrary<Contents> unit = Arbitraries.of(
                Samples.WATER_ML,
                Samples.SPIRIT_ML,
                Samples.SUGAR,
                Samples.SALT,
                Samples.CITRIC,
                Samples.MALIC,
                Samples.TARTARIC,
                Samples.LIME_ML,
                Analysis.UNKNOWN.ofMl(),
                Samples.analysis("1.33", null, "60", "1", null, null, null).ofGram(),
                Samples.analysis("1.1", "24", null, null, null, null, null).ofMl());
        return Combinators.combine(unit, Arbitraries.doubles().between(0.01, 2000))
                .as(Contents::times)
                .list();
    }

    private static Contents mixed(double sugarG, double waterG) {
        return Mixtures.mix(List.of(Samples.SUGAR.times(sugarG), Contents.water(waterG)));
    }

    private static boolean mark(Contents one, Contents other) {
        return Mixtures.mix(List.of(one, other)).estimated();
    }

    private static void assertSame(Contents actual, Contents expected) {
        for (ToDoubleFunction<Contents> mass : MASSES) {
            assertThat(mass.applyAsDouble(actual))
                    .isCloseTo(mass.applyAsDouble(expected), within(1e-9 * expected.massG()));
        }
        assertThat(actual.volumeMl()).isCloseTo(expected.volumeMl(), within(1e-9 * expected.volumeMl()));
    }
}
