package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.stock.MonthSide.DrinkMonth;
import heeltap.stock.MonthSide.GoodsUsed;
import heeltap.stock.Step.Effect;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the counts say beyond theoretical use, by ingredient, with p what one unit costs the drinks, u what one unit used
 * cost as stock is valued, A the quantity used: {@code losses = p x recorded}, {@code unexplained use = p x (A -
 * theoretical use - recorded)}, {@code valuation = (u - p) x A}. With standard prices for p the last two are the usage and
 * the price variance of standard costing. Source: standard variance analysis, OpenStax, Principles of Accounting vol. 2,
 * 8.2 (worked example 09a), and a restaurant's menu (worked example 09j). Quantity is what was used, not what was bought.
 */
final class BeyondTheory {
    private BeyondTheory() {}

    /** Of the later month less that of the earlier one. */
    static List<Step> steps(MonthSide a, MonthSide b) {
        return List.of(step(Effect.LOSSES, a, b), step(Effect.UNEXPLAINED_USE, a, b), step(Effect.VALUATION, a, b));
    }

    private static Step step(Effect effect, MonthSide a, MonthSide b) {
        return of(effect, b).plus(of(effect, a).negated());
    }

    private static Step of(Effect effect, MonthSide month) {
        Map<String, Exact> theory = month.theoreticalUse();
        Map<String, Money> ingredients = new TreeMap<>();
        Map<String, Money> drinks = new TreeMap<>();
        month.goods().forEach((name, used) -> {
            Money part = part(effect, used, month.unitCost(name), theory.getOrDefault(name, Exact.ZERO));
            ingredients.put(name, part);
            if (effect == Effect.VALUATION) {
                share(part, name, month, theory, drinks);
            }
        });
        Money amount = ingredients.values().stream().reduce(Money.ZERO, Money::plus);
        return new Step(effect, amount, drinks, ingredients);
    }

    private static Money part(Effect effect, GoodsUsed used, Money unit, Exact theory) {
        return switch (effect) {
            case LOSSES -> unit.times(used.losses());
            case UNEXPLAINED_USE -> unit.times(used.unexplained());
            case VALUATION ->
                used.cost().minus(unit.times(theory.plus(used.losses()).plus(used.unexplained())));
            default -> throw new IllegalArgumentException("not beyond theory: " + effect);
        };
    }

    /**
     * What the goods of a drink cost beyond its own price: each bears its share of the ingredient's theoretical use. A loss
     * or unexplained use is no drink's.
     */
    private static void share(
            Money part, String ingredient, MonthSide month, Map<String, Exact> theory, Map<String, Money> drinks) {
        Optional<Exact> whole = Optional.ofNullable(theory.get(ingredient)).filter(use -> !use.isZero());
        if (whole.isEmpty()) {
            return;
        }
        for (DrinkMonth drink : month.drinks()) {
            Exact use = drink.use().getOrDefault(ingredient, Exact.ZERO).times(drink.served());
            if (!use.isZero()) {
                drinks.merge(drink.drink(), part.times(use.dividedBy(whole.get())), Money::plus);
            }
        }
    }
}
