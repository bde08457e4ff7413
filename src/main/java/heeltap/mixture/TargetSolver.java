package heeltap.mixture;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * Solves lines {@code to target}, all at once: what one added ingredient brings of another's target counts.
 *
 * <p>With xⱼ g of the j-th ingredient, aᵢⱼ g of the i-th target in one g of it and sᵢ g in everything else: salt and sugar
 * sᵢ + Σ aᵢⱼ xⱼ = Tᵢ/100 (M + Σ xⱼ), exact. Acids by the rule of common practice sᵢ + Σ aᵢⱼ xⱼ = Tᵢ/100 V with V the base
 * liquid's volume; exactly, with V the volume of the finished liquid, by Newton's method on {@link Mixtures}' volume.
 */
public final class TargetSolver {
    private static final int STEPS = 60;
    /** Relative to the mass of the batch. */
    private static final double CLOSE = 1e-12;

    private static final double ROUNDING = 1e-9;

    private TargetSolver() {}

    /** What a target comes to: {@link Solved} or {@link Refused}. */
    public sealed interface Solution {}

    /**
     * The targets are met.
     *
     * @param grams g of each added ingredient, in the order of the targets; 0 where the batch is on its target already
     * @param finished everything together
     */
    public record Solved(List<Double> grams, Contents finished) implements Solution {}

    /**
     * They cannot be met.
     *
     * @param reasons one clause each, without a stop; not empty
     */
    public record Refused(List<String> reasons) implements Solution {}

    /**
     * How much to add.
     *
     * @param liquids all liquids that are not {@code to target}, mixed: the base of the acid targets
     * @param others everything else that is typed, mixed (sugar, acid, salt by weight); counts in what is there
     * @param targets the lines
     * @param exact whether acid targets hold in the finished liquid; else by the rule of common practice, for each 100 ml
     *     of the base liquid, the growth of its volume ignored
     */
    public static Solution solve(Contents liquids, Contents others, List<Target> targets, boolean exact) {
        List<String> faults = faults(liquids, targets);
        if (!faults.isEmpty()) {
            return new Refused(faults);
        }
        Contents typed = Mixtures.mix(List.of(liquids, others));
        if (targets.isEmpty()) {
            return new Solved(List.of(), typed);
        }
        Batch batch = new Batch(liquids.volumeMl(), typed, targets, exact);
        double[] grams = new double[targets.size()];
        for (int step = 0; step < STEPS; step++) {
            DecompositionSolver solver = new LUDecomposition(batch.matrix(grams)).getSolver();
            if (!solver.isNonSingular()) {
                return new Refused(List.of("the added ingredients hold the targets in the same proportions"));
            }
            double[] next = solver.solve(batch.rightSide(grams)).toArray();
            List<String> negative = batch.negative(next);
            if (!negative.isEmpty()) {
                return new Refused(negative);
            }
            ArrayRealVector amounts = new ArrayRealVector(next);
            double change = amounts.getLInfDistance(new ArrayRealVector(grams));
            grams = next;
            if (change <= CLOSE * (typed.massG() + amounts.getL1Norm())) {
                return finish(batch, grams);
            }
        }
        return new Refused(List.of("the added ingredients are hardly stronger than the targets"));
    }

    private static Solution finish(Batch batch, double[] grams) {
        List<Double> whole = new ArrayList<>();
        for (double gram : grams) {
            whole.add(Math.max(0, gram));
        }
        Contents finished =
                batch.with(whole.stream().mapToDouble(Double::doubleValue).toArray());
        List<String> beyond = Solubility.beyond(finished);
        return beyond.isEmpty() ? new Solved(List.copyOf(whole), finished) : new Refused(beyond);
    }

    private static List<String> faults(Contents liquids, List<Target> targets) {
        List<String> faults = new ArrayList<>();
        if (liquids.isNothing()) {
            faults.add("there is no liquid to bring to a target");
        }
        Set<Target.Kind> seen = EnumSet.noneOf(Target.Kind.class);
        for (Target target : targets) {
            String word = target.kind().word();
            if (!seen.add(target.kind())) {
                faults.add("two lines are to meet the target for " + word);
            }
            if (!(target.value() >= 0)) {
                faults.add("the target for " + word + " is below 0");
            }
            if (!(target.kind().in(target.perGram()) > 0)) {
                faults.add(target.added() + " holds no " + word);
            }
        }
        return List.copyOf(faults);
    }

    /** The typed part of a batch and what it is to become. */
    private record Batch(double baseMl, Contents typed, List<Target> targets, boolean exact) {
        Contents with(double[] grams) {
            List<Contents> parts = new ArrayList<>(List.of(typed));
            for (int j = 0; j < grams.length; j++) {
                parts.add(targets.get(j).perGram().times(grams[j]));
            }
            return Mixtures.mix(parts);
        }

        /** Row i: aᵢⱼ less what one g of the j-th makes the whole grow that the target is a share of. */
        Array2DRowRealMatrix matrix(double[] grams) {
            int n = targets.size();
            double[] growth = growth(grams);
            Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n, n);
            for (int i = 0; i < n; i++) {
                Target target = targets.get(i);
                for (int j = 0; j < n; j++) {
                    double whole = target.kind().byMass() ? 1 : growth[j];
                    matrix.setEntry(i, j, target.kind().in(targets.get(j).perGram()) - target.value() / 100 * whole);
                }
            }
            return matrix;
        }

        ArrayRealVector rightSide(double[] grams) {
            double[] growth = growth(grams);
            double volume = exact ? with(grams).volumeMl() : baseMl;
            for (int j = 0; j < grams.length; j++) {
                volume -= growth[j] * grams[j];
            }
            ArrayRealVector needed = new ArrayRealVector(targets.size());
            for (int i = 0; i < targets.size(); i++) {
                Target target = targets.get(i);
                double whole = target.kind().byMass() ? typed.massG() : volume;
                needed.setEntry(i, target.value() / 100 * whole - target.kind().in(typed));
            }
            return needed;
        }

        /** ml that the volume grows with one more g of each, at these amounts; none by the rule. */
        private double[] growth(double[] grams) {
            double[] growth = new double[grams.length];
            if (!exact) {
                return growth;
            }
            double step = typed.massG() * 1e-5;
            double now = with(grams).volumeMl();
            for (int j = 0; j < grams.length; j++) {
                double[] more = grams.clone();
                more[j] += step;
                growth[j] = (with(more).volumeMl() - now) / step;
            }
            return growth;
        }

        List<String> negative(double[] grams) {
            List<String> reasons = new ArrayList<>();
            for (int j = 0; j < grams.length; j++) {
                if (!(grams[j] >= -ROUNDING * typed.massG())) {
                    reasons.add(whyNegative(targets.get(j)));
                }
            }
            return reasons;
        }

        private String whyNegative(Target target) {
            Target.Kind kind = target.kind();
            Contents there = kind.byMass() || exact ? typed : typed.withVolume(baseMl, 0, false);
            String aim = Sentences.figure(target.value()) + " " + kind.unit();
            double has = kind.strength(there);
            if (has > target.value()) {
                return "the base holds " + Sentences.figure(has) + " " + kind.unit() + " of " + kind.word()
                        + ", more than the target of " + aim;
            }
            double strength = kind.strength(target.perGram());
            return strength <= target.value()
                    ? target.added() + " holds " + Sentences.figure(strength) + " " + kind.unit() + " of " + kind.word()
                            + ", no more than the target of " + aim
                    : "the other additions bring more " + kind.word() + " than the target of " + aim;
        }
    }
}
