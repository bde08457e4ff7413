package heeltap.review;

import heeltap.cost.Purchase;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.record.Setting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A purchase of the month whose price moved more than the settings allow since the purchase before it.
 *
 * @param before the purchase before it, of this month or an earlier one
 * @param percent of the price before; negative: cheaper
 * @param monthly what the move costs a month at the present use: (new - before) x theoretical use; negative: saves
 * @param drinks that use the ingredient, the one that uses most first
 */
record PriceMove(
        Ingredient ingredient, Purchase purchase, Purchase before, Exact percent, Money monthly, List<String> drinks) {

    /** In the book's order, those of one ingredient by time. */
    static List<PriceMove> of(Book book, List<MonthFigures> months) {
        MonthFigures now = months.get(months.size() - 1);
        Map<String, Purchase> last = new HashMap<>();
        for (MonthFigures month : months.subList(0, months.size() - 1)) {
            priced(month).forEach(purchase -> last.put(ingredientOf(purchase), purchase));
        }
        Exact limit = book.settings().get(Setting.PRICE_MOVE_PERCENT);
        Map<String, List<PriceMove>> moves = new HashMap<>();
        Map<String, Ingredient> ingredients = new HashMap<>();
        book.ingredients().forEach(ingredient -> ingredients.put(ingredient.name(), ingredient));
        for (Purchase purchase : priced(now)) {
            String name = ingredientOf(purchase);
            Purchase before = last.put(name, purchase);
            if (before != null && !unitCost(before).isZero()) {
                PriceMove move =
                        between(Optional.ofNullable(ingredients.get(name)).orElseThrow(), before, purchase, now);
                if (move.percent().abs().isGreaterThan(limit)) {
                    moves.computeIfAbsent(name, key -> new ArrayList<>()).add(move);
                }
            }
        }
        return book.ingredients().stream()
                .flatMap(ingredient -> moves.getOrDefault(ingredient.name(), List.of()).stream())
                .toList();
    }

    private static PriceMove between(Ingredient ingredient, Purchase before, Purchase purchase, MonthFigures now) {
        Money old = unitCost(before);
        Money move = unitCost(purchase).minus(old);
        Exact use = now.use().byIngredient().getOrDefault(ingredient.name(), Exact.ZERO);
        return new PriceMove(
                ingredient,
                purchase,
                before,
                move.dividedBy(old).times(Exact.HUNDRED),
                move.times(use),
                TraceTables.usersOf(ingredient.name(), now).stream()
                        .map(Map.Entry::getKey)
                        .toList());
    }

    private static List<Purchase> priced(MonthFigures month) {
        return month.purchases().purchases().stream()
                .filter(Purchase::isPriced)
                .sorted(Purchase.BY_TIME)
                .toList();
    }

    private static String ingredientOf(Purchase purchase) {
        return Objects.requireNonNull(purchase.ingredient());
    }

    /** Of a priced purchase: it has one unit cost, its share of delivery in it. */
    private static Money unitCost(Purchase purchase) {
        return Objects.requireNonNull(purchase.unitCost());
    }

    /** The drinks it hits, the largest named first, the rest counted. */
    String hits(Words words) {
        if (drinks.isEmpty()) {
            return words.say("finding.hits-none");
        }
        List<String> named = drinks.stream().limit(3).toList();
        int more = drinks.size() - named.size();
        String list = String.join("; ", named);
        return more == 0 ? words.say("finding.hits", list) : words.say("finding.hits-more", list, String.valueOf(more));
    }
}
