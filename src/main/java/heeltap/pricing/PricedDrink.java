package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * One drink listed on the month's last day, complete and joined.
 *
 * @param drink name
 * @param group of the drinks it competes with
 * @param priceNow as the guest reads it on the month's last day; empty: none in the book
 * @param netPrice net sales over paid serves, nothing sold: the menu price without tax; empty: neither known
 * @param cost of a serve without labour; empty: unknown
 * @param labour of a serve; zero where no rate is set
 * @param targetCostPercent of its category, above 0
 * @param alcoholGrams in a serve, unrounded; empty: unknown, so that a legal lowest price cannot be computed
 * @param held the bar keeps its price whatever comes
 */
public record PricedDrink(
        String drink,
        String group,
        Optional<Money> priceNow,
        Optional<Money> netPrice,
        Optional<Money> cost,
        Money labour,
        Exact targetCostPercent,
        Optional<Exact> alcoholGrams,
        boolean held) {
    /** @throws IllegalArgumentException if the target is not positive */
    public PricedDrink {
        if (!targetCostPercent.isPositive()) {
            throw new IllegalArgumentException("target cost percent must be above 0: " + drink);
        }
    }

    /**
     * What the guest reads for each unit of net price: tax, and what discounts take. Empty without a positive price now
     * and net price.
     */
    Optional<Exact> readPerNet() {
        return priceNow.filter(Money::isPositive)
                .flatMap(now -> netPrice.filter(Money::isPositive).map(now::dividedBy));
    }

    /** The net price that a menu price brings: net price now × new ÷ now. */
    Optional<Money> netAt(Money price) {
        return readPerNet().map(price::dividedBy);
    }

    /** Cost over net price in percent. */
    Optional<Exact> costPercentNow() {
        return costPercentAt(netPrice);
    }

    /** Cost over some net price in percent. */
    Optional<Exact> costPercentAt(Optional<Money> net) {
        return net.filter(Money::isPositive)
                .flatMap(price -> cost.map(c -> c.dividedBy(price).times(Exact.HUNDRED)));
    }
}
