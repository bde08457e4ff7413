package heeltap.pricing;

import heeltap.menu.MarginClass;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * One drink listed on the month's last day, with what names the driver of a suggestion.
 *
 * @param priced price, cost and what binds the price
 * @param previousCost of a serve the month before; empty: unknown
 * @param marginClass in the month's analysis; empty: none
 * @param farPrice what guests paid a serve, as the guest reads it, where that is so far from the price now that one of both
 *     must be wrong: nothing is suggested then; empty: all is well
 */
public record EarningDrink(
        PricedDrink priced, Optional<Money> previousCost, Optional<MarginClass> marginClass, Optional<Money> farPrice) {
    public EarningDrink(PricedDrink priced, Optional<Money> previousCost, Optional<MarginClass> marginClass) {
        this(priced, previousCost, marginClass, Optional.empty());
    }
}
