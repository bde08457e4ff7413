package heeltap.cost;

import heeltap.mixture.Contents;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Preparation;
import heeltap.source.Problem;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/**
 * A preparation by its spec of one day and the prices of the month. All unrounded.
 *
 * @param makes a batch in the preparation's measure; null where it could not be worked out
 * @param batchCost of its lines, without labour; null where faults leave it without cost
 * @param unitCost for one of its measure; null likewise
 * @param minutes labour a batch, with its share of nested preparations
 * @param labour minutes at the bar's rate
 * @param lines in the order of the sheet
 * @param use ingredients as bought for one of its measure, by name; the known lines where there are faults
 * @param preparations nested preparations, in their measure, for one of its measure, by name
 * @param contents of one of its measure, as made
 * @param keepsDays null: not said
 * @param allergens of all ingredients through every level
 * @param faults why it has no cost, by place; empty where it has one
 * @param notices things to know that cost nothing, by place
 * @param unknownComposition ingredients through every level of which nobody said what they are made of
 * @param publishedComposition ingredients through every level for which the published table filled empty cells
 */
public record PreparationCost(
        Preparation preparation,
        @Nullable Amount makes,
        @Nullable Money batchCost,
        @Nullable Money unitCost,
        Exact minutes,
        Money labour,
        List<CostLine> lines,
        Map<String, Exact> use,
        Map<String, Exact> preparations,
        Contents contents,
        @Nullable Integer keepsDays,
        SortedSet<String> allergens,
        List<Problem> faults,
        List<Problem> notices,
        SortedSet<String> unknownComposition,
        SortedSet<String> publishedComposition) {
    public String name() {
        return preparation.name();
    }
}
