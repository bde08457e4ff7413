package heeltap.cost;

import heeltap.match.Match;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much of a thing an amount and a unit come to.
 *
 * @param value in the thing's measure; null where there is a problem
 * @param juiceMl where it is an amount of juice of a thing counted in pieces, ml of it; else null
 * @param problem why there is no value
 */
record LineAmount(
        @Nullable Exact value,
        @Nullable Exact juiceMl,
        @Nullable Problem problem) {
    private static final Exact RINSE_ML = Exact.of(5);

    static LineAmount of(Exact value) {
        return new LineAmount(value, null, null);
    }

    static LineAmount fault(Problem problem) {
        return new LineAmount(null, null, problem);
    }

    static LineAmount fault(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        return new LineAmount(null, null, Problem.fault(kind, place, raw, reason, remedy));
    }

    /** @param unit as written; empty: the thing's own measure */
    static LineAmount of(Units units, Exact number, String unit, Supply supply, Place place) {
        if (unit.isBlank()) {
            return of(number);
        }
        Optional<Unit> found = units.find(unit, supply.traits().measure());
        return found.map(known -> of(known, number, unit, supply, place))
                .orElseGet(() -> fault(
                        ProblemKind.UNIT_UNKNOWN,
                        place,
                        unit,
                        "The unit of " + supply.name() + " is not known.",
                        "Use a unit of the list, or give its size on the sheet Measures."));
    }

    private static LineAmount of(Unit unit, Exact number, String written, Supply supply, Place place) {
        Exact value = number.times(unit.factor());
        return switch (unit.kind()) {
            case VOLUME -> of(new Amount(value, Measure.ML), written, supply, place);
            case MASS -> of(new Amount(value, Measure.G), written, supply, place);
            case COUNT -> of(new Amount(value, Measure.EACH), written, supply, place);
            case SERVE ->
                supply.kind() == Match.Kind.DRINK
                        ? of(value)
                        : unfit(written, supply, place, "A serve is of a drink, and " + supply.name() + " is none.");
            case BATCH -> batches(value, written, supply, place);
            case PART ->
                unfit(written, supply, place, "Parts share out the Serve ml of a drink, and there is none here.");
        };
    }

    private static LineAmount batches(Exact number, String written, Supply supply, Place place) {
        if (supply.kind() != Match.Kind.PREPARATION) {
            return unfit(written, supply, place, "A batch is of a preparation, and " + supply.name() + " is none.");
        }
        Exact batch = supply.batch();
        return batch == null
                ? unfit(written, supply, place, "What a batch of " + supply.name() + " makes is not known.")
                : of(number.times(batch));
    }

    private static LineAmount unfit(String written, Supply supply, Place place, String reason) {
        return fault(
                ProblemKind.UNIT_UNKNOWN,
                place,
                written,
                reason,
                "Write the amount of " + supply.name() + " in "
                        + (supply.kind() == Match.Kind.DRINK
                                ? "serve"
                                : supply.traits().measure().symbol()) + ".");
    }

    /** An amount in ml, g or pieces. */
    static LineAmount of(Amount amount, String written, Supply supply, Place place) {
        if (supply.kind() == Match.Kind.DRINK && amount.measure() != Measure.EACH) {
            return unfit(written, supply, place, "A drink inside another is measured in serves.");
        }
        Traits.Converted converted = supply.traits().toMeasure(amount);
        if (converted.value() == null) {
            return new LineAmount(
                    null,
                    null,
                    Conversions.unfit(
                            place, written, supply.name(), supply.traits().measure(), converted.missing(), amount));
        }
        boolean juice = amount.measure() == Measure.ML
                && supply.traits().measure() == Measure.EACH
                && supply.traits().juiceMl() != null;
        return new LineAmount(converted.value(), juice ? amount.value() : null, null);
    }

    /** One of the unit, or 5 ml. */
    static LineAmount rinse(Units units, String unit, Supply supply, Place place) {
        return unit.isBlank()
                ? of(new Amount(RINSE_ML, Measure.ML), "rinse", supply, place)
                : of(units, Exact.ONE, unit, supply, place);
    }

    /** The juice of so many pieces, by what one yields. */
    static LineAmount juice(Exact pieces, String written, Supply supply, Place place) {
        Exact perPiece = supply.traits().juiceMl();
        if (supply.kind() != Match.Kind.INGREDIENT || perPiece == null) {
            return fault(
                    ProblemKind.VALUE_MISSING,
                    place,
                    written,
                    "How much juice one " + supply.name() + " yields is not known.",
                    "Fill in Juice ml of the fruit on the sheet Ingredients.");
        }
        Exact ml = pieces.times(perPiece);
        return switch (supply.traits().measure()) {
            case ML -> of(ml);
            case EACH -> new LineAmount(pieces, ml, null);
            case G -> {
                LineAmount grams = of(new Amount(pieces, Measure.EACH), written, supply, place);
                yield new LineAmount(grams.value(), ml, grams.problem());
            }
        };
    }
}
