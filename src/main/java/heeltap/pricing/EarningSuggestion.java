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
     */
    public record Expected(
            Interval elasticity, Exact unitsNow, Interval units, Interval marginChange, Optional<Exact> chancePercent) {
        /** Change of units in percent of those expected at present prices; empty where none are. */
        public Optional<Exact> unitsPercent() {
            return unitsNow.isPositive()
                    ? Optional.of(
                            units.value().minus(unitsNow).dividedBy(unitsNow).times(Exact.HUNDRED))
                    : Optional.empty();
        }
    }
}
