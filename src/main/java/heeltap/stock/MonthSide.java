package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One month as a side of a comparison.
 *
 * @param drinks every drink sold or given
 * @param unitCosts what one base unit costs the drinks, by ingredient; one without a price is absent and costs nothing
 * @param fixedCosts money of one serve of bought-in drinks, by drink
 * @param goods what was used of each ingredient by the counts; one that is absent was used, and cost, as theory says
 */
public record MonthSide(
        List<DrinkMonth> drinks,
        Map<String, Money> unitCosts,
        Map<String, Money> fixedCosts,
        Map<String, GoodsUsed> goods) {

    /**
     * One drink in one month.
     *
     * @param drink its name
     * @param sold units paid for
     * @param netSales money without tax
     * @param given units poured and not paid for
     * @param use as bought, per serve, by ingredient: the spec, the mean of the month's serves where it changed
     */
    public record DrinkMonth(String drink, Exact sold, Money netSales, Exact given, Map<String, Exact> use) {
        Exact served() {
            return sold.plus(given);
        }
    }

    /**
     * What was used of an ingredient beyond what the drinks should have, and what all of its use cost.
     *
     * @param cost of everything used, as stock is valued
     * @param losses recorded, as bought
     * @param unexplained beyond theoretical use and losses, as bought; negative: less
     */
    public record GoodsUsed(Money cost, Exact losses, Exact unexplained) {}

    /** Cost of everything sold and given away at the drinks' own prices. */
    public Money theoretical() {
        Money sum = Money.ZERO;
        for (DrinkMonth drink : drinks) {
            sum = sum.plus(fixedCosts.getOrDefault(drink.drink(), Money.ZERO).times(drink.served()));
        }
        for (Map.Entry<String, Exact> use : theoreticalUse().entrySet()) {
            sum = sum.plus(unitCost(use.getKey()).times(use.getValue()));
        }
        return sum;
    }

    Money unitCost(String ingredient) {
        return unitCosts.getOrDefault(ingredient, Money.ZERO);
    }

    /** What all drinks should have used, by ingredient. */
    Map<String, Exact> theoreticalUse() {
        Map<String, Exact> sums = new TreeMap<>();
        for (DrinkMonth drink : drinks) {
            drink.use().forEach((name, use) -> sums.merge(name, use.times(drink.served()), Exact::plus));
        }
        return sums;
    }
}
