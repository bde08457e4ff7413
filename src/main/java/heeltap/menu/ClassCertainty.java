package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * The chance that a repeat of the month would put a drink in the same class.
 *
 * <p>The mix is drawn from its Dirichlet posterior given the month's counts, a repeat of the month from the
 * Dirichlet-multinomial around that mix, and the repeat is classed by the same rule with the same prices and costs. Counts
 * that vary φ times as much as single orders count as {@code n / φ} orders, and the repeat varies φ times as much. The
 * seed is fixed: same input, same figure.
 */
public final class ClassCertainty {
    private static final int SEED = 20_250_101;
    private static final int REPEATS = 4_000;

    private ClassCertainty() {}

    /** Certainties of all drinks of a group that was analysed under these rules. */
    public static GroupCertainty of(MenuGroup group, MenuRules rules) {
        List<ClassedDrink> listed = group.drinks().stream()
                .filter(drink -> drink.popularity().isPresent())
                .toList();
        Overdispersion spread =
                Overdispersion.of(listed.stream().map(ClassedDrink::item).toList());
        int[] same = repeats(listed, spread.factor(), rules);
        List<GroupCertainty.DrinkCertainty> drinks = new ArrayList<>();
        for (ClassedDrink drink : group.drinks()) {
            int index = listed.indexOf(drink);
            Optional<Exact> percent = drink.classes()
                    .marginClass()
                    .filter(c -> index >= 0)
                    .map(c -> Exact.of(same[index]).dividedBy(Exact.of(REPEATS)).times(Exact.HUNDRED));
            drinks.add(new GroupCertainty.DrinkCertainty(drink.item().drink(), percent));
        }
        return new GroupCertainty(group.name(), spread.factor(), spread.source(), List.copyOf(drinks));
    }

    /** How often each drink stays in its class. */
    private static int[] repeats(List<ClassedDrink> drinks, double spread, MenuRules rules) {
        RepeatedMonth month = RepeatedMonth.of(drinks, spread, rules);
        RandomGenerator random = new Well19937c(SEED);
        int[] same = new int[drinks.size()];
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            MarginClass[] classes = month.classes(month.counts(random));
            for (int i = 0; i < same.length; i++) {
                MarginClass now = drinks.get(i).classes().marginClass().orElse(null);
                if (now != null && now == classes[i]) {
                    same[i]++;
                }
            }
        }
        return same;
    }

    /** Margin as a binary number, not a number where unknown: statistics, not money. */
    static double margin(ClassedDrink drink) {
        return drink.item().isCosted()
                ? drink.item().margin().map(Money::amount).map(Exact::toDouble).orElse(Double.NaN)
                : Double.NaN;
    }
}
