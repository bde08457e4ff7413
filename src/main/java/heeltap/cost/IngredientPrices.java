package heeltap.cost;

import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.record.PriceRule;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The unit cost of every ingredient, as bought and without tax: by the rule from this month's purchases, else by the same
 * rule from the nearest earlier month that bought it, else the list price. Always says which.
 */
public final class IngredientPrices {
    private final Map<String, IngredientPrice> prices;
    private final List<Problem> problems;

    private IngredientPrices(Map<String, IngredientPrice> prices, List<Problem> problems) {
        this.prices = Collections.unmodifiableMap(prices);
        this.problems = List.copyOf(problems);
    }

    /** One month's lines of one ingredient, by time. */
    private record Bought(List<Purchase> lines, StockPosition position) {}

    /**
     * @param month the month whose drinks are costed
     * @param earlier any earlier months, in any order
     */
    public static IngredientPrices of(Book book, PriceRule rule, MonthPurchases month, List<MonthPurchases> earlier) {
        List<Map<String, Bought>> newestFirst = new ArrayList<>();
        newestFirst.add(byIngredient(month));
        earlier.stream()
                .filter(other -> other.month().isBefore(month.month()))
                .sorted(Comparator.comparing(MonthPurchases::month).reversed())
                .forEach(other -> newestFirst.add(byIngredient(other)));
        Map<String, IngredientPrice> prices = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Ingredient ingredient : book.ingredients()) {
            prices.put(
                    ingredient.name(),
                    invoiced(ingredient.name(), rule, newestFirst)
                            .orElseGet(() -> listed(ingredient, book.settings(), problems)));
        }
        return new IngredientPrices(prices, problems);
    }

    private static Map<String, Bought> byIngredient(MonthPurchases month) {
        Map<String, Bought> bought = new HashMap<>();
        for (Purchase purchase : month.purchases()) {
            if (purchase.ingredient() != null) {
                String name = purchase.ingredient();
                bought.computeIfAbsent(
                                name,
                                absent -> new Bought(
                                        new ArrayList<>(), month.positions().getOrDefault(name, StockPosition.UNKNOWN)))
                        .lines()
                        .add(purchase);
            }
        }
        bought.values().forEach(one -> one.lines().sort(Purchase.BY_TIME));
        return bought;
    }

    private static Optional<IngredientPrice> invoiced(
            String name, PriceRule rule, List<Map<String, Bought>> newestFirst) {
        for (int age = 0; age < newestFirst.size(); age++) {
            Bought bought = newestFirst.get(age).get(name);
            Optional<PriceRules.Price> found =
                    bought == null ? Optional.empty() : PriceRules.price(rule, bought.lines(), bought.position());
            if (found.isPresent()) {
                PriceRules.Price price = found.get();
                return Optional.of(new IngredientPrice(
                        name,
                        price.unitCost(),
                        age == 0 ? price.basis() : PriceBasis.EARLIER_MONTH,
                        price.source(),
                        previous(name, price, newestFirst, age)));
            }
        }
        return Optional.empty();
    }

    /** The last purchase before the one behind the price; of an average, the last before its month. */
    private static @Nullable Money previous(
            String name, PriceRules.Price price, List<Map<String, Bought>> newestFirst, int age) {
        Purchase source = price.source();
        if (source == null) {
            return null;
        }
        for (int i = age; i < newestFirst.size(); i++) {
            Bought bought = newestFirst.get(i).get(name);
            if (bought == null || (i == age && price.basis() == PriceBasis.AVERAGE)) {
                continue;
            }
            Optional<Purchase> last = PriceRules.lastPriced(bought.lines().stream()
                    .filter(purchase -> Purchase.BY_TIME.compare(purchase, source) < 0)
                    .filter(purchase -> !isPartOf(source, purchase))
                    .toList());
            if (last.isPresent()) {
                return last.get().unitCost();
            }
        }
        return null;
    }

    /** One purchase may stand in several lines of its invoice: the same goods at the same price are no earlier purchase. */
    private static boolean isPartOf(Purchase source, Purchase other) {
        return other.supplier().equals(source.supplier())
                && other.invoice().equals(source.invoice())
                && Objects.equals(other.date(), source.date())
                && Objects.equals(other.unitCost(), source.unitCost());
    }

    private static IngredientPrice listed(Ingredient ingredient, Settings settings, List<Problem> problems) {
        Money price = ingredient.listPrice();
        if (price == null) {
            return none(ingredient);
        }
        if (price.isZero()) {
            return new IngredientPrice(ingredient.name(), Money.ZERO, PriceBasis.LIST, null, null);
        }
        Pack pack = ingredient.listPack();
        if (pack == null) {
            problems.add(Problem.fault(
                    ProblemKind.PACK_UNREADABLE,
                    ingredient.place(),
                    "",
                    ingredient.name() + " has a list price but no list pack, so the price says nothing.",
                    "Fill in List pack on the sheet Ingredients."));
            return none(ingredient);
        }
        Traits.Converted held = Traits.of(ingredient).toMeasure(pack.total());
        if (held.value() == null || !held.value().isPositive()) {
            problems.add(Conversions.unfit(
                    ingredient.place(),
                    pack.text(),
                    ingredient.name(),
                    ingredient.measure(),
                    held.missing(),
                    pack.total()));
            return none(ingredient);
        }
        Money net = withoutInvoiceTax(price, settings);
        return new IngredientPrice(ingredient.name(), net.dividedBy(held.value()), PriceBasis.LIST, null, null);
    }

    private static IngredientPrice none(Ingredient ingredient) {
        return new IngredientPrice(ingredient.name(), null, PriceBasis.NONE, null, null);
    }

    /** A bought-in price of the book without tax: it holds tax where invoice prices do. */
    static Money withoutInvoiceTax(Money price, Settings settings) {
        return settings.get(Setting.INVOICE_PRICES_INCLUDE_TAX)
                ? price.withoutTax(settings.get(Setting.INVOICE_TAX_PERCENT))
                : price;
    }

    /** @throws IllegalArgumentException if the book has no such ingredient */
    public IngredientPrice get(String ingredient) {
        IngredientPrice price = prices.get(ingredient);
        if (price == null) {
            throw new IllegalArgumentException("no ingredient of that name: " + ingredient);
        }
        return price;
    }

    /** In the order of the book. */
    public Collection<IngredientPrice> all() {
        return prices.values();
    }

    /** List prices that cannot be used, by place. */
    public List<Problem> problems() {
        return problems.stream().sorted(Problem.ORDER).toList();
    }
}
