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
 */
public record EarningDrink(PricedDrink priced, Optional<Money> previousCost, Optional<MarginClass> marginClass) {}
