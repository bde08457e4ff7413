package heeltap.review;

import heeltap.cost.Costs;
import heeltap.cost.FruitShare;
import heeltap.quantity.Exact;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fruit that what was sold and given away in a month peels and juices.
 *
 * @param shares what the lines of each such fruit bear, by name
 * @param notices of fruit of which more was peeled than juiced
 */
record FruitCut(Map<String, FruitShare> shares, List<Problem> notices) {
    /** @param costs in which every line bears the whole fruit */
    static FruitCut of(Book book, Costs costs, Map<String, DrinkSales> sales) {
        Map<String, Exact> whole = Use.of(costs, sales).byIngredient();
        Map<String, Exact> withoutPeel = use(book, costs, sales, FruitShare.WITHOUT_PEEL);
        Map<String, FruitShare> shares = new TreeMap<>();
        List<Problem> notices = new ArrayList<>();
        if (withoutPeel.equals(whole)) {
            return new FruitCut(shares, notices);
        }
        Map<String, Exact> withoutJuice = use(book, costs, sales, FruitShare.WITHOUT_JUICE);
        for (Ingredient fruit : book.ingredients()) {
            Exact peeled = missing(fruit, whole, withoutPeel);
            Exact juiced = missing(fruit, whole, withoutJuice);
            if (!peeled.isPositive() || !juiced.isPositive() || shares.containsKey(fruit.name())) {
                continue;
            }
            Exact percent = fruit.peelCostPercent();
            shares.put(fruit.name(), FruitShare.of(peeled, juiced, percent == null ? Exact.ZERO : percent.percent()));
            if (peeled.isGreaterThan(juiced)) {
                notices.add(beyond(fruit, peeled, juiced));
            }
        }
        return new FruitCut(shares, notices);
    }

    private static Map<String, Exact> use(Book book, Costs costs, Map<String, DrinkSales> sales, FruitShare share) {
        Map<String, FruitShare> all = new HashMap<>();
        book.ingredients().forEach(fruit -> all.put(fruit.name(), share));
        return Use.of(costs.sharing(all), sales).byIngredient();
    }

    private static Exact missing(Ingredient fruit, Map<String, Exact> whole, Map<String, Exact> less) {
        return whole.getOrDefault(fruit.name(), Exact.ZERO).minus(less.getOrDefault(fruit.name(), Exact.ZERO));
    }

    private static Problem beyond(Ingredient fruit, Exact peeled, Exact juiced) {
        return Problem.notice(
                ProblemKind.VALUE_DOUBTFUL,
                fruit.place(),
                fruit.name(),
                "More " + fruit.name() + " was peeled (" + shown(peeled) + ") than juiced (" + shown(juiced)
                        + "): the rest was cut for its peel alone, and the lines that take peel bear it.",
                "Check how much peel the specs take, in fruit.");
    }

    private static String shown(Exact pieces) {
        return pieces.toSignificant(4).toPlainString();
    }
}
