package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * A row of the sheet Categories.
 *
 * @param name as written
 * @param targetCostPercent null: the setting's
 * @param compareWithin the group in which popularity is measured; the category's own name where the sheet has none
 * @param inMenuAnalysis whether its drinks are classed, where a drink does not say otherwise
 * @param groupElasticity the group's own prior price elasticity; null: the setting's
 */
public record Category(
        String name,
        @Nullable Exact targetCostPercent,
        String compareWithin,
        boolean inMenuAnalysis,
        @Nullable Exact groupElasticity,
        Place place) {}
