package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;

/**
 * Three bands of equal width between the lowest and the highest price; a price on a limit is in the middle one. Where
 * all prices are the same they all are.
 *
 * @param lowest price
 * @param highest price
 * @param lowerLimit lowest + (highest - lowest) / 3
 * @param upperLimit highest - (highest - lowest) / 3
 * @param low how many prices lie below the lower limit
 * @param middle how many lie between, both limits included
 * @param high how many lie above the upper limit
 */
public record PriceBands(
        Money lowest, Money highest, Money lowerLimit, Money upperLimit, int low, int middle, int high) {
    /** @param sorted rising, at least one */
    static PriceBands of(List<Money> sorted) {
        Money lowest = sorted.get(0);
        Money highest = sorted.get(sorted.size() - 1);
        Money width = highest.minus(lowest).dividedBy(Exact.of(3));
        Money lower = lowest.plus(width);
        Money upper = highest.minus(width);
        int low = (int)
                sorted.stream().filter(price -> price.compareTo(lower) < 0).count();
        int high = (int)
                sorted.stream().filter(price -> price.compareTo(upper) > 0).count();
        return new PriceBands(lowest, highest, lower, upper, low, sorted.size() - low - high, high);
    }
}
