package heeltap.review;

import heeltap.cost.CostLine;
import heeltap.document.Card.Measured;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.record.SpecAmount;
import java.util.Map;
import java.util.Set;

/** Amounts of a spec in the words of the book, put right for reading. */
final class SpecWords {
    private static final Map<String, String> PLURALS = Map.of(
            "dash", "dashes",
            "splash", "splashes",
            "pinch", "pinches",
            "bunch", "bunches",
            "batch", "batches",
            "leaf", "leaves",
            "berry", "berries",
            "cherry", "cherries");
    private static final Set<String> REGULAR = Set.of(
            "drop",
            "bar spoon",
            "barspoon",
            "shot",
            "jigger",
            "serve",
            "part",
            "cup",
            "slice",
            "wedge",
            "wheel",
            "peel",
            "twist",
            "zest",
            "sprig",
            "strip",
            "coin",
            "ring",
            "disc",
            "cube",
            "stick",
            "pod",
            "clove",
            "olive",
            "egg",
            "bean",
            "seed",
            "ribbon",
            "segment",
            "flower",
            "petal",
            "chunk");
    private static final Units STANDARD = Units.standard();

    private SpecWords() {}

    /** Such as {@code 2 dashes}; plain pieces without a unit; else as typed. */
    static String written(CostLine line) {
        String unit = line.spec().unit().strip();
        if (unit.isEmpty() || !(line.spec().amount() instanceof SpecAmount.Units number)) {
            return line.written().strip();
        }
        String typed = line.spec().amountText().strip();
        return Units.isWholePiece(unit) ? typed : typed + " " + unit(unit, number.number());
    }

    private static String unit(String typed, Exact number) {
        if (!number.isGreaterThan(Exact.ONE)) {
            return typed;
        }
        return PLURALS.getOrDefault(typed, REGULAR.contains(typed) ? typed + "s" : typed);
    }

    /** With the spec's word for a piece of a thing: peel, wedge, slice. */
    static Measured measured(CostLine line, Amount amount) {
        Measured measured = Measures.of(amount);
        String unit = line.spec().unit().strip();
        boolean part = amount.measure() == Measure.EACH
                && !unit.isEmpty()
                && !Units.isWholePiece(unit)
                && STANDARD.find(unit, Measure.EACH)
                        .filter(known -> known.kind() == Unit.Kind.COUNT)
                        .isPresent();
        return part
                ? new Measured(measured.amount(), measured.decimals(), measured.least(), unit(unit, amount.value()))
                : measured;
    }
}
