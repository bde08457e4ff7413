package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;

/** Hayes and Huffman, Menu analysis: a better way, 1985. */
final class GoalValue {
    private GoalValue() {}

    /**
     * {@code (1 - cost) × sold × price × (1 - (variable + cost))}, with cost and variable cost as fractions of the
     * price.
     */
    static Money of(Exact costPercent, Exact sold, Money netPrice, Exact variableCostPercent) {
        Exact kept = Exact.ONE.minus(costPercent.percent());
        Exact left = kept.minus(variableCostPercent.percent());
        return netPrice.times(kept).times(sold).times(left);
    }
}
