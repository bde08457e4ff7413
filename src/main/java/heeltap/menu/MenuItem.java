package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One drink's month, complete and joined. A drink without a cost or without any price stays in the list: it was on the
 * menu, so it counts among the drinks of its group, but not in sums of cost and margin.
 *
 * @param drink name
 * @param group within which popularity is compared
 * @param sold paid serves, net of refunds
 * @param netSales money of the paid serves without tax
 * @param complimentary serves given away: never popularity, never net price
 * @param netMenuPrice menu price without tax, the net price where nothing was sold; empty: no price
 * @param cost of a serve without labour; empty: unknown
 * @param labour of a serve, zero where no rate is set
 * @param daysOnMenu calendar days on the menu in the month, both ends counted
 * @param inAnalysis whether it is classed; if not it is shown only
 * @param soldByDay an entry for each day on which it was on the menu, zero where none was sold; empty where the sales
 *     carry no dates
 */
public record MenuItem(
        String drink,
        String group,
        Exact sold,
        Money netSales,
        Exact complimentary,
        Optional<Money> netMenuPrice,
        Optional<Money> cost,
        Money labour,
        int daysOnMenu,
        boolean inAnalysis,
        SortedMap<LocalDate, Exact> soldByDay) {
    /** @throws IllegalArgumentException if the days are negative */
    public MenuItem {
        if (daysOnMenu < 0) {
            throw new IllegalArgumentException("negative days on menu: " + drink);
        }
        soldByDay = Collections.unmodifiableSortedMap(new TreeMap<>(soldByDay));
    }

    /** Net sales over paid serves; nothing sold: the menu price without tax. */
    public Optional<Money> netPrice() {
        return sold.isPositive() ? Optional.of(netSales.dividedBy(sold)) : netMenuPrice;
    }

    /** Net price less cost, without labour. */
    public Optional<Money> margin() {
        return netPrice().flatMap(price -> cost.map(price::minus));
    }

    /** Cost over net price in percent; empty where the net price is not positive. */
    public Optional<Exact> costPercent() {
        return netPrice()
                .filter(Money::isPositive)
                .flatMap(price -> cost.map(c -> c.dividedBy(price).times(Exact.HUNDRED)));
    }

    /** Whether it was on its group's menu this month and is classed there. */
    boolean isListed() {
        return inAnalysis && daysOnMenu > 0;
    }

    /** Whether its cost and margin can be summed. */
    boolean isCosted() {
        return inAnalysis && margin().isPresent();
    }
}
