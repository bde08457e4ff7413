package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The prices that may stand on the menu, as the guest reads them: multiples of a step, or whole currency units plus one
 * of the bar's endings.
 *
 * @param step distance of two prices, positive
 * @param endings sorted, each at least 0 and below 1; where there are any they override the step
 */
public record PriceGrid(Money step, List<Money> endings) {
    private static final Money UNIT = new Money(Exact.ONE);

    /** @throws IllegalArgumentException if the step is not positive or an ending is no fraction of a unit */
    public PriceGrid {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("price step must be above 0: " + step);
        }
        for (Money ending : endings) {
            if (ending.isNegative() || ending.compareTo(UNIT) >= 0) {
                throw new IllegalArgumentException("price ending must be from .00 to below 1: " + ending);
            }
        }
        endings = endings.stream().sorted().distinct().toList();
    }

    public static PriceGrid step(String step) {
        return new PriceGrid(Money.of(step), List.of());
    }

    /** All prices from {@code low} to {@code high}, both included, rising. */
    List<Money> between(Money low, Money high) {
        List<Money> prices = new ArrayList<>();
        if (low.compareTo(high) > 0) {
            return prices;
        }
        Money price = atLeast(low);
        while (price.compareTo(high) <= 0) {
            prices.add(price);
            price = after(price);
        }
        return prices;
    }

    /** The lowest price not below {@code low}. */
    Money atLeast(Money low) {
        if (endings.isEmpty()) {
            return new Money(low.amount().roundToMultiple(step.amount(), RoundingMode.CEILING));
        }
        Money whole = new Money(low.amount().floor());
        return endings.stream()
                .map(whole::plus)
                .filter(price -> price.compareTo(low) >= 0)
                .findFirst()
                .orElseGet(() -> whole.plus(UNIT).plus(endings.get(0)));
    }

    private Money after(Money price) {
        if (endings.isEmpty()) {
            return price.plus(step);
        }
        int next = endings.indexOf(new Money(price.amount().minus(price.amount().floor()))) + 1;
        Money whole = new Money(price.amount().floor());
        return next < endings.size()
                ? whole.plus(endings.get(next))
                : whole.plus(UNIT).plus(endings.get(0));
    }

    /** The price of the list nearest to the target, the higher of two that are equally near. */
    static Optional<Money> nearest(List<Money> prices, Money target) {
        Money best = null;
        for (Money price : prices) {
            if (best == null
                    || price.minus(target).abs().compareTo(best.minus(target).abs()) <= 0) {
                best = price;
            }
        }
        return Optional.ofNullable(best);
    }
}
