package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.PriceRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The three rules for the price of an ingredient within one month. */
final class PriceRules {
    private PriceRules() {}

    /** @param source null for an opening stock of unknown descent */
    record Price(Money unitCost, PriceBasis basis, @Nullable Purchase source) {}

    /**
     * The price by the rule, or none where nothing was bought for money that month. Where the rule has no answer (fifo
     * without a closing count, an average of goods mostly sent back) it is the latest price, and says so.
     *
     * @param bought the ingredient's lines of the month, by time
     */
    static Optional<Price> price(PriceRule rule, List<Purchase> bought, StockPosition position) {
        Optional<Price> latest = latest(bought);
        if (latest.isEmpty()) {
            return latest;
        }
        return switch (rule) {
            case LATEST -> latest;
            case AVERAGE -> average(bought, position).or(() -> latest);
            case FIFO -> fifo(bought, position).or(() -> latest);
        };
    }

    /** The later row of the latest day, credit notes and free goods aside. */
    private static Optional<Price> latest(List<Purchase> bought) {
        return lastPriced(bought)
                .flatMap(last -> Optional.ofNullable(last.unitCost())
                        .map(unitCost -> new Price(unitCost, PriceBasis.LATEST, last)));
    }

    static Optional<Purchase> lastPriced(List<Purchase> bought) {
        return bought.stream().filter(Purchase::isPriced).reduce((earlier, later) -> later);
    }

    /** Periodic weighted average = (opening value + cost of purchases) / (opening + purchased), credits taken off. */
    private static Optional<Price> average(List<Purchase> bought, StockPosition position) {
        Exact quantity = Exact.ZERO;
        Money value = Money.ZERO;
        for (StockLayer layer : position.opening()) {
            quantity = quantity.plus(layer.quantity());
            value = value.plus(layer.value());
        }
        for (Purchase purchase : bought) {
            if (purchase.baseQuantity() != null) {
                quantity = quantity.plus(purchase.baseQuantity());
                value = value.plus(purchase.cost());
            }
        }
        return quantity.isPositive() && value.isPositive()
                ? Optional.of(new Price(
                        value.dividedBy(quantity),
                        PriceBasis.AVERAGE,
                        lastPriced(bought).orElse(null)))
                : Optional.empty();
    }

    /**
     * First in, first out: what is left at the end are the newest layers; the price is that of the oldest of them, free
     * goods passed over. With nothing left it is the newest layer's.
     */
    private static Optional<Price> fifo(List<Purchase> bought, StockPosition position) {
        Exact closing = position.closing();
        if (closing == null) {
            return Optional.empty();
        }
        List<StockLayer> layers = layers(bought, position);
        StockLayer found = null;
        Exact held = Exact.ZERO;
        for (int i = layers.size() - 1; i >= 0; i--) {
            StockLayer layer = layers.get(i);
            if (layer.value().isPositive() && (found == null || held.isLessThan(closing))) {
                found = layer;
            }
            held = held.plus(layer.quantity());
        }
        return found == null
                ? Optional.empty()
                : Optional.of(new Price(found.unitCost(), PriceBasis.FIFO, found.purchase()));
    }

    /** Opening and purchases, oldest first; goods sent back come off the newest layers there were. */
    private static List<StockLayer> layers(List<Purchase> bought, StockPosition position) {
        List<StockLayer> layers = new ArrayList<>(position.opening());
        for (Purchase purchase : bought) {
            Exact quantity = purchase.baseQuantity();
            if (quantity != null && quantity.isPositive()) {
                layers.add(new StockLayer(quantity, purchase.cost(), purchase));
            } else if (quantity != null) {
                takeOff(layers, quantity.negated());
            }
        }
        return layers;
    }

    private static void takeOff(List<StockLayer> layers, Exact quantity) {
        Exact left = quantity;
        while (left.isPositive() && !layers.isEmpty()) {
            StockLayer newest = layers.remove(layers.size() - 1);
            Exact kept = newest.quantity().minus(left);
            left = left.minus(newest.quantity());
            if (kept.isPositive()) {
                layers.add(new StockLayer(kept, newest.unitCost().times(kept), newest.purchase()));
            }
        }
    }
}
