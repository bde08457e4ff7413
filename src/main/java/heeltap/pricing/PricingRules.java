package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * What the bar decides about its prices.
 *
 * @param grid prices that may stand on the menu
 * @param largestChangePercent per review, of the present price as the guest reads it
 * @param lowestPricePerGram legal floor with tax per gram of alcohol; zero: none
 * @param fixedCostAServe for the contribution-margin price; empty: not given
 * @param targetPrimeCostPercent cost and labour over price, for the prime-cost price; empty: not given
 */
public record PricingRules(
        PriceGrid grid,
        Exact largestChangePercent,
        Money lowestPricePerGram,
        Optional<Money> fixedCostAServe,
        Optional<Exact> targetPrimeCostPercent) {
    /** @throws IllegalArgumentException if the largest change is negative or the floor is */
    public PricingRules {
        if (largestChangePercent.isNegative() || lowestPricePerGram.isNegative()) {
            throw new IllegalArgumentException("a largest change and a floor cannot be negative");
        }
    }
}
