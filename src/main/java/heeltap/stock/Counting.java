package heeltap.stock;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Turns counted and lost amounts into base measures: bottles and part bottles, cases, kegs, open bottles by weight, and
 * every unit of the book. What cannot be is a problem with its place, never a number.
 */
public final class Counting {
    private static final Set<String> BOTTLES = Set.of(
            "bottle",
            "bottles",
            "btl",
            "btls",
            "bt",
            "flasche",
            "flaschen",
            "bouteille",
            "bouteilles",
            "can",
            "cans",
            "tin",
            "tins",
            "jar",
            "jars",
            "bag",
            "bags",
            "unit",
            "units");
    private static final Set<String> KEGS = Set.of("keg", "kegs");
    private static final Set<String> CASES =
            Set.of("case", "cases", "box", "boxes", "crate", "crates", "carton", "cartons");
    private static final Set<String> PACKS = Set.of("pack", "packs");
    private static final Set<String> WEIGHED = Set.of("weighed g", "weighed", "weighed grams");

    private Counting() {}

    /**
     * A count understood, or what is wrong with it.
     *
     * @param amount in the base measure; empty where there is a problem
     */
    public record Counted(Optional<Exact> amount, Optional<Problem> problem) {
        private static Counted of(Exact amount) {
            return new Counted(Optional.of(amount), Optional.empty());
        }

        private static Counted wrong(Problem problem) {
            return new Counted(Optional.empty(), Optional.of(problem));
        }
    }

    /**
     * Converts a written amount.
     *
     * @param unitText as written; blank: bottles where the book says what one holds, else the base measure
     */
    public static Counted toBase(Countable thing, Exact number, String unitText, Place place, Units units) {
        String unit = unitText.strip().toLowerCase(Locale.ROOT);
        if (number.isNegative()) {
            return Counted.wrong(problem(
                    ProblemKind.COUNT_IMPOSSIBLE,
                    place,
                    number + " " + unitText,
                    "A count of " + thing.name() + " cannot be negative.",
                    "Correct the count."));
        }
        if (unit.isEmpty()) {
            return thing.bottleMlKnown() ? bottles(thing, number, unitText, place) : Counted.of(number);
        }
        if (BOTTLES.contains(unit) && units.find(unit, thing.measure()).isEmpty()) {
            return bottles(thing, number, unitText, place);
        }
        if (KEGS.contains(unit)) {
            return containers(thing, thing.containers().keg(), number, unitText, place);
        }
        if (CASES.contains(unit)) {
            return containers(thing, thing.containers().crate(), number, unitText, place);
        }
        if (PACKS.contains(unit)) {
            return containers(thing, thing.containers().pack(), number, unitText, place);
        }
        if (WEIGHED.contains(unit)) {
            return weighed(thing, number, place);
        }
        return inUnit(thing, number, unitText, place, units);
    }

    private static Counted bottles(Countable thing, Exact number, String unitText, Place place) {
        return containers(thing, thing.bottle(), number, unitText, place);
    }

    private static Counted containers(
            Countable thing, Optional<Amount> size, Exact number, String unitText, Place place) {
        return size.flatMap(held -> convert(thing, held))
                .map(held -> Counted.of(held.times(number)))
                .orElseGet(() -> Counted.wrong(unknownSize(thing, unitText, place)));
    }

    /** One open bottle by its weight: a straight line between the empty and the full one. */
    private static Counted weighed(Countable thing, Exact grams, Place place) {
        if (thing.fullGrams().isEmpty()
                || thing.emptyGrams().isEmpty()
                || thing.bottle().isEmpty()) {
            return Counted.wrong(problem(
                    ProblemKind.UNIT_UNKNOWN,
                    place,
                    grams + " weighed g",
                    "The book does not say what a full and an empty bottle of " + thing.name() + " weigh.",
                    "Fill Full bottle g, Empty bottle g and Bottle ml in the sheet Ingredients."));
        }
        Exact empty = thing.emptyGrams().get();
        Exact full = thing.fullGrams().get();
        if (full.compareTo(empty) <= 0 || grams.isLessThan(empty) || grams.isGreaterThan(full)) {
            return Counted.wrong(problem(
                    ProblemKind.COUNT_IMPOSSIBLE,
                    place,
                    grams + " weighed g",
                    "An open bottle of " + thing.name() + " weighs between " + empty + " g and " + full
                            + " g by the book.",
                    "Weigh it again, or correct the weights in the sheet Ingredients."));
        }
        Exact share = grams.minus(empty).dividedBy(full.minus(empty));
        return convert(thing, thing.bottle().get())
                .map(size -> Counted.of(size.times(share)))
                .orElseGet(() -> Counted.wrong(unknownSize(thing, "weighed g", place)));
    }

    private static Counted inUnit(Countable thing, Exact number, String unitText, Place place, Units units) {
        Optional<Unit> unit = units.find(unitText, thing.measure());
        if (unit.isPresent()
                && unit.get().kind() == Unit.Kind.BATCH
                && thing.batch().isPresent()) {
            return Counted.of(thing.batch().get().times(number));
        }
        Optional<Exact> amount = unit.flatMap(Counting::measureOf)
                .flatMap(measure ->
                        convert(thing, new Amount(number.times(unit.get().factor()), measure)));
        return amount.map(Counted::of)
                .orElseGet(() -> Counted.wrong(problem(
                        ProblemKind.UNIT_UNKNOWN,
                        place,
                        number + " " + unitText,
                        "The unit does not fit " + thing.name() + ", which is measured in "
                                + thing.measure().symbol() + ".",
                        "Count it in bottles, cases or " + thing.measure().symbol()
                                + ", or give its density in the sheet Ingredients.")));
    }

    private static Optional<Measure> measureOf(Unit unit) {
        return switch (unit.kind()) {
            case VOLUME -> Optional.of(Measure.ML);
            case MASS -> Optional.of(Measure.G);
            case COUNT -> Optional.of(Measure.EACH);
            case SERVE, BATCH, PART -> Optional.empty();
        };
    }

    /** Into the thing's own measure; mass and volume only through a density, pieces only through their weight. */
    private static Optional<Exact> convert(Countable thing, Amount amount) {
        if (amount.measure() == thing.measure()) {
            return Optional.of(amount.value());
        }
        return switch (thing.measure()) {
            case ML -> grams(thing, amount).flatMap(g -> thing.density().map(g::dividedBy));
            case G ->
                amount.measure() == Measure.ML
                        ? thing.density().map(density -> amount.value().times(density))
                        : grams(thing, amount);
            case EACH ->
                amount.measure() == Measure.G
                        ? thing.eachGrams().map(each -> amount.value().dividedBy(each))
                        : Optional.empty();
        };
    }

    private static Optional<Exact> grams(Countable thing, Amount amount) {
        return switch (amount.measure()) {
            case G -> Optional.of(amount.value());
            case EACH -> thing.eachGrams().map(each -> amount.value().times(each));
            case ML -> Optional.empty();
        };
    }

    private static Problem unknownSize(Countable thing, String unitText, Place place) {
        return problem(
                ProblemKind.UNIT_UNKNOWN,
                place,
                unitText,
                "Nothing says how much one " + (unitText.isBlank() ? "bottle" : unitText.strip()) + " of "
                        + thing.name() + " holds.",
                "Fill Bottle ml or List pack in the sheet Ingredients.");
    }

    private static Problem problem(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        return Problem.fault(kind, place, raw, reason, remedy);
    }
}
