package heeltap.review;

import static heeltap.review.DrinkTable.number;

import heeltap.cost.DrinkCost;
import heeltap.cost.IngredientPrice;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.review.StockTables.StockMoney;
import heeltap.review.StockTables.Sums;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.stock.Reconciliation;
import heeltap.stock.StockTurn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Stock and cost of goods by group of ingredients, against the net sales that the group carries. */
final class StockGroups {
    /** Drinks with a fixed or faulty cost belong to no group of ingredients. */
    static final String NONE = "(none)";

    private StockGroups() {}

    static Table table(Book book, MonthFigures month, Currency currency, Words words) {
        Filling table = Shapes.STOCK_GROUPS
                .fill(words.texts())
                .formula(
                        "actual_cost_percent",
                        "IF(OR({actual_cost}=\"\",{net_sales}=0),\"\",({actual_cost}+{left_out_cost})/{net_sales}*100)")
                .formula(
                        "theoretical_cost_percent",
                        "IF(OR({theoretical_cost}=\"\",{net_sales}=0),\"\",{theoretical_cost}/{net_sales}*100)");
        Map<String, Sums> sums = sums(book, month, currency);
        Map<String, LeftOut> leftOut = leftOutByGroup(book, month, currency);
        LeftOut allLeftOut = LeftOut.NONE;
        Map<String, Money> netSales = netSales(book, month, currency);
        Map<String, Shared> targets = targets(book, month);
        int days = month.month().lengthOfMonth();
        Sums all = new Sums();
        Money allSales = Money.ZERO;
        for (Map.Entry<String, Sums> group : sums.entrySet()) {
            StockMoney money = group.getValue().money();
            Money sales = netSales.getOrDefault(group.getKey(), Money.ZERO);
            all.add(money);
            allSales = allSales.plus(sales);
            LeftOut out = leftOut.getOrDefault(group.getKey(), LeftOut.NONE);
            allLeftOut = allLeftOut.plus(out);
            table.add(
                    out.names().isEmpty() ? Emphasis.PLAIN : Emphasis.MARKED,
                    row(group.getKey(), money, sales, days, out)
                            .set("target_cost_percent", number(Shared.percent(targets.get(group.getKey())))));
        }
        Money rest = netSales.getOrDefault(NONE, Money.ZERO);
        if (!rest.isZero()) {
            allSales = allSales.plus(rest);
            table.add(new Cells()
                    .set("group", CellValue.of(NONE))
                    .set("net_sales", CellValue.of(rest))
                    .set("target_cost_percent", number(Shared.percent(targets.get(NONE)))));
        }
        for (String sum : new String[] {
            "opening_value",
            "purchases_value",
            "closing_value",
            "actual_cost",
            "theoretical_cost",
            "unexplained_cost",
            "net_sales",
            "transfers_value",
            "left_out_purchases",
            "left_out_cost"
        }) {
            table.totalFormula(sum, "SUM({" + sum + ":all})");
        }
        Shared whole = targets.values().stream().reduce(Shared.NONE, Shared::plus);
        return table.total(row(words.say("word.total"), all.money(), allSales.minus(rest), days, allLeftOut)
                        .set("net_sales", CellValue.of(allSales))
                        .set("left_out", CellValue.BLANK)
                        .set("target_cost_percent", number(Shared.percent(whole))))
                .done();
    }

    /** The total row's; empty where nothing was counted. */
    static Optional<Exact> actualPercent(Book book, MonthFigures month, Currency currency, Words words) {
        Table groups = table(book, month, currency, words);
        return groups.total()
                .map(row -> row.cells().get(groups.indexOf("actual_cost_percent")))
                .filter(CellValue.Figure.class::isInstance)
                .map(percent -> ((CellValue.Figure) percent).number());
    }

