package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an ingredient costs as bought.
 *
 * @param ingredient as the book spells it
 * @param unitCost for one of its measure (ml, g or piece), without tax, unrounded; null where there is no price
 * @param basis where the price comes from
 * @param source the purchase behind it; of an average the latest one; null for a list price, an opening stock and none
 * @param previousUnitCost of the last purchase before it, or of an average the last before its month; null for none
 */
public record IngredientPrice(
        String ingredient,
        @Nullable Money unitCost,
        PriceBasis basis,
        @Nullable Purchase source,
        @Nullable Money previousUnitCost) {
    /** How much dearer it became, in percent of the previous price; empty where either is unknown or that was zero. */
    public Optional<Exact> changePercent() {
        if (unitCost == null || previousUnitCost == null || previousUnitCost.isZero()) {
            return Optional.empty();
        }
        return Optional.of(
                unitCost.minus(previousUnitCost).dividedBy(previousUnitCost).times(Exact.HUNDRED));
    }
}
