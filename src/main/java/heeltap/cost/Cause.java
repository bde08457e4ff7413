package heeltap.cost;

import heeltap.source.Problem;
import java.util.Collection;
import java.util.List;

/**
 * Why something has no cost.
 *
 * @param origin the ingredient, preparation or drink that is at fault
 * @param problem what is wrong there
 */
record Cause(String origin, Problem problem) {
    /** The problem as it is told of an item: with the name of what the item uses, where the fault is there. */
    private Problem toldOf(String item) {
        return origin.equals(item)
                ? problem
                : new Problem(
                        problem.kind(),
                        problem.severity(),
                        problem.place(),
                        problem.raw(),
                        "It uses " + origin + ". " + problem.reason(),
                        problem.remedy());
    }

    static List<Problem> told(Collection<Cause> causes, String item) {
        return causes.stream()
                .map(cause -> cause.toldOf(item))
                .distinct()
                .sorted(Problem.ORDER)
                .toList();
    }
}
