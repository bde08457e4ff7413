package heeltap.pricing;

import heeltap.quantity.Exact;
import java.util.Optional;

/**
 * A price suggestion with what demand makes of it. The figures of demand are empty for a drink outside the estimate: no
 * price, no cost, or never listed in the months present. Money is in currency units, unrounded.
 *
 * @param price the suggestion itself with its figures before and after
 * @param demand what is expected
 */
public record EarningSuggestion(PriceSuggestion price, Optional<Expected> demand) {
    /**
     * @param elasticity the drink's own at the price now, others as they are; negative
     * @param unitsNow units a month expected at present prices
     * @param units units a month under all suggestions together; the bounds include the month's own chance
     * @param marginChange change of the drink's margin a month under all suggestions together
     * @param chancePercent chance that its own change pays for the group, given the others; empty without a change
     * @param priceChanges of the drink's own price in the months present
     */
    public record Expected(
            Interval elasticity,
            Exact unitsNow,
            Interval units,
            Interval marginChange,
            Optional<Exact> chancePercent,
            int priceChanges) {
        /** The change of units with its bounds, in percent of those at present prices; empty where none are. */
        public Optional<Interval> unitsPercents() {
            return unitsNow.isPositive()
                    ? Optional.of(new Interval(percent(units.low()), percent(units.value()), percent(units.high())))
                    : Optional.empty();
        }

        private Exact percent(Exact sold) {
            return sold.minus(unitsNow).dividedBy(unitsNow).times(Exact.HUNDRED);
        }

        /** Change of units in percent of those expected at present prices; empty where none are. */
        public Optional<Exact> unitsPercent() {
            return unitsPercents().map(Interval::value);
        }
    }
}
