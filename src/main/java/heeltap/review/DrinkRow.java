package heeltap.review;

import heeltap.cost.DrinkCost;
import heeltap.menu.ClassedDrink;
import heeltap.menu.MenuGroup;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Drink;
import java.util.Optional;

/**
 * Everything said of one drink's month.
 *
 * @param drink as the book has it
 * @param group in which its popularity is measured
 * @param sales of the month
 * @param cost by the spec of the month's last day
 * @param menuPrice as the guest reads it on the last day; empty: the book has none
 * @param daysOnMenu calendar days of the month
 * @param listedAtEnd whether it is on the menu on the last day
 * @param included whether it takes part in the classes
 * @param note why not, and what else is to be known; empty for nothing
 * @param classed its figures and classes
 * @param menu the analysis of its group
 * @param certaintyPercent of its margin class; empty where it has none
 */
record DrinkRow(
        Drink drink,
        String group,
        DrinkSales sales,
        DrinkCost cost,
        Optional<Money> menuPrice,
        int daysOnMenu,
        boolean listedAtEnd,
        boolean included,
        String note,
        ClassedDrink classed,
        MenuGroup menu,
        Optional<Exact> certaintyPercent) {
    String name() {
        return drink.name();
    }

    Optional<Money> netPrice() {
        return sales.moneyKnown() ? classed.item().netPrice() : Optional.empty();
    }

    private static final Exact SURE = Exact.of(80);

    /** Whether a repeat of the month would surely enough put the drink in the same margin class. */
    boolean isSure() {
        return certaintyPercent.filter(percent -> percent.compareTo(SURE) >= 0).isPresent();
    }

    /** Whether it has a margin class that is not sure enough to act on. */
    boolean isOnTheLine() {
        return certaintyPercent.isPresent() && !isSure();
    }

    /** Cost over net price, whether or not the drink is classed; empty where either is unknown or the price is zero. */
    Optional<Exact> costPercent() {
        return netPrice()
                .filter(Money::isPositive)
                .flatMap(price -> cost.cost().map(c -> c.dividedBy(price).times(Exact.HUNDRED)));
    }

    /** Net price less cost, whether or not the drink is classed. */
    Optional<Money> margin() {
        return netPrice().flatMap(price -> cost.cost().map(price::minus));
    }

    Optional<Money> totalMargin() {
        return margin().map(each -> each.times(sales.sold()));
    }
}
