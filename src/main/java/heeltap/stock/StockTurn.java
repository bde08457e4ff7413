package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * How often a period's cost of goods turns its stock over, and how long goods lie.
 *
 * <p>{@code average stock = (opening + closing) / 2; turnover = cost of goods / average stock; days in stock = average
 * stock / (cost of goods / days)}. Source: OpenStax, Principles of Accounting vol. 1, 10.5. Nothing is rounded.
 */
public final class StockTurn {
    private static final Exact TWO = Exact.of(2);

    private StockTurn() {}

    /** Mean of the two ends, in money. */
    public static Money averageStock(Money opening, Money closing) {
        return opening.plus(closing).dividedBy(TWO);
    }

    /** Times in the period; empty where there was no stock on average, or counts leave a negative cost. */
    public static Optional<Exact> turnover(Money costOfGoods, Money opening, Money closing) {
        Money average = averageStock(opening, closing);
        return average.isPositive() && !costOfGoods.isNegative()
                ? Optional.of(costOfGoods.dividedBy(average))
                : Optional.empty();
    }

    /**
     * How many days the average stock lasts at the period's cost of goods; empty where nothing was used.
     *
     * @param days of the period
     */
    public static Optional<Exact> daysInStock(Money costOfGoods, Money opening, Money closing, int days) {
        return costOfGoods.isPositive()
                ? Optional.of(
                        averageStock(opening, closing).times(Exact.of(days)).dividedBy(costOfGoods))
                : Optional.empty();
    }
}
