package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * Sums over one group.
 *
 * @param drinksOnMenu drinks on the menu in the month, whether sold, costed or not
 * @param sold serves of all drinks in the analysis
 * @param rate sum of sold over days on the menu, of the drinks on the menu
 * @param soldOnMenu serves of the drinks on the menu
 * @param days sum of their days
 * @param costed how many have a known cost and price
 * @param costedSold serves of those; and their net sales, cost and labour
 */
record GroupSums(
        int drinksOnMenu,
        Exact sold,
        Exact rate,
        Exact soldOnMenu,
        Exact days,
        int costed,
        Exact costedSold,
        Money netSales,
        Money cost,
        Money labour) {
    static GroupSums of(List<MenuItem> items) {
        Exact sold = Exact.ZERO;
        Exact rate = Exact.ZERO;
        Exact soldOnMenu = Exact.ZERO;
        long days = 0;
        int onMenu = 0;
        for (MenuItem item : items) {
            sold = item.inAnalysis() ? sold.plus(item.sold()) : sold;
            if (item.isListed()) {
                onMenu++;
                rate = rate.plus(rate(item));
                soldOnMenu = soldOnMenu.plus(item.sold());
                days += item.daysOnMenu();
            }
        }
        int costed = 0;
        Exact costedSold = Exact.ZERO;
        Money netSales = Money.ZERO;
        Money cost = Money.ZERO;
        Money labour = Money.ZERO;
        for (MenuItem item : items) {
            if (item.isCosted()) {
                costed++;
                costedSold = costedSold.plus(item.sold());
                netSales = netSales.plus(item.netPrice().orElseThrow().times(item.sold()));
                cost = cost.plus(item.cost().orElseThrow().times(item.sold()));
                labour = labour.plus(item.labour().times(item.sold()));
            }
        }
        return new GroupSums(
                onMenu, sold, rate, soldOnMenu, Exact.of(days), costed, costedSold, netSales, cost, labour);
    }

    /** Share of (sold over days): a drink added on the 20th is not unpopular for it. */
    Optional<ClassedDrink.Popularity> popularity(MenuItem item) {
        if (!item.isListed() || !rate.isPositive() || !soldOnMenu.isPositive()) {
            return Optional.empty();
        }
        Exact share = rate(item).dividedBy(rate).times(Exact.HUNDRED);
        Exact shareOfSales = item.sold().dividedBy(soldOnMenu);
        Exact shareOfDays = Exact.of(item.daysOnMenu()).dividedBy(days);
        return Optional.of(new ClassedDrink.Popularity(
                item.sold().dividedBy(sold).times(Exact.HUNDRED),
                share,
                share.times(Exact.of(drinksOnMenu)),
                shareOfSales.dividedBy(shareOfDays)));
    }

    MenuThresholds thresholds(MenuRules rules) {
        Exact equalShare = drinksOnMenu == 0 ? Exact.ZERO : Exact.HUNDRED.dividedBy(Exact.of(drinksOnMenu));
        Money totalMargin = netSales.minus(cost);
        Optional<Exact> costPercent =
                netSales.isPositive() ? Optional.of(cost.dividedBy(netSales).times(Exact.HUNDRED)) : Optional.empty();
        return new MenuThresholds(
                equalShare.times(rules.popularityRulePercent().percent()),
                equalShare,
                perServe(totalMargin),
                costPercent,
                costed == 0 ? Optional.empty() : Optional.of(totalMargin.dividedBy(Exact.of(costed))),
                costPercent.flatMap(percent -> goalStandard(percent, rules)),
                rules.withLabour() ? perServe(totalMargin.minus(labour)) : Optional.empty());
    }

    private Optional<Money> goalStandard(Exact costPercent, MenuRules rules) {
        Exact meanSold = costedSold.dividedBy(Exact.of(costed));
        return perServe(netSales).map(price -> GoalValue.of(costPercent, meanSold, price, rules.variableCostPercent()));
    }

    private Optional<Money> perServe(Money sum) {
        return costedSold.isPositive() ? Optional.of(sum.dividedBy(costedSold)) : Optional.empty();
    }

    private static Exact rate(MenuItem item) {
        return item.sold().dividedBy(Exact.of(item.daysOnMenu()));
    }
}
