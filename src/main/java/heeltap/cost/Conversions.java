package heeltap.cost;

import heeltap.quantity.Amount;
import heeltap.quantity.Measure;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;

/** The message for an amount that cannot be brought to its ingredient's measure. */
final class Conversions {
    private Conversions() {}

    static Problem unfit(Place place, String raw, String name, Measure measure, String missing, Amount amount) {
        ProblemKind kind = missing.contains("density") ? ProblemKind.DENSITY_MISSING : ProblemKind.UNIT_UNKNOWN;
        return Problem.fault(
                kind,
                place,
                raw,
                name + " is measured in " + measure.symbol() + " and the amount in "
                        + amount.measure().symbol() + ": between them stands " + missing + ", which is not known.",
                "Fill in " + missing + " of " + name + ", or write the amount in " + measure.symbol() + ".");
    }
}
