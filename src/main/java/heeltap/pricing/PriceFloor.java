package heeltap.pricing;

import heeltap.quantity.Money;
import java.util.Optional;

/**
 * The lowest price a drink may have, as the guest reads it.
 *
 * @param price zero where nothing binds
 * @param reason empty where nothing binds
 * @param legal the law's own part of it, zero where the bar has none
 */
public record PriceFloor(Money price, Optional<Reason> reason, Money legal) {
    /** What the floor rests on. */
    public enum Reason {
        /** Grams of alcohol times the legal lowest price per gram. */
        LEGAL,
        /** The price at which the net price is the cost. */
        COST,
        /** The present price: there is a legal lowest price, and how much alcohol the drink holds is not known. */
        ALCOHOL_UNKNOWN
    }

    /** Grams unrounded × rate, and never below cost; of two equal ones the law is named. */
    static PriceFloor of(PricedDrink drink, PricingRules rules) {
        Money legal =
                drink.alcoholGrams().map(rules.lowestPricePerGram()::times).orElse(Money.ZERO);
        Money cost = drink.readPerNet()
                .flatMap(factor -> drink.cost().map(c -> c.times(factor)))
                .orElse(Money.ZERO);
        Money now = drink.priceNow().orElse(Money.ZERO);
        if (rules.lowestPricePerGram().isPositive() && drink.alcoholGrams().isEmpty() && now.compareTo(cost) >= 0) {
            return new PriceFloor(now, Optional.of(Reason.ALCOHOL_UNKNOWN), Money.ZERO);
        }
        if (legal.isPositive() && legal.compareTo(cost) >= 0) {
            return new PriceFloor(legal, Optional.of(Reason.LEGAL), legal);
        }
        return cost.isPositive()
                ? new PriceFloor(cost, Optional.of(Reason.COST), legal)
                : new PriceFloor(Money.ZERO, Optional.empty(), legal);
    }
}
