package heeltap.record;

import heeltap.quantity.Exact;

/** How much of an ingredient a spec line asks for, as written and before any unit is applied. */
public sealed interface SpecAmount {
    /**
     * A number of units. Of a range ("1-2") it is the upper end.
     *
     * @param number may be a fraction such as 3/4
     */
    record Units(Exact number) implements SpecAmount {}

    /** Fills the drink up to its {@code Serve ml}. */
    record ToTop() implements SpecAmount {}

    /** Solved from the preparation's targets. */
    record ToTarget() implements SpecAmount {}

    /** Rinses the glass: costs one of its unit, or 5 ml where the line has none; most of it is poured out again. */
    record Rinse() implements SpecAmount {}

    /**
     * The juice of so many pieces of fruit, through the fruit's {@code Juice ml}.
     *
     * @param pieces such as 1/2
     */
    record JuiceOf(Exact pieces) implements SpecAmount {}

    /**
     * Cannot be costed ("to taste") or understood; the item is left out with the reason.
     *
     * @param reason one sentence
     */
    record Unclear(String reason) implements SpecAmount {}
}
