package heeltap.review;

import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.LastReview;
import heeltap.pricing.PriceSuggestion;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is said of prices.
 *
 * @param groups in the order of first mention
 * @param drinks all suggestions, in the book's order
 * @param groupOf the group's suggestion of each drink, by name
 * @param outcomes what became of last month's suggestions that were followed
 * @param priors what was believed of each group
 */
record PriceAdvice(
        List<GroupSuggestion> groups,
        List<EarningSuggestion> drinks,
        Map<String, GroupSuggestion> groupOf,
        List<LastReview.Outcome> outcomes,
        GroupPriors priors) {
    static PriceAdvice of(
            List<GroupSuggestion> groups, List<String> order, List<LastReview.Outcome> outcomes, GroupPriors priors) {
        Map<String, EarningSuggestion> byName = new HashMap<>();
        Map<String, GroupSuggestion> groupOf = new HashMap<>();
        for (GroupSuggestion group : groups) {
            for (EarningSuggestion drink : group.drinks()) {
                byName.put(drink.price().drink().drink(), drink);
                groupOf.put(drink.price().drink().drink(), group);
            }
        }
        return new PriceAdvice(
                groups,
                order.stream()
                        .map(name -> Optional.ofNullable(byName.get(name)).orElseThrow())
                        .toList(),
                groupOf,
                outcomes,
                priors);
    }

    List<PriceSuggestion> prices() {
        return drinks.stream().map(EarningSuggestion::price).toList();
    }

    GroupSuggestion group(EarningSuggestion drink) {
        return Optional.ofNullable(groupOf.get(drink.price().drink().drink())).orElseThrow();
    }
}
