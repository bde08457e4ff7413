package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * What the review says about one drink's price. Prices are as the guest reads them, unrounded where they are no menu
 * price; a figure that needs an unknown price or cost is empty.
 *
 * @param drink as given
 * @param suggested equal to the present price where the advice is to keep; empty only without a price now
 * @param reason why
 * @param changePercent of the price now
 * @param costPercentNow on the net price
 * @param costPercentNew on net price × new ÷ now
 * @param marginNow net price less cost
 * @param marginNew as {@code marginNow}, at the suggested price
 * @param breakEvenUnitsPercent change in units at which the margin stays the same; empty without a change
 * @param floor lowest price it may have
 * @param targetCostPrice at which cost meets the target percent
 * @param marginPrice cost and fixed cost a serve; empty where the bar gives none
 * @param primeCostPrice at which cost and labour meet the prime-cost target; empty where the bar gives none
 */
public record PriceSuggestion(
        PricedDrink drink,
        Optional<Money> suggested,
        PriceReason reason,
        Optional<Exact> changePercent,
        Optional<Exact> costPercentNow,
        Optional<Exact> costPercentNew,
        Optional<Money> marginNow,
        Optional<Money> marginNew,
        Optional<Exact> breakEvenUnitsPercent,
        PriceFloor floor,
        Optional<Money> targetCostPrice,
        Optional<Money> marginPrice,
        Optional<Money> primeCostPrice) {
    /** Whether another price than the present one is suggested. */
    public boolean isChange() {
        return changePercent.filter(change -> !change.isZero()).isPresent();
    }

    static PriceSuggestion of(
            PricedDrink drink, PricingRules rules, PriceFloor floor, Optional<Money> suggested, PriceReason reason) {
        Optional<Money> netNow = drink.netPrice();
        Optional<Money> netNew = suggested.flatMap(drink::netAt);
        Optional<Money> marginNow = netNow.flatMap(net -> drink.cost().map(net::minus));
        Optional<Money> marginNew = netNew.flatMap(net -> drink.cost().map(net::minus));
        Optional<Exact> factor = drink.readPerNet();
        return new PriceSuggestion(
                drink,
                suggested,
                reason,
                suggested.flatMap(price -> drink.priceNow()
                        .filter(Money::isPositive)
                        .map(now -> price.minus(now).dividedBy(now).times(Exact.HUNDRED))),
                drink.costPercentNow(),
                drink.costPercentAt(netNew),
                marginNow,
                marginNew,
                marginNow.flatMap(
                        now -> marginNew.flatMap(then -> PriceMethods.breakEvenUnitsPercent(now, then.minus(now)))),
                floor,
                read(drink, factor, cost -> PriceMethods.atCostPercent(cost, drink.targetCostPercent())),
                rules.fixedCostAServe()
                        .flatMap(fixed -> read(drink, factor, cost -> PriceMethods.atMargin(cost, fixed))),
                rules.targetPrimeCostPercent()
                        .flatMap(target -> read(
                                drink, factor, cost -> PriceMethods.atPrimeCostPercent(cost, drink.labour(), target))));
    }

    /** A net price made from cost, as the guest would read it. */
    private static Optional<Money> read(
            PricedDrink drink, Optional<Exact> factor, java.util.function.UnaryOperator<Money> method) {
        return drink.cost().flatMap(cost -> factor.map(method.apply(cost)::times));
    }
}
