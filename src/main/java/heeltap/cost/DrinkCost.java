package heeltap.cost;

import heeltap.mixture.Contents;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Drink;
import heeltap.source.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/**
 * A serve of a drink by its spec of one day and the prices of the month. All unrounded.
 *
 * @param knownCost of its lines, or its fixed cost without tax, without labour; null where faults leave it without cost
 * @param minutes labour a serve, with its share of its preparations
 * @param labour minutes at the bar's rate
 * @param lines in the order of the sheet; empty for a fixed cost
 * @param use ingredients as bought for a serve, by name, in their measure; the known lines where there are faults
 * @param preparations preparations through every level for a serve, by name, in their measure
 * @param contents before water from ice
 * @param glass as served
 * @param allergens of all ingredients through every level
 * @param faults why it has no cost, by place; empty where it has one
 * @param notices things to know that cost nothing, by place
 * @param unknownComposition ingredients through every level of which nobody said what they are made of
 * @param publishedComposition ingredients through every level for which the published table filled empty cells
 */
public record DrinkCost(
        Drink drink,
        @Nullable Money knownCost,
        Exact minutes,
        Money labour,
        List<CostLine> lines,
        Map<String, Exact> use,
        Map<String, Exact> preparations,
        Contents contents,
        Glass glass,
        SortedSet<String> allergens,
        List<Problem> faults,
        List<Problem> notices,
        SortedSet<String> unknownComposition,
        SortedSet<String> publishedComposition) {
    public String name() {
        return drink.name();
    }

    /** Cost of a serve without labour; empty where a fault leaves the drink without cost. */
    public Optional<Money> cost() {
        return Optional.ofNullable(knownCost);
    }

    /** Why there is no cost, in sentences for a note; empty where there is one. */
    public String reason() {
        return String.join(" ", faults.stream().map(Problem::reason).distinct().toList());
    }
}
