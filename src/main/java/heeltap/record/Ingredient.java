package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.source.Place;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of the sheet Ingredients.
 *
 * @param name as written
 * @param group such as Spirits; {@code Other} where the sheet has none
 * @param measure the base measure in which it is costed and counted
 * @param usablePercent what is left of what was bought, 0 exclusive to 100
 * @param allergens as written, split at {@code ;} and {@code ,}, trimmed
 * @param juiceMl what one piece yields, in ml; null unknown
 * @param eachGrams what one piece weighs, in g; null unknown
 * @param listPrice for one {@code listPack}, with or without tax as the settings say of invoices; null none
 * @param listPack what the list price buys; null none
 * @param fullBottleGrams weight of a full bottle; null unknown; so too the empty one
 * @param bottleMl what a full bottle holds, in ml; null unknown
 * @param par stock to keep, in {@code measure}; null none
 * @param peelCostPercent of a fruit that is peeled and juiced: the share of its cost that its peel bears; null: none
 */
public record Ingredient(
        String name,
        String group,
        Measure measure,
        Composition composition,
        Exact usablePercent,
        List<String> allergens,
        @Nullable Exact juiceMl,
        @Nullable Exact eachGrams,
        @Nullable Money listPrice,
        @Nullable Pack listPack,
        @Nullable Exact fullBottleGrams,
        @Nullable Exact emptyBottleGrams,
        @Nullable Exact bottleMl,
        @Nullable Exact par,
        @Nullable Exact peelCostPercent,
        Place place) {}
