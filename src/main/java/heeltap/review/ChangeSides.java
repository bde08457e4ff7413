package heeltap.review;

import heeltap.cost.DrinkCost;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.stock.Variances.DrinkMonth;
import heeltap.stock.Variances.MonthSide;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
            // what was poured and not paid for: given away, or given back
            Exact unpaid = sales.pouredByDay().values().stream()
                    .reduce(Exact.ZERO, Exact::plus)
                    .minus(sales.sold());
            drinks.add(new DrinkMonth(sales.drink(), sales.sold(), sales.netSales(), unpaid, cost.use()));
            if (cost.drink().fixedCost() != null) {
                cost.cost().ifPresent(money -> fixed.put(sales.drink(), money));
            }
        }
        return new MonthSide(drinks, unitCosts(month), fixed, costOfGoods(month), usedCosts(month));
    }

    /** What the counts say each ingredient cost; what theory says is left out. */
    private Map<String, Money> usedCosts(MonthFigures month) {
        Map<String, Money> used = new HashMap<>();
        month.stock().forEach((name, line) -> line.actualCost().ifPresent(cost -> used.put(name, cost)));
        return used;
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

    /** By the counts where an ingredient has them, else what theory says; bought-in drinks at their fixed cost. */
    Money costOfGoods(MonthFigures month) {
        Money sum = Money.ZERO;
        for (Ingredient ingredient : book.ingredients()) {
            var line = Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow();
            sum = sum.plus(line.actualCost().or(line::theoreticalCost).orElse(Money.ZERO));
        }
        for (DrinkSales sales : month.sales().values()) {
            DrinkCost cost = month.costs().drinkOn(sales.drink(), month.lastDay());
            if (cost.drink().fixedCost() != null) {
                Exact served = sales.pouredByDay().values().stream().reduce(Exact.ZERO, Exact::plus);
                sum = sum.plus(cost.cost().orElse(Money.ZERO).times(served));
            }
        }
        return sum;
    }
}
