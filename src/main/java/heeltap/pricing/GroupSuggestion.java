package heeltap.pricing;

import heeltap.quantity.Exact;
import java.util.List;
import java.util.Optional;

/**
 * The suggestions of one group together.
 *
 * @param group name
 * @param drinks in the order given
 * @param prior what was believed of the group's elasticity
 * @param priceChanges changes of price in the months present: 0 is prior only
 * @param model demand at the best single figures, whose drinks are {@code modelled}; empty where no drink can be modelled
 * @param modelled names in the model's order
 * @param groupElasticity of the group's units to a common change of its prices; empty without a model
 * @param averageChangePercent average change of price weighted by units sold, unchanged drinks included
 * @param marginChange of the group a month, the sum of its drinks'; empty without a model
 * @param chancePercent chance that the suggestions together pay; empty where nothing changes
 */
public record GroupSuggestion(
        String group,
        List<EarningSuggestion> drinks,
        ElasticityPrior prior,
        int priceChanges,
        Optional<GroupDemand> model,
        List<String> modelled,
        Optional<Interval> groupElasticity,
        Optional<Exact> averageChangePercent,
        Optional<Interval> marginChange,
        Optional<Exact> chancePercent) {
    /** Without a change of price the data cannot speak. */
    public boolean isPriorOnly() {
        return priceChanges == 0;
    }

    /** How many prices change. */
    public int changed() {
        return (int) drinks.stream().filter(drink -> drink.price().isChange()).count();
    }
}
