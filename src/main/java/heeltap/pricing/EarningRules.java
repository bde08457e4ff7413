package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * What the bar asks of a change of price.
 *
 * @param pricing grid, largest change, floor and the bar's own methods
 * @param largestAverageRisePercent cap on a group's average rise in one review, weighted by units sold; empty: none
 * @param leastChancePercent chance to pay below which a change is not suggested
 * @param leastGain expected gain a month below which a change is not worth a new menu
 */
public record EarningRules(
        PricingRules pricing, Optional<Exact> largestAverageRisePercent, Exact leastChancePercent, Money leastGain) {}
