package heeltap.cost;

import heeltap.mixture.Contents;
import heeltap.mixture.Mixtures;
import heeltap.mixture.Target;
import heeltap.mixture.TargetSolver;
import heeltap.mixture.TypedAmount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.record.Preparation;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The lines {@code to target} of a preparation. */
final class Targets {
    private Targets() {}

    /** Works out the lines to target, and compares typed lines with the targets they are for. */
    static void solve(Preparation preparation, Recipe recipe, boolean exact) {
        Map<Target.Kind, Exact> wanted = wanted(preparation);
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < recipe.rows().size(); i++) {
            if (recipe.rows().get(i).isToTarget()) {
                open.add(i);
            }
        }
        boolean typedKnown = recipe.rows().stream().allMatch(row -> row.isToTarget() || row.value() != null);
        if (!typedKnown) {
            return;
        }
        if (!open.isEmpty()) {
            solve(recipe, wanted, open, exact);
        }
        if (recipe.isComplete()) {
            compareTyped(recipe, wanted, exact);
            wanted.keySet().stream()
                    .filter(kind -> !isSolved(recipe, kind, wanted) && !isTyped(recipe, kind, wanted))
                    .forEach(kind -> recipe.notice(unused(preparation, kind)));
        }
    }

    private static Map<Target.Kind, Exact> wanted(Preparation preparation) {
        Map<Target.Kind, Exact> wanted = new EnumMap<>(Target.Kind.class);
        put(wanted, Target.Kind.CITRIC, preparation.targetCitric());
        put(wanted, Target.Kind.MALIC, preparation.targetMalic());
        put(wanted, Target.Kind.SALT, preparation.targetSalt());
        put(wanted, Target.Kind.SUGAR, preparation.targetSugar());
        return wanted;
    }

    private static void put(Map<Target.Kind, Exact> wanted, Target.Kind kind, @Nullable Exact value) {
        if (value != null) {
            wanted.put(kind, value);
        }
    }

    private static void solve(Recipe recipe, Map<Target.Kind, Exact> wanted, List<Integer> open, boolean exact) {
        List<Target> targets = new ArrayList<>();
        for (int index : open) {
            Row row = recipe.rows().get(index);
            Contents perGram = perGram(row);
            Target.Kind kind = perGram == null ? null : strongest(perGram, wanted);
            if (perGram == null || kind == null) {
                recipe.fault(holdsNone(row, wanted));
                return;
            }
            if (targets.stream().anyMatch(other -> other.kind() == kind)) {
                recipe.fault(secondLine(row, kind));
                return;
            }
            double value = wanted.getOrDefault(kind, Exact.ZERO).toDouble();
            targets.add(new Target(kind, value, row.name(), perGram));
        }
        TargetSolver.Solution solution =
                TargetSolver.solve(mix(recipe, true, -1), mix(recipe, false, -1), targets, exact);
        if (solution instanceof TargetSolver.Solved solved) {
            for (int i = 0; i < open.size(); i++) {
                recipe.settleGrams(open.get(i), Exact.ofPhysical(solved.grams().get(i)));
            }
        } else if (solution instanceof TargetSolver.Refused refused) {
            Row row = recipe.rows().get(open.get(0));
            String reasons = String.join("; ", refused.reasons());
            recipe.fault(Problem.fault(
                    ProblemKind.TARGET_UNREACHABLE,
                    row.line().place(),
                    row.line().ingredient(),
                    "The target cannot be met: " + reasons + ".",
                    "Correct the target, the composition of the ingredients or the lines."));
        }
    }

    /** Contents of one g; null where nothing is known of it or it is counted in pieces. */
    private static @Nullable Contents perGram(Row row) {
        Supply supply = row.supply();
        if (supply == null || supply.contents().massG() <= 0 || supply.traits().measure() == Measure.EACH) {
            return null;
        }
        return supply.contents().times(1 / supply.contents().massG());
    }

    /** Of the targets set, the one of which the ingredient holds most; null where it holds none of them. */
    private static Target.@Nullable Kind strongest(Contents perGram, Map<Target.Kind, Exact> wanted) {
        Target.Kind strongest = null;
        for (Target.Kind kind : wanted.keySet()) {
            double held = kind.in(perGram);
            if (held > 0 && (strongest == null || held > strongest.in(perGram))) {
                strongest = kind;
            }
        }
        return strongest;
    }

    private static Problem secondLine(Row row, Target.Kind kind) {
        return Problem.fault(
                ProblemKind.SPEC_FAULT,
                row.line().place(),
                row.line().ingredient(),
                "Two lines are to meet the target for " + kind.word() + ".",
                "Give all but one of them an amount, or set the target that the line is for.");
    }

    private static Problem holdsNone(Row row, Map<Target.Kind, Exact> wanted) {
        String reason = wanted.isEmpty()
                ? "The line is to target, but no target is set."
                : row.name() + " holds none of what a target is set for.";
        return Problem.fault(
                ProblemKind.SPEC_FAULT,
                row.line().place(),
                row.line().ingredient(),
                reason,
                "Set the target on the sheet Preparations and what the ingredient holds on the sheet Ingredients.");
    }

    /** The liquids, or everything else, of the lines that are not to target, one of them left out. */
    private static Contents mix(Recipe recipe, boolean liquids, int without) {
        List<Contents> parts = new ArrayList<>();
        for (int i = 0; i < recipe.rows().size(); i++) {
            Row row = recipe.rows().get(i);
            if (i != without && !row.isToTarget() && row.isLiquid() == liquids) {
                parts.add(row.contents());
            }
        }
        return Mixtures.mix(parts);
    }

    /** A dry line typed as an amount, beside a target for what it brings that no line solves. */
    private static void compareTyped(Recipe recipe, Map<Target.Kind, Exact> wanted, boolean exact) {
        for (int i = 0; i < recipe.rows().size(); i++) {
            Row row = recipe.rows().get(i);
            Contents perGram = perGram(row);
            Exact value = row.value();
            Target.Kind kind = typedFor(row, wanted);
            if (perGram == null || kind == null || value == null || isSolved(recipe, kind, wanted)) {
                continue;
            }
            Target target =
                    new Target(kind, wanted.getOrDefault(kind, Exact.ZERO).toDouble(), row.name(), perGram);
            double grams = row.contents().massG();
            TypedAmount.notice(mix(recipe, true, i), mix(recipe, false, i), target, grams, exact)
                    .ifPresent(
                            text -> recipe.notice(
                                    Problem.notice(
                                            ProblemKind.VALUE_DOUBTFUL,
                                            row.line().place(),
                                            row.line().amountText(),
                                            text.endsWith("?") ? text : text + ".",
                                            "Check the amount, the target and what the ingredients hold; the amount was used as typed.")));
        }
    }

    /** The target that a dry line typed as an amount is for; null for none: it must be half or more of the line. */
    private static Target.@Nullable Kind typedFor(Row row, Map<Target.Kind, Exact> wanted) {
        Contents perGram = perGram(row);
        if (perGram == null || row.isToTarget() || row.isLiquid()) {
            return null;
        }
        Target.Kind kind = strongest(perGram, wanted);
        return kind == null || kind.in(perGram) < 0.5 ? null : kind;
    }

    private static boolean isTyped(Recipe recipe, Target.Kind kind, Map<Target.Kind, Exact> wanted) {
        return recipe.rows().stream().anyMatch(row -> typedFor(row, wanted) == kind);
    }

    private static Problem unused(Preparation preparation, Target.Kind kind) {
        return Problem.notice(
                ProblemKind.SPEC_FAULT,
                preparation.place(),
                preparation.name(),
                "A target is set for " + kind.word() + ", but no line brings it there.",
                "Add a line with the amount \"to target\", or clear the target.");
    }

    private static boolean isSolved(Recipe recipe, Target.Kind kind, Map<Target.Kind, Exact> wanted) {
        return recipe.rows().stream().filter(Row::isToTarget).anyMatch(row -> {
            Contents perGram = perGram(row);
            return perGram != null && strongest(perGram, wanted) == kind;
        });
    }
}
