package heeltap.menu;

import heeltap.quantity.Exact;

/**
 * What the bar decides about the analysis.
 *
 * @param popularityRulePercent share of the equal share from which a drink is popular, 70 by Kasavana and Smith
 * @param variableCostPercent other variable cost in percent of sales, an assumption of the bar, for the goal value
 * @param withLabour whether a labour rate is set, so that margins after labour mean something
 */
public record MenuRules(Exact popularityRulePercent, Exact variableCostPercent, boolean withLabour) {
    public static final MenuRules STANDARD = new MenuRules(Exact.of(70), Exact.of(30), false);

    public MenuRules withPopularityRule(Exact percent) {
        return new MenuRules(percent, variableCostPercent, withLabour);
    }
}
