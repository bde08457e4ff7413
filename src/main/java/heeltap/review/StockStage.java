package heeltap.review;

import heeltap.cost.IngredientPrice;
import heeltap.cost.IngredientPrices;
import heeltap.cost.Purchase;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.record.Setting;
import heeltap.stock.Layer;
import heeltap.stock.Movement;
import heeltap.stock.Reconciliation;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reconciles every ingredient's month. */
final class StockStage {
    private StockStage() {}

    /**
     * What a month's counts say at its two ends.
     *
     * @param opening by ingredient, as counted; absent: unknown
     * @param openingLayers what it is made of, from the month before; absent: none
     * @param closing by ingredient, as counted; absent: not counted
     */
    record Ends(Map<String, Exact> opening, Map<String, List<Layer>> openingLayers, Map<String, Exact> closing) {}

    /**
     * One reconciliation for each ingredient of the book, in its order.
     *
     * @param before prices from before the month: of an earlier month, else the list price
     */
    static Map<String, Reconciliation> of(
            Book book,
            YearMonth month,
            Ends ends,
            List<Purchase> purchases,
            CountStage.Lost lost,
            Map<String, Exact> use,
            IngredientPrices before) {
        Map<String, List<Layer>> bought = layers(purchases);
        Map<String, Reconciliation> result = new LinkedHashMap<>();
        for (Ingredient ingredient : book.ingredients()) {
            String name = ingredient.name();
            List<Layer> layers = bought.getOrDefault(name, List.of());
            Movement movement = new Movement(
                    name,
                    Optional.ofNullable(ends.opening().get(name)),
                    openingLayers(name, ends),
                    layers,
                    lost.transfers().getOrDefault(name, Exact.ZERO),
                    Optional.ofNullable(ends.closing().get(name)),
                    use.getOrDefault(name, Exact.ZERO),
                    lost.recordedOf(name),
                    fallback(before.get(name), layers),
                    purchases.stream().noneMatch(line -> line.isSetAside() && name.equals(line.ingredient())));
            result.put(
                    name,
                    Reconciliation.of(
                            movement,
                            book.settings().get(Setting.STOCK_VALUE_PRICE),
                            book.settings().get(Setting.VARIANCE_TOLERANCE_PERCENT),
                            month.lengthOfMonth()));
        }
        return result;
    }

    /** Last month's layers, if they hold what was counted; a recount keeps their average value. */
    static List<Layer> openingLayers(String name, Ends ends) {
        List<Layer> layers = ends.openingLayers().getOrDefault(name, List.of());
        Exact counted = ends.opening().getOrDefault(name, Exact.ZERO);
        Exact held = layers.stream().map(Layer::quantity).reduce(Exact.ZERO, Exact::plus);
        if (layers.isEmpty() || held.equals(counted)) {
            return layers;
        }
        if (!held.isPositive()) {
            return List.of();
        }
        Money value = layers.stream().map(Layer::value).reduce(Money.ZERO, Money::plus);
        return counted.isZero() ? List.of() : List.of(new Layer(counted, value.times(counted.dividedBy(held))));
    }

    /** A price from before the month, else the month's first purchase. */
    private static Optional<Money> fallback(IngredientPrice before, List<Layer> bought) {
        return Optional.ofNullable(before.unitCost())
                .or(() -> bought.stream()
                        .filter(layer ->
                                layer.quantity().isPositive() && layer.value().isPositive())
                        .findFirst()
                        .map(layer -> layer.value().dividedBy(layer.quantity())));
    }

    /** Joined purchases by ingredient, those of one day as one layer, in order of time. */
    static Map<String, List<Layer>> layers(List<Purchase> purchases) {
        Map<String, TreeMap<LocalDate, Layer>> days = new TreeMap<>();
        for (Purchase purchase : purchases) {
            if (purchase.ingredient() != null && purchase.baseQuantity() != null) {
                days.computeIfAbsent(purchase.ingredient(), name -> new TreeMap<>())
                        .merge(
                                purchase.date() == null ? LocalDate.MIN : purchase.date(),
                                new Layer(purchase.baseQuantity(), purchase.cost(), purchase.date()),
                                (a, b) -> new Layer(
                                        a.quantity().plus(b.quantity()),
                                        a.value().plus(b.value()),
                                        a.day()));
            }
        }
        Map<String, List<Layer>> layers = new TreeMap<>();
        days.forEach((name, byDay) -> layers.put(name, new ArrayList<>(byDay.values())));
        return layers;
    }
}
