package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.source.Problem;
import java.util.List;
import java.util.Map;

/**
 * What an amount of anything takes out of the stock.
 *
 * @param ingredients as bought, by name, in their measure
 * @param preparations through every level, by name, in their measure
 * @param problems why nothing, or not all, of it could be worked out; empty where all is known
 */
public record ItemUse(Map<String, Exact> ingredients, Map<String, Exact> preparations, List<Problem> problems) {}
