package heeltap.cost;

import heeltap.cost.SpecVersions.Item;
import heeltap.match.Match;
import heeltap.record.Drink;
import heeltap.record.SpecLine;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The messages for specs that cannot be costed. */
final class SpecFaults {
    private SpecFaults() {}

    static Problem unknown(SpecLine line, List<String> nearest) {
        return Problem.fault(
                ProblemKind.NAME_UNKNOWN,
                line.place(),
                line.ingredient(),
                "No ingredient, preparation or drink of the book has this name, or more than one has.",
                nearest.isEmpty()
                        ? "Correct the name, or add it."
                        : "Correct the name, or add it; the nearest are: " + String.join("; ", nearest) + ".");
    }

    /** @param path names round the cycle, the first again at the end */
    static Problem cycle(List<String> path, Place place) {
        return Problem.fault(
                ProblemKind.SPEC_CYCLE,
                place,
                path.get(1),
                "A spec that leads back to itself has no cost: " + String.join(" > ", path) + ".",
                "Take one of these lines out.");
    }

    /** @param first the first day of which there is a spec, if there is one at all */
    static Problem missing(Item item, Place place, Optional<LocalDate> first) {
        if (first.isPresent()) {
            return Problem.fault(
                    ProblemKind.SPEC_MISSING,
                    place,
                    item.name(),
                    "The spec of " + item.name() + " begins only on " + first.get() + ".",
                    "Add the lines that held before, or leave From of the first version empty.");
        }
        boolean drink = item.kind() == Match.Kind.DRINK;
        return Problem.fault(
                ProblemKind.SPEC_MISSING,
                place,
                item.name(),
                item.name() + (drink ? " has no spec and no fixed cost." : " has no spec."),
                drink
                        ? "Add its lines to the sheet Specs, or fill in Fixed cost."
                        : "Add its lines to the sheet Specs.");
    }

    static Problem twoCosts(Drink row) {
        return Problem.fault(
                ProblemKind.SPEC_FAULT,
                row.place(),
                row.name(),
                "The drink has a fixed cost and a spec: which of the two holds is not clear.",
                "Clear Fixed cost on the sheet Drinks, or take its lines out of the sheet Specs.");
    }

    static Problem targetOfDrink(SpecLine line) {
        return Problem.fault(
                ProblemKind.SPEC_FAULT,
                line.place(),
                line.amountText(),
                "Targets are for preparations; a drink has none.",
                "Write an amount, or make it a preparation.");
    }
}