    /** Of all goods, over the net sales of the drinks made of them. */
    static Optional<Exact> theoreticalPercent(Book book, MonthFigures month, Currency currency) {
        Money cost = sums(book, month, currency).values().stream()
                .map(group -> group.money().theoretical().orElse(Money.ZERO))
                .reduce(Money.ZERO, Money::plus);
        Money sales = netSales(book, month, currency).entrySet().stream()
                .filter(group -> !group.getKey().equals(NONE))
                .map(Map.Entry::getValue)
                .reduce(Money.ZERO, Money::plus);
        return StockTables.percentOf(cost, sales);
    }

    /**
     * What moved and is in no actual figure.
     *
     * @param purchases in the group's purchases all the same
     * @param cost theoretical, in the group's theoretical cost too
     */
    private record LeftOut(List<String> names, Money purchases, Money cost) {
        static final LeftOut NONE = new LeftOut(List.of(), Money.ZERO, Money.ZERO);

        LeftOut plus(LeftOut other) {
            List<String> all = new ArrayList<>(names);
            all.addAll(other.names);
            return new LeftOut(all, purchases.plus(other.purchases), cost.plus(other.cost));
        }
    }

    /**
     * Ingredients that were bought or used and are not counted at both ends, or priced by nothing, in the book's order; none
     * where nothing at all was counted, since then there is no actual figure to leave them out of.
     */
    static List<Reconciliation> leftOut(MonthFigures month) {
        if (month.stock().values().stream().allMatch(line -> line.valuation().isEmpty())) {
            return List.of();
        }
        return month.stock().values().stream()
                .filter(line -> line.valuation().isEmpty())
                .filter(line -> !line.movement().theoreticalUse().isZero()
                        || !line.purchases().isZero()
                        || !line.purchasesValue().isZero())
                .toList();
    }

    private static Map<String, LeftOut> leftOutByGroup(Book book, MonthFigures month, Currency currency) {
        Map<String, String> groups = new HashMap<>();
        book.ingredients().forEach(ingredient -> groups.put(ingredient.name(), ingredient.group()));
        Map<String, LeftOut> byGroup = new HashMap<>();
        for (Reconciliation line : leftOut(month)) {
            StockMoney money = StockMoney.of(line, currency);
            String name = line.movement().ingredient();
            byGroup.merge(
                    groups.getOrDefault(name, NONE),
                    new LeftOut(
                            List.of(name),
                            money.purchases(),
                            money.theoretical().orElse(Money.ZERO)),
                    LeftOut::plus);
        }
        return byGroup;
    }

    /**
     * Cost of a part of the goods over the sales of all would flatter, so what is left out stands in the actual cost percent
     * with its theoretical cost.
     */
    private static Cells row(String group, StockMoney money, Money sales, int days, LeftOut leftOut) {
        Optional<Exact> daysOnHand = money.actual()
                .filter(Money::isPositive)
                .flatMap(cost -> money.closing()
                        .map(closing -> closing.times(Exact.of(days)).dividedBy(cost)));
        Optional<Exact> turnover = money.actual()
                .flatMap(cost -> StockTurn.turnover(
                        cost,
                        money.opening().orElse(Money.ZERO),
                        money.closing().orElse(Money.ZERO)));
        return money.set(new Cells()
                .set("group", CellValue.of(group))
                .set("net_sales", CellValue.of(sales))
                .set(
                        "actual_cost_percent",
                        number(money.actual().flatMap(cost -> StockTables.percentOf(cost.plus(leftOut.cost()), sales))))
                .set("left_out", CellValue.of(String.join("; ", leftOut.names())))
                .set("left_out_purchases", CellValue.of(leftOut.purchases()))
                .set("left_out_cost", CellValue.of(leftOut.cost()))
                .set(
                        "theoretical_cost_percent",
                        number(money.theoretical().flatMap(cost -> StockTables.percentOf(cost, sales))))
                .set("days_on_hand", number(daysOnHand))
                .set("turnover", number(turnover)));
    }

    /** Sums of the printed lines of each group, in the order of first mention. */
    private static Map<String, Sums> sums(Book book, MonthFigures month, Currency currency) {
        Map<String, Sums> sums = new LinkedHashMap<>();
        for (Ingredient ingredient : book.ingredients()) {
            Reconciliation line =
                    Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow();
            sums.computeIfAbsent(ingredient.group(), name -> new Sums()).add(StockMoney.of(line, currency));
        }
        return sums;
    }

