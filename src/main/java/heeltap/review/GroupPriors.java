package heeltap.review;

import heeltap.pricing.ElasticityPrior;
import heeltap.pricing.ElasticityPrior.Beverage;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Folding;
import heeltap.record.PublishedElasticity;
import heeltap.record.Setting;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What is believed of each group's price elasticity before sales speak: the bar's own figure, else a published mean. */
final class GroupPriors {
    private final Map<String, Exact> own = new HashMap<>();
    private final Map<String, Map<Beverage, Money>> made = new HashMap<>();
    private final Optional<Exact> ofBar;
    private final PublishedElasticity means;

    private GroupPriors(Book book) {
        ofBar = book.settings().find(Setting.GROUP_ELASTICITY);
        means = book.settings().get(Setting.PUBLISHED_ELASTICITY);
    }

    static GroupPriors of(Book book, MonthFigures month, Categories categories) {
        GroupPriors priors = new GroupPriors(book);
        Map<String, String> ingredientGroup = new HashMap<>();
        book.ingredients().forEach(one -> ingredientGroup.put(one.name(), one.group()));
        for (Drink drink : book.drinks()) {
            String group = categories.group(drink);
            categories
                    .find(drink)
                    .flatMap(category -> Optional.ofNullable(category.groupElasticity()))
                    .ifPresent(elasticity -> priors.own.putIfAbsent(group, elasticity));
            Exact sold = Optional.ofNullable(month.sales().get(drink.name()))
                    .orElseThrow()
                    .sold()
                    .max(Exact.ONE);
            StockGroups.costByGroup(month.costs().drinkOn(drink.name(), month.lastDay()), month, ingredientGroup)
                    .forEach((name, cost) -> priors.add(group, beverage(name), cost.times(sold)));
        }
        return priors;
    }

    /** By the group of the ingredient. */
    private static Beverage beverage(String ingredientGroup) {
        String name = Folding.fold(ingredientGroup);
        return name.startsWith("spirit")
                ? Beverage.SPIRITS
                : name.startsWith("wine") ? Beverage.WINE : name.startsWith("beer") ? Beverage.BEER : Beverage.OTHER;
    }

    private void add(String group, Beverage beverage, Money cost) {
        made.computeIfAbsent(group, name -> new EnumMap<>(Beverage.class)).merge(beverage, cost, Money::plus);
    }

    /** The beverage with more than half of what the group's spirits, wine and beer cost; else all alcohol. */
    Beverage madeOf(String group) {
        Map<Beverage, Money> costs = made.getOrDefault(group, Map.of());
        Money all = Money.ZERO;
        for (Map.Entry<Beverage, Money> entry : costs.entrySet()) {
            all = entry.getKey() == Beverage.OTHER ? all : all.plus(entry.getValue());
        }
        for (Map.Entry<Beverage, Money> entry : costs.entrySet()) {
            boolean most = entry.getValue().times(Exact.of(2)).compareTo(all) > 0;
            if (entry.getKey() != Beverage.OTHER && most) {
                return entry.getKey();
            }
        }
        return Beverage.OTHER;
    }

    ElasticityPrior of(String group) {
        Optional<Exact> bar = Optional.ofNullable(own.get(group)).or(() -> ofBar);
        return bar.map(ElasticityPrior::ofBar).orElseGet(() -> ElasticityPrior.published(madeOf(group), means));
    }
}
