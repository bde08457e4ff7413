package heeltap.review;

import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.LastReview;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Money;
import java.util.Currency;
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

    /**
     * What the suggestions of a group do to its margin a month, as printed.
     *
     * @param expected the sum of its rows, each rounded as it is printed
     * @param low bound that holds with {@code high} four chances in five, unrounded
     */
    record Change(Money expected, Money low, Money high) {}

    /** Empty without a model. */
    static Optional<Change> change(GroupSuggestion group, Currency currency) {
        Money sum = group.drinks().stream()
                .flatMap(drink -> drink.demand().stream())
                .map(expected -> new Money(expected.marginChange().value()))
                .map(change -> Money.of(change.rounded(currency)))
                .reduce(Money.ZERO, Money::plus);
        return group.marginChange()
                .map(bounds -> new Change(sum, sum.min(new Money(bounds.low())), sum.max(new Money(bounds.high()))));
    }

    List<PriceSuggestion> prices() {
        return drinks.stream().map(EarningSuggestion::price).toList();
    }

    GroupSuggestion group(EarningSuggestion drink) {
        return Optional.ofNullable(groupOf.get(drink.price().drink().drink())).orElseThrow();
    }
}