    /**
     * Each drink's net sales shared over the groups of its ingredients by theoretical cost, rounded; the cents that
     * rounding leaves go to the largest group, so that the groups add up to the month's net sales.
     */
    static Map<String, Money> netSales(Book book, MonthFigures month, Currency currency) {
        Map<String, Money> exact = new TreeMap<>();
        share(book, month, (drink, group, money) -> exact.merge(group, money, Money::plus));
        return rounded(exact, month.netSales(), currency);
    }

    /**
     * Net sales and what they may cost by the targets of their drinks, unrounded.
     *
     * @param target net sales x target cost percent
     */
    private record Shared(Money sales, Money target) {
        static final Shared NONE = new Shared(Money.ZERO, Money.ZERO);

        Shared plus(Shared other) {
            return new Shared(sales.plus(other.sales), target.plus(other.target));
        }

        static Optional<Exact> percent(@Nullable Shared shared) {
            return Optional.ofNullable(shared).flatMap(s -> StockTables.percentOf(s.target, s.sales));
        }
    }

    /** The target of each group: that of its drinks, weighted by the net sales they bring it. */
    private static Map<String, Shared> targets(Book book, MonthFigures month) {
        Categories categories = new Categories(book);
        Map<String, Exact> targetOf = new HashMap<>();
        book.drinks().forEach(drink -> targetOf.put(drink.name(), categories.targetPercent(drink)));
        Map<String, Shared> shared = new TreeMap<>();
        share(
                book,
                month,
                (drink, group, money) -> shared.merge(
                        group,
                        new Shared(
                                money,
                                money.times(
                                        targetOf.getOrDefault(drink, Exact.ZERO).percent())),
                        Shared::plus));
        return shared;
    }

    /** Takes the part of a drink's net sales that falls to a group. */
    private interface Taker {
        void take(String drink, String group, Money money);
    }

    private static void share(Book book, MonthFigures month, Taker taker) {
        Map<String, String> groupOf = new HashMap<>();
        book.ingredients().forEach(ingredient -> groupOf.put(ingredient.name(), ingredient.group()));
        for (DrinkSales drink : month.sales().values()) {
            if (drink.netSales().isZero()) {
                continue;
            }
            DrinkCost cost = month.costs().drinkOn(drink.drink(), month.lastDay());
            Map<String, Money> byGroup = costByGroup(cost, month, groupOf);
            Money whole = byGroup.values().stream().reduce(Money.ZERO, Money::plus);
            if (cost.cost().isEmpty() || !whole.isPositive()) {
                taker.take(drink.drink(), NONE, drink.netSales());
            } else {
                byGroup.forEach((group, part) ->
                        taker.take(drink.drink(), group, drink.netSales().times(part.dividedBy(whole))));
            }
        }
    }

    static Map<String, Money> costByGroup(DrinkCost cost, MonthFigures month, Map<String, String> groupOf) {
        Map<String, Money> byGroup = new TreeMap<>();
        for (Map.Entry<String, Exact> use : cost.use().entrySet()) {
            IngredientPrice price = month.prices().get(use.getKey());
            Money unit = Optional.ofNullable(price.unitCost()).orElse(Money.ZERO);
            byGroup.merge(groupOf.getOrDefault(use.getKey(), NONE), unit.times(use.getValue()), Money::plus);
        }
        return byGroup;
    }

    private static Map<String, Money> rounded(Map<String, Money> exact, Money total, Currency currency) {
        Map<String, Money> rounded = new TreeMap<>();
        exact.forEach((group, money) -> rounded.put(group, Money.of(money.rounded(currency))));
        Money sum = rounded.values().stream().reduce(Money.ZERO, Money::plus);
        Money left = Money.of(total.rounded(currency)).minus(sum);
        rounded.entrySet().stream()
                .max(Map.Entry.<String, Money>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .ifPresent(largest -> largest.setValue(largest.getValue().plus(left)));
        return rounded;
    }
}
