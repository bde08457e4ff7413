package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The published classifications of a menu, each within a group of drinks that compete. All comparisons are of exact
 * numbers: a share that lies on its threshold is on the good side of it.
 */
public final class MenuAnalysis {
    private MenuAnalysis() {}

    /** Classes the drinks of each group, groups and drinks in the order of their first mention. */
    public static List<MenuGroup> analyse(List<MenuItem> items, MenuRules rules) {
        Map<String, List<MenuItem>> groups = new LinkedHashMap<>();
        for (MenuItem item : items) {
            groups.computeIfAbsent(item.group(), name -> new ArrayList<>()).add(item);
        }
        List<MenuGroup> result = new ArrayList<>();
        groups.forEach((name, drinks) -> result.add(group(name, drinks, rules)));
        return List.copyOf(result);
    }

    private static MenuGroup group(String name, List<MenuItem> items, MenuRules rules) {
        GroupSums sums = GroupSums.of(items);
        MenuThresholds thresholds = sums.thresholds(rules);
        List<ClassedDrink> drinks =
                items.stream().map(item -> drink(item, sums, thresholds, rules)).toList();
        return new MenuGroup(name, sums.drinksOnMenu(), sums.sold(), thresholds, drinks);
    }

    private static ClassedDrink drink(MenuItem item, GroupSums sums, MenuThresholds cuts, MenuRules rules) {
        Optional<ClassedDrink.Popularity> popularity = sums.popularity(item);
        Optional<Money> totalMargin = item.margin().map(margin -> margin.times(item.sold()));
        Optional<Money> afterLabour =
                item.margin().filter(margin -> rules.withLabour()).map(margin -> margin.minus(item.labour()));
        Optional<Money> goal = goal(item, rules);
        ClassedDrink.Classes classes = item.isCosted()
                ? classes(item, popularity, totalMargin, afterLabour, goal, cuts)
                : ClassedDrink.Classes.NONE;
        return new ClassedDrink(item, popularity, totalMargin, afterLabour, goal, classes);
    }

    private static Optional<Money> goal(MenuItem item, MenuRules rules) {
        return item.costPercent()
                .flatMap(cost -> item.netPrice()
                        .map(price -> GoalValue.of(cost, item.sold(), price, rules.variableCostPercent())));
    }

    private static ClassedDrink.Classes classes(
            MenuItem item,
            Optional<ClassedDrink.Popularity> popularity,
            Optional<Money> totalMargin,
            Optional<Money> afterLabour,
            Optional<Money> goal,
            MenuThresholds cuts) {
        Optional<Exact> share = popularity.map(ClassedDrink.Popularity::percent);
        Optional<Boolean> popular = reaches(share, Optional.of(cuts.popularityPercent()));
        Optional<Boolean> equalShare = reaches(share, Optional.of(cuts.equalSharePercent()));
        Optional<Boolean> profitable = reaches(item.margin(), cuts.margin());
        Optional<Boolean> lowCost = reaches(cuts.costPercent(), item.costPercent());
        return new ClassedDrink.Classes(
                popular,
                profitable,
                both(popular, profitable).map(MarginClass::of),
                both(equalShare, lowCost).map(CostClass::of),
                both(lowCost, reaches(totalMargin, cuts.totalMargin())).map(CostMarginClass::of),
                reaches(goal, cuts.goalStandard()),
                both(popular, reaches(afterLabour, cuts.marginAfterLabour())).map(MarginClass::of));
    }

    /** Whether the value is at least the threshold, where both are known. */
    private static <T extends Comparable<T>> Optional<Boolean> reaches(Optional<T> value, Optional<T> threshold) {
        return value.flatMap(v -> threshold.map(t -> v.compareTo(t) >= 0));
    }

    private static Both both(Optional<Boolean> first, Optional<Boolean> second) {
        return new Both(first, second);
    }

    private record Both(Optional<Boolean> first, Optional<Boolean> second) {
        <T> Optional<T> map(java.util.function.BiFunction<Boolean, Boolean, T> use) {
            return first.flatMap(a -> second.map(b -> use.apply(a, b)));
        }
    }
}
