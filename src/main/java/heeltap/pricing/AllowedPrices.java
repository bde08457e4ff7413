package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;

/**
 * The prices one review may choose among for one drink, as the guest reads them.
 *
 * @param low lowest price inside the largest change
 * @param high highest
 * @param prices those of the grid from low to high that are not below the floor, rising; where the law's floor lies
 *     above all of them, the one next step: it wins over the largest change
 * @param isForced whether it is that one
 */
record AllowedPrices(Money low, Money high, List<Money> prices, boolean isForced) {
    static AllowedPrices of(Money now, PriceFloor floor, PricingRules rules) {
        Exact change = rules.largestChangePercent().percent();
        Money low = now.times(Exact.ONE.minus(change)).max(Money.ZERO);
        Money high = now.times(Exact.ONE.plus(change));
        List<Money> prices = rules.grid().between(low.max(floor.price()), high);
        return prices.isEmpty() && now.compareTo(floor.legal()) < 0
                ? new AllowedPrices(low, high, List.of(rules.grid().atLeast(floor.price())), true)
                : new AllowedPrices(low, high, prices, false);
    }
}
