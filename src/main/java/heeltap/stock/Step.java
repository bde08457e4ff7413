package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One step of a chain from an earlier month's figure to a later month's.
 *
 * @param amount what it adds to the later month
 * @param drinks the part of each drink, where drinks have one
 * @param ingredients the part of each ingredient, where ingredients have one
 */
public record Step(Effect effect, Money amount, Map<String, Money> drinks, Map<String, Money> ingredients) {
    /** What a step is about; the order is that of a margin's chain. */
    public enum Effect {
        PRICES,
        MIX,
        VOLUME,
        NEW_DRINKS,
        DROPPED_DRINKS,
        INVOICE_PRICES,
        SPECS,
        GIVEN_AWAY,
        LOSSES,
        UNEXPLAINED_USE,
        VALUATION
    }

    /** What one drink or ingredient has in a step. */
    public record Part(String name, Money amount) {}

    /** The drink with the largest part, by absolute money; the first by name of equal ones; empty where none has one. */
    public Optional<Part> largestDrink() {
        return largest(drinks);
    }

    /** The same of ingredients. */
    public Optional<Part> largestIngredient() {
        return largest(ingredients);
    }

    /** The step the other way round. */
    public Step negated() {
        return new Step(effect, Money.ZERO, Map.of(), Map.of()).plus(this, -1);
    }

    /** Both steps together, under this one's effect. */
    public Step plus(Step other) {
        return plus(other, 1);
    }

    private Step plus(Step other, int sign) {
        return new Step(
                effect,
                amount.plus(other.amount.times(Exact.of(sign))),
                merged(drinks, other.drinks, sign),
                merged(ingredients, other.ingredients, sign));
    }

    private static Map<String, Money> merged(Map<String, Money> a, Map<String, Money> b, int sign) {
        Map<String, Money> sums = new TreeMap<>(a);
        b.forEach((name, part) -> sums.merge(name, part.times(Exact.of(sign)), Money::plus));
        return sums;
    }

    private static Optional<Part> largest(Map<String, Money> parts) {
        return parts.entrySet().stream()
                .filter(part -> !part.getValue().isZero())
                .max(Comparator.comparing((Map.Entry<String, Money> part) ->
                                part.getValue().abs())
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(part -> new Part(part.getKey(), part.getValue()));
    }
}
