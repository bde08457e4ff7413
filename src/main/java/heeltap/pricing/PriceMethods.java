package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/** Published ways to set a price from cost, and to judge a change of price. */
public final class PriceMethods {
    private PriceMethods() {}

    /** Net price at a target cost percent: {@code cost / target}. */
    public static Money atCostPercent(Money cost, Exact targetPercent) {
        return cost.dividedBy(targetPercent.percent());
    }

    /** Net price by contribution margin: {@code cost + margin wanted a serve}. */
    public static Money atMargin(Money cost, Money margin) {
        return cost.plus(margin);
    }

    /** Net price at a target prime cost percent: {@code (cost + labour) / target}. */
    public static Money atPrimeCostPercent(Money cost, Money labour, Exact targetPercent) {
        return cost.plus(labour).dividedBy(targetPercent.percent());
    }

    /**
     * Break-even change in units in percent, {@code -ΔP / (CM + ΔP)} (Nagle and Holden); empty where the new margin is
     * not positive: no number of units makes up for that, or the price did not change.
     *
     * @param marginNow net price less cost now
     * @param netChange new net price less the present one
     */
    public static Optional<Exact> breakEvenUnitsPercent(Money marginNow, Money netChange) {
        Money marginNew = marginNow.plus(netChange);
        if (netChange.isZero() || !marginNew.isPositive()) {
            return Optional.empty();
        }
        return Optional.of(netChange.negated().dividedBy(marginNew).times(Exact.HUNDRED));
    }
}
