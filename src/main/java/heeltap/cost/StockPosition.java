package heeltap.cost;

import heeltap.quantity.Exact;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the counts of a month say of one ingredient.
 *
 * @param opening what was there when the month began, oldest first; empty where unknown or nothing
 * @param closing what was there when it ended, in the ingredient's measure; null where it was not counted
 */
public record StockPosition(
        List<StockLayer> opening, @Nullable Exact closing) {
    public static final StockPosition UNKNOWN = new StockPosition(List.of(), null);
}
