package heeltap.pricing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Prices that raise each group's expected margin for the coming month, counting guests who switch to other drinks of the
 * list or order none, inside all limits the bar sets; a change is suggested only where it pays with a sufficient chance and
 * by a sufficient sum.
 */
public final class EarningPrices {
    private EarningPrices() {}

    /**
     * Suggestions for all groups, groups and drinks in the order of their first mention.
     *
     * @param drinks those listed on the month's last day
     * @param history all months present up to the one under review, whose units a day stand for the coming month's
     * @param priors what is believed of each group, by name
     */
    public static List<GroupSuggestion> suggest(
            List<EarningDrink> drinks,
            List<DrinkMonth> history,
            Function<String, ElasticityPrior> priors,
            EarningRules rules) {
        Map<String, List<EarningDrink>> groups = new LinkedHashMap<>();
        for (EarningDrink drink : drinks) {
            groups.computeIfAbsent(drink.priced().group(), name -> new ArrayList<>())
                    .add(drink);
        }
        List<GroupSuggestion> suggestions = new ArrayList<>();
        groups.forEach((name, members) -> {
            List<DrinkMonth> months =
                    history.stream().filter(row -> row.group().equals(name)).toList();
            suggestions.add(GroupPricing.suggest(name, members, months, priors.apply(name), rules));
        });
        return List.copyOf(suggestions);
    }
}
