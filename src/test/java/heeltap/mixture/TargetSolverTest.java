package heeltap.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.mixture.Target.Kind;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TargetSolverTest {
    /** Orange juice of 0.8 % citric acid (a juice of common practice; published 0.6 to 1.3 %, Apelblat 2014). */
    private static final Contents ORANGE_ML =
            Samples.analysis("1.0482", null, "8.8", "0.8", null, null, null).ofMl();

    private static final Target CITRIC = new Target(Kind.CITRIC, 4, "Citric acid", Samples.CITRIC);
    private static final Target MALIC = new Target(Kind.MALIC, 2, "Malic acid", Samples.MALIC);

    /** Common practice: 3.2 g citric and 2 g malic acid for each 100 ml; in the finished 103.1 ml 3.88 % and 1.94 %. */
    @Test
    void ruleOfCommonPractice() {
        TargetSolver.Solved solved = solve(ORANGE_ML.times(100), List.of(CITRIC, MALIC), false);
        assertThat(solved.grams().get(0)).isCloseTo(3.2, within(1e-9));
        assertThat(solved.grams().get(1)).isCloseTo(2.0, within(1e-9));
        Contents finished = solved.finished();
        assertThat(finished.volumeMl()).isCloseTo(103.1, within(0.05));
        assertThat(finished.per100Ml(finished.citricG())).isCloseTo(3.88, within(0.005));
        assertThat(finished.per100Ml(finished.malicG())).isCloseTo(1.94, within(0.005));
    }

    /** The exact form of the same: 3.33 g and 2.06 g. */
    @Test
    void exactInTheFinishedLiquid() {
        TargetSolver.Solved solved = solve(ORANGE_ML.times(100), List.of(CITRIC, MALIC), true);
        assertThat(solved.grams().get(0)).isCloseTo(3.33, within(0.005));
        assertThat(solved.grams().get(1)).isCloseTo(2.06, within(0.005));
        Contents finished = solved.finished();
        assertThat(finished.per100Ml(finished.citricG())).isCloseTo(4, within(1e-9));
        assertThat(finished.per100Ml(finished.malicG())).isCloseTo(2, within(1e-9));
    }

    /** 20 % by mass: 20 g of salt to 80 g of water. */
    @Test
    void saltAndSugarByMass() {
        Target salt = new Target(Kind.SALT, 20, "Salt", Samples.SALT);
        assertThat(solve(Contents.water(80), List.of(salt), false).grams().get(0))
                .isCloseTo(20, within(1e-9));
        Target sugar = new Target(Kind.SUGAR, 50, "Sugar", Samples.SUGAR);
        assertThat(solve(Contents.water(1000), List.of(sugar), true).grams().get(0))
                .isCloseTo(1000, within(1e-7));
    }

    @Test
    void severalTargetsOfBothKindsAtOnce() {
        Target sugar = new Target(Kind.SUGAR, 30, "Sugar", Samples.SUGAR);
        Contents others = Samples.SALT.times(2);
        for (boolean exact : new boolean[] {false, true}) {
            TargetSolver.Solved solved = (TargetSolver.Solved)
                    TargetSolver.solve(ORANGE_ML.times(500), others, List.of(CITRIC, sugar, MALIC), exact);
            Contents finished = solved.finished();
            assertThat(finished.massPercent(finished.sugarG())).isCloseTo(30, within(1e-9));
            double whole = exact ? finished.volumeMl() : 500;
            assertThat(100 * finished.citricG() / whole).isCloseTo(4, within(1e-9));
            assertThat(100 * finished.malicG() / whole).isCloseTo(2, within(1e-9));
            assertThat(finished.saltG()).isEqualTo(2);
        }
    }

    /** A liquid addition: so much lime juice that the mixture holds 2 g per 100 ml, checked by what comes out. */
    @Test
    void liquidAdditionCountsItsVolume() {
        Contents limeGram = Samples.LIME_ML.times(1 / Samples.LIME_ML.massG());
        Target lime = new Target(Kind.CITRIC, 2, "Lime juice", limeGram);
        Contents finished =
                solve(Samples.WATER_ML.times(100), List.of(lime), true).finished();
        assertThat(finished.per100Ml(finished.citricG())).isCloseTo(2, within(1e-9));
        assertThat(finished.volumeMl()).isCloseTo(100 / (1 - 2 / 4.586), within(0.2));
        Target strong = new Target(Kind.CITRIC, 4.5, "Lime juice", limeGram);
        Contents nearly =
                solve(Samples.WATER_ML.times(100), List.of(strong), true).finished();
        assertThat(nearly.per100Ml(nearly.citricG())).isCloseTo(4.5, within(1e-9));
    }

    @Test
    void onTargetAlreadyNeedsNothing() {
        Target citric = new Target(Kind.CITRIC, 0.8, "Citric acid", Samples.CITRIC);
        assertThat(solve(ORANGE_ML.times(1000), List.of(citric), true).grams().get(0))
                .isCloseTo(0, within(1e-6));
        assertThat(solve(ORANGE_ML.times(1000), List.of(), true).finished()).isEqualTo(ORANGE_ML.times(1000));
    }

    @Test
    void refusesWithTheReason() {
        Contents lime = Samples.LIME_ML.times(100);
        assertThat(refused(lime, List.of(CITRIC), false))
                .containsExactly(
                        "the base holds 4.59 g per 100 ml of citric acid, more than the target of 4 g per 100 ml");
        assertThat(refused(lime, List.of(new Target(Kind.MALIC, 2, "Citric acid", Samples.CITRIC)), false))
                .containsExactly("Citric acid holds no malic acid");
        assertThat(refused(lime, List.of(MALIC, MALIC), false))
                .containsExactly("two lines are to meet the target for malic acid");
        assertThat(refused(lime, List.of(new Target(Kind.MALIC, -1, "Malic acid", Samples.MALIC)), false))
                .containsExactly("the target for malic acid is below 0");
        assertThat(refused(Contents.NOTHING, List.of(MALIC), false))
                .containsExactly("there is no liquid to bring to a target");
        assertThat(refused(Contents.water(100), List.of(new Target(Kind.SALT, 30, "Salt", Samples.SALT)), false))
                .containsExactly("30 % salt does not dissolve in its water: no more than 26.44 % at 20 °C");
        assertThat(refused(Contents.water(100), List.of(new Target(Kind.SUGAR, 70, "Sugar", Samples.SUGAR)), false))
                .containsExactly("70 % sugar does not dissolve in its water: no more than 67.09 % at 20 °C");
        Contents limeGram = Samples.LIME_ML.times(1 / Samples.LIME_ML.massG());
        Target tooMuch = new Target(Kind.CITRIC, 5, "Lime juice", limeGram);
        assertThat(refused(Contents.water(100), List.of(tooMuch), true))
                .containsExactly(
                        "Lime juice holds 4.59 g per 100 ml of citric acid, no more than the target of 5 g per 100 ml");
        Contents brine = Mixtures.mix(List.of(Samples.SALT.times(10), Contents.water(90)))
                .times(0.01);
        assertThat(refused(Contents.water(100), List.of(new Target(Kind.SALT, 10, "Brine", brine)), false))
                .hasSize(1);
    }

    @Test
    void refusesWhatOnlyTheOtherAdditionSpoils() {
        Contents powder = Mixtures.mix(List.of(Samples.CITRIC.times(0.5), Samples.MALIC.times(0.5)));
        Target citric = new Target(Kind.CITRIC, 4, "Acid mix", powder);
        assertThat(refused(Contents.water(100), List.of(citric, MALIC), false))
                .containsExactly("the other additions bring more malic acid than the target of 2 g per 100 ml");
        Target same = new Target(Kind.MALIC, 2, "Acid mix", powder);
        assertThat(refused(Contents.water(100), List.of(citric, same), false))
                .containsExactly("the added ingredients hold the targets in the same proportions");
    }

    @Property(tries = 200)
    void theBatchScales(
            @ForAll @DoubleRange(min = 0.1, max = 1000) double factor,
            @ForAll @DoubleRange(min = 1, max = 8) double target,
            @ForAll boolean exact) {
        Target citric = new Target(Kind.CITRIC, target, "Citric acid", Samples.CITRIC);
        double one = solve(ORANGE_ML.times(100), List.of(citric, MALIC), exact)
                .grams()
                .get(0);
        double many = solve(ORANGE_ML.times(100 * factor), List.of(citric, MALIC), exact)
                .grams()
                .get(0);
        assertThat(many).isCloseTo(one * factor, within(1e-9 * one * factor));
    }

    /** The example of the trap: a juice entered as 0.08 instead of 0.8. */
    @Test
    void asksAboutASlippedPoint() {
        Contents slipped = Samples.analysis("1.0482", null, "8.8", "0.08", null, null, null)
                .ofMl()
                .times(100);
        assertThat(TypedAmount.notice(slipped, Contents.NOTHING, CITRIC, 3.2, false))
                .contains("3.2 g typed, 3.92 g needed: is the base's citric acid 0.08 or 0.8 g per 100 ml?");
        assertThat(TypedAmount.notice(ORANGE_ML.times(100), Contents.NOTHING, CITRIC, 3.2, false))
                .isEmpty();
        assertThat(TypedAmount.notice(ORANGE_ML.times(100), Contents.NOTHING, CITRIC, 2.5, false))
                .contains("2.5 g typed, 3.2 g needed");
        assertThat(TypedAmount.notice(Samples.LIME_ML.times(100), Contents.NOTHING, CITRIC, 2.5, false))
                .hasValueSatisfying(
                        notice -> assertThat(notice).startsWith("2.5 g Citric acid typed, but the base holds"));
    }

    private static TargetSolver.Solved solve(Contents liquids, List<Target> targets, boolean exact) {
        return (TargetSolver.Solved) TargetSolver.solve(liquids, Contents.NOTHING, targets, exact);
    }

    private static List<String> refused(Contents liquids, List<Target> targets, boolean exact) {
        return ((TargetSolver.Refused) TargetSolver.solve(liquids, Contents.NOTHING, targets, exact)).reasons();
    }
}
