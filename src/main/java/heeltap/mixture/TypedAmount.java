package heeltap.mixture;

import java.util.List;
import java.util.Optional;

/** Compares an amount that was typed with the one that the target asks for. */
public final class TypedAmount {
    /** Amounts within 2 % of each other are the same (common practice, no source). */
    private static final double SAME = 0.02;
    /** How near to ten or a tenth an implied figure is to be to look like a slipped point. */
    private static final double SLIP = 0.1;

    private TypedAmount() {}

    /**
     * What to say of a typed line beside a target for what it brings; empty if it meets the target.
     *
     * @param liquids all liquids of the batch but that line
     * @param others everything else that is typed but that line
     * @param target the target with the line's ingredient
     * @param typedG g of it that were typed
     * @param exact as in {@link TargetSolver#solve}
     * @return one sentence, such as "3.2 g typed, 3.92 g needed: is the base's citric acid 0.08 or 0.8 g per 100 ml?"
     */
    public static Optional<String> notice(
            Contents liquids, Contents others, Target target, double typedG, boolean exact) {
        TargetSolver.Solution solution = TargetSolver.solve(liquids, others, List.of(target), exact);
        if (solution instanceof TargetSolver.Refused refused) {
            return Optional.of(Sentences.figure(typedG) + " g " + target.added() + " typed, but "
                    + String.join("; ", refused.reasons()));
        }
        double needed = ((TargetSolver.Solved) solution).grams().get(0);
        if (Math.abs(needed - typedG) <= SAME * needed) {
            return Optional.empty();
        }
        String difference = Sentences.figure(typedG) + " g typed, " + Sentences.figure(needed) + " g needed";
        return Optional.of(difference + slip(liquids, target, typedG, needed));
    }

    /** Whether the base's own figure looks ten times too small or large: then the typed amount would be right. */
    private static String slip(Contents liquids, Target target, double typedG, double needed) {
        Target.Kind kind = target.kind();
        double has = kind.strength(liquids);
        double whole = kind.byMass() ? liquids.massG() : liquids.volumeMl();
        double implied = has + 100 * (needed - typedG) * kind.in(target.perGram()) / whole;
        boolean tenfold = has > 0 && (near(implied / has, 10) || near(has / implied, 10));
        return tenfold
                ? ": is the base's " + kind.word() + " " + Sentences.figure(has) + " or " + Sentences.figure(implied)
                        + " " + kind.unit() + "?"
                : "";
    }

    private static boolean near(double ratio, double whole) {
        return Math.abs(ratio / whole - 1) <= SLIP;
    }
}
