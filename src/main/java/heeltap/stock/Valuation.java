package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.PriceRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is left and what it is worth: periodic FIFO, periodic weighted average, or latest price. Under each
 * {@code opening + purchases + transfers = cost of goods + closing} exactly; the cost of goods is the remainder.
 *
 * <p>Source: OpenStax, Principles of Accounting vol. 1, 10.1 to 10.3 (periodic methods).
 *
 * @param openingValue money; so too the others
 * @param transfersValue of goods that came from (positive) or went to (negative) elsewhere
 * @param closingLayers what the closing stock is made of, oldest first: next month's opening
 */
public record Valuation(
        Money openingValue,
        Money purchasesValue,
        Money transfersValue,
        Money closingValue,
        Money costOfGoods,
        List<Layer> closingLayers) {

    /**
     * Values a month's stock.
     *
     * @param opening layers of the opening stock, oldest first
     * @param purchases the month's purchases in order of date, those of one day as one layer; returns are negative
     * @param transfers net quantity in (positive) or out (negative)
     * @param closing quantity counted at the end; more than there could be is valued at the newest price
     * @param fallbackUnit value of one unit where nothing here has a price; empty: zero
     */
    public static Valuation of(
            PriceRule rule,
            List<Layer> opening,
            List<Layer> purchases,
            Exact transfers,
            Exact closing,
            Optional<Money> fallbackUnit) {
        List<Layer> layers = withoutReturns(opening, purchases);
        Money openingValue = value(opening);
        Money purchasesValue = value(purchases);
        Money averageUnit = averageUnit(layers).or(() -> fallbackUnit).orElse(Money.ZERO);
        Money latestUnit = latestUnit(layers).or(() -> fallbackUnit).orElse(Money.ZERO);
        Money transfersValue;
        List<Layer> closingLayers;
        switch (rule) {
            case FIFO -> {
                List<Layer> available = new ArrayList<>(layers);
                if (transfers.isNegative()) {
                    available = dropOldest(layers, transfers.negated(), latestUnit);
                    transfersValue = value(available).minus(value(layers));
                } else {
                    transfersValue = averageUnit.times(transfers);
                    available.add(0, new Layer(transfers, transfersValue));
                }
                closingLayers = newest(available, closing, latestUnit);
            }
            case AVERAGE -> {
                transfersValue = averageUnit.times(transfers);
                closingLayers = oneLayer(closing, averageUnit);
            }
            case LATEST -> {
                transfersValue = latestUnit.times(transfers);
                closingLayers = oneLayer(closing, latestUnit);
            }
            default -> throw new IllegalArgumentException("no such rule: " + rule);
        }
        Money closingValue = value(closingLayers);
        Money costOfGoods =
                openingValue.plus(purchasesValue).plus(transfersValue).minus(closingValue);
        return new Valuation(openingValue, purchasesValue, transfersValue, closingValue, costOfGoods, closingLayers);
    }

    static Exact quantity(List<Layer> layers) {
        return layers.stream().map(Layer::quantity).reduce(Exact.ZERO, Exact::plus);
    }

    static Money value(List<Layer> layers) {
        return layers.stream().map(Layer::value).reduce(Money.ZERO, Money::plus);
    }

    /** A return goes back out of the newest layers before it; a price credit lowers the value of the newest. */
    private static List<Layer> withoutReturns(List<Layer> opening, List<Layer> purchases) {
        List<Layer> layers = new ArrayList<>(opening);
        for (Layer purchase : purchases) {
            Layer rest = purchase;
            while (!rest.quantity().isPositive() && !layers.isEmpty()) {
                Layer last = layers.remove(layers.size() - 1);
                rest = new Layer(
                        last.quantity().plus(rest.quantity()), last.value().plus(rest.value()), last.day());
            }
            layers.add(rest);
        }
        return layers;
    }

    private static Optional<Money> averageUnit(List<Layer> layers) {
        Exact quantity = quantity(layers);
        return quantity.isPositive() ? Optional.of(value(layers).dividedBy(quantity)) : Optional.empty();
    }

    private static Optional<Money> latestUnit(List<Layer> layers) {
        for (int i = layers.size() - 1; i >= 0; i--) {
            Layer layer = layers.get(i);
            if (layer.quantity().isPositive() && layer.value().isPositive()) {
                return Optional.of(layer.value().dividedBy(layer.quantity()));
            }
        }
        return Optional.empty();
    }

    private static List<Layer> oneLayer(Exact quantity, Money unit) {
        return quantity.isZero() ? List.of() : List.of(new Layer(quantity, unit.times(quantity)));
    }

    /** The newest layers that make up a quantity, oldest first. */
    private static List<Layer> newest(List<Layer> layers, Exact wanted, Money unitBeyond) {
        List<Layer> taken = new ArrayList<>();
        Exact open = wanted;
        for (int i = layers.size() - 1; i >= 0 && open.isPositive(); i--) {
            Layer layer = layers.get(i);
            if (layer.quantity().isPositive()) {
                Exact part = open.min(layer.quantity());
                taken.add(0, new Layer(part, layer.value().times(part.dividedBy(layer.quantity())), layer.day()));
                open = open.minus(part);
            }
        }
        if (!open.isZero()) {
            taken.add(new Layer(open, unitBeyond.times(open)));
        }
        return List.copyOf(taken);
    }

    private static List<Layer> dropOldest(List<Layer> layers, Exact quantity, Money unitBeyond) {
        return new ArrayList<>(newest(layers, quantity(layers).minus(quantity), unitBeyond));
    }
}
