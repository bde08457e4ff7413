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
        COST
    }

    /** Grams unrounded × rate, and never below cost; of two equal ones the law is named. */
    static PriceFloor of(PricedDrink drink, PricingRules rules) {
        Money legal = rules.lowestPricePerGram().times(drink.alcoholGrams());
        Money cost = drink.readPerNet()
                .flatMap(factor -> drink.cost().map(c -> c.times(factor)))
                .orElse(Money.ZERO);
        if (legal.isPositive() && legal.compareTo(cost) >= 0) {
            return new PriceFloor(legal, Optional.of(Reason.LEGAL), legal);
        }
        return cost.isPositive()
                ? new PriceFloor(cost, Optional.of(Reason.COST), legal)
                : new PriceFloor(Money.ZERO, Optional.empty(), legal);
    }
}
