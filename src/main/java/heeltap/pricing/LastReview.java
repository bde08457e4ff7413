package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What became of the last review's suggestions that were followed. */
public final class LastReview {
    private LastReview() {}

    /**
     * One change that was made as suggested.
     *
     * @param drink name
     * @param before price before, as the guest reads it
     * @param after price suggested, which the drink then had
     * @param expected units of the whole month, with the bounds that were given
     * @param sold units that the month brought
     * @param held whether they lie inside the bounds
     */
    public record Outcome(String drink, Money before, Money after, Interval expected, Exact sold, boolean held) {}

    /**
     * Compares suggestions with the month after. A drink is followed where its price changed to the suggested one and it
     * was on the menu as many days as any other of its group; all others are left out.
     *
     * @param then the suggestions made at the end of the month before
     * @param daysThen days of that month, to which the expected units refer
     * @param after the rows of the month after
     */
    public static List<Outcome> compare(List<GroupSuggestion> then, int daysThen, List<DrinkMonth> after) {
        Map<String, DrinkMonth> rows =
                after.stream().collect(Collectors.toMap(DrinkMonth::drink, Function.identity(), (a, b) -> a));
        Map<String, Integer> days =
                after.stream().collect(Collectors.toMap(DrinkMonth::group, DrinkMonth::daysOnMenu, Math::max));
        return then.stream()
                .flatMap(group -> group.drinks().stream())
                .filter(drink -> drink.price().isChange() && drink.demand().isPresent())
                .flatMap(drink -> outcome(drink, rows, days, daysThen).stream())
                .toList();
    }

    private static Optional<Outcome> outcome(
            EarningSuggestion drink, Map<String, DrinkMonth> rows, Map<String, Integer> days, int daysThen) {
        PricedDrink priced = drink.price().drink();
        Money suggested = drink.price().suggested().orElseThrow();
        Exact longer = Exact.of(days.getOrDefault(priced.group(), daysThen)).dividedBy(Exact.of(daysThen));
        Interval expected = drink.demand().orElseThrow().units().times(longer);
        return Optional.ofNullable(rows.get(priced.drink()))
                .filter(row -> row.price().equals(suggested))
                .filter(row -> row.daysOnMenu() == days.getOrDefault(row.group(), 0))
                .map(row -> new Outcome(
                        priced.drink(),
                        priced.priceNow().orElseThrow(),
                        suggested,
                        expected,
                        row.sold(),
                        expected.holds(row.sold())));
    }
}
