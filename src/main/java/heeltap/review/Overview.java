package heeltap.review;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The month in a few sums. Cost and margin are of the drinks whose cost is known, against their own net sales.
 *
 * @param netSales of everything joined
 * @param sold units
 * @param costedSales net sales of drinks with a known cost
 * @param cost of the units of those that were paid for
 * @param unexplained cost of what nothing explains; empty where nothing was counted
 * @param missing the part of it where goods are missing, positive
 * @param surplus the part of it where there is more than there should be, positive
 */
record Overview(
        Money netSales,
        Exact sold,
        Money costedSales,
        Money cost,
        Optional<Money> unexplained,
        Money missing,
        Money surplus) {
    /** The unexplained cost is the total of the stock table, each line rounded once. */
    static Overview of(MonthFigures month, Currency currency) {
        Money costedSales = Money.ZERO;
        Money cost = Money.ZERO;
        for (DrinkSales sales : month.sales().values()) {
            Optional<Money> unit =
                    month.costs().drinkOn(sales.drink(), month.lastDay()).cost();
            if (unit.isPresent() && sales.moneyKnown()) {
                costedSales = costedSales.plus(sales.netSales());
                cost = cost.plus(unit.get().times(sales.sold()));
            }
        }
        List<Money> unexplained = month.stock().values().stream()
                .flatMap(line -> line.unexplainedCost().stream())
                .map(money -> Money.of(money.rounded(currency)))
                .toList();
        return new Overview(
                month.netSales(),
                month.sold(),
                costedSales,
                cost,
                unexplained.isEmpty()
                        ? Optional.empty()
                        : Optional.of(unexplained.stream().reduce(Money.ZERO, Money::plus)),
                sum(unexplained, Money::isPositive),
                sum(unexplained, Money::isNegative).negated());
    }

    private static Money sum(List<Money> parts, Predicate<Money> which) {
        return parts.stream().filter(which).reduce(Money.ZERO, Money::plus);
    }

    Money margin() {
        return costedSales.minus(cost);
    }

    /** Cost over net sales; empty without sales. */
    Optional<Exact> costPercent() {
        return StockTables.percentOf(cost, costedSales);
    }
}
