package heeltap.review;

import heeltap.cost.DrinkCost;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.stock.MonthSide;
import heeltap.stock.MonthSide.DrinkMonth;
import heeltap.stock.MonthSide.GoodsUsed;
import heeltap.stock.Reconciliation;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A month as one side of a comparison. */
record ChangeSides(Book book) {
    MonthSide of(MonthFigures month) {
        List<DrinkMonth> drinks = new ArrayList<>();
        Map<String, Money> fixed = new HashMap<>();
        for (DrinkSales sales : month.sales().values()) {
            if (sales.pouredByDay().isEmpty()
                    && sales.netSales().isZero()
                    && sales.sold().isZero()) {
                continue;
            }
            DrinkCost cost = month.costs().drinkOn(sales.drink(), month.lastDay());
            Exact served = served(sales);
            // what was poured and not paid for: given away, or given back
            drinks.add(new DrinkMonth(
                    sales.drink(),
                    sales.sold(),
                    sales.netSales(),
                    served.minus(sales.sold()),
                    useOfAServe(sales.drink(), served, cost, month)));
            if (cost.drink().fixedCost() != null) {
                cost.cost().ifPresent(money -> fixed.put(sales.drink(), money));
            }
        }
        return new MonthSide(drinks, unitCosts(month), fixed, goods(month));
    }

    private static Exact served(DrinkSales sales) {
        return sales.pouredByDay().values().stream().reduce(Exact.ZERO, Exact::plus);
    }

    /** By the specs of the days on which it was poured; of a drink that was only given back, by the last day's. */
    private static Map<String, Exact> useOfAServe(String drink, Exact served, DrinkCost cost, MonthFigures month) {
        if (served.isZero()) {
            return cost.use();
        }
        Map<String, Exact> use = new TreeMap<>();
        month.use()
                .byDrink()
                .getOrDefault(drink, Map.of())
                .forEach((name, amount) -> use.put(name, amount.dividedBy(served)));
        return use;
    }

    /** What the counts, and else theory, say was used and what that cost. */
    private static Map<String, GoodsUsed> goods(MonthFigures month) {
        Map<String, GoodsUsed> goods = new HashMap<>();
        month.stock().forEach((name, line) -> {
            if (line.actualCost().isPresent()) {
                goods.put(
                        name,
                        new GoodsUsed(
                                line.actualCost().get(),
                                line.movement().recordedLosses(),
                                line.unexplained().orElse(Exact.ZERO)));
            } else {
                line.theoreticalCost().ifPresent(cost -> goods.put(name, new GoodsUsed(cost, Exact.ZERO, Exact.ZERO)));
            }
        });
        return goods;
    }

    private Map<String, Money> unitCosts(MonthFigures month) {
        Map<String, Money> costs = new HashMap<>();
        for (Ingredient ingredient : book.ingredients()) {
            Money unit = month.prices().get(ingredient.name()).unitCost();
            if (unit != null) {
                costs.put(ingredient.name(), unit);
            }
        }
        return costs;
    }

    /** The same of the printed figures: the lines of the stock table added up, and bought-in drinks rounded once. */
    Money printedCostOfGoods(MonthFigures month, Currency currency) {
        Money sum = Money.of(fixedCosts(month).rounded(currency));
        for (Ingredient ingredient : book.ingredients()) {
            StockTables.StockMoney printed = StockTables.StockMoney.of(
                    Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow(), currency);
            sum = sum.plus(printed.actual().or(printed::theoretical).orElse(Money.ZERO));
        }
        return sum;
    }

    /** By the counts where an ingredient has them, else what theory says; bought-in drinks at their fixed cost. */
    Money costOfGoods(MonthFigures month) {
        Money sum = fixedCosts(month);
        for (Ingredient ingredient : book.ingredients()) {
            Reconciliation line =
                    Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow();
            sum = sum.plus(line.actualCost().or(line::theoreticalCost).orElse(Money.ZERO));
        }
        return sum;
    }

    private static Money fixedCosts(MonthFigures month) {
        Money sum = Money.ZERO;
        for (DrinkSales sales : month.sales().values()) {
            DrinkCost cost = month.costs().drinkOn(sales.drink(), month.lastDay());
            if (cost.drink().fixedCost() != null) {
                sum = sum.plus(cost.cost().orElse(Money.ZERO).times(served(sales)));
            }
        }
        return sum;
    }
}
