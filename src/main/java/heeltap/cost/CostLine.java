package heeltap.cost;

import heeltap.match.Match;
import heeltap.mixture.Contents;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.SpecLine;
import heeltap.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * A spec line with its workings.
 *
 * @param ingredient the ingredient, preparation or drink, as the book spells it; as written where it is unknown
 * @param kind null where it is unknown
 * @param written amount and unit as typed
 * @param amount in the thing's own measure (a drink in serves), before waste; null where it could not be worked out
 * @param wastePercent added to the amount in cost and use
 * @param unitCost for one of that measure as used, that is over Usable percent; of a fruit both peeled and juiced, the
 *     share that the line bears in the month ({@link FruitShare}); null without a cost
 * @param cost unitCost × amount × (1 + waste/100), unrounded; null where either is unknown
 * @param computed whether the amount was solved from a target
 * @param form what is done with it
 * @param holds what it puts into the mix
 * @param spec as the book has it
 * @param note the spec's, for the person who makes it
 */
public record CostLine(
        String ingredient,
        Match.@Nullable Kind kind,
        String written,
        @Nullable Amount amount,
        Exact wastePercent,
        @Nullable Money unitCost,
        @Nullable Money cost,
        boolean computed,
        Form form,
        Contents holds,
        SpecLine spec,
        String note,
        Place place) {
    /** What a line brings, as the hand meets it. */
    public enum Form {
        /** Whole fruit, or an amount of its juice. */
        JUICE,
        /** A liquid, or something that mixes in as one. */
        LIQUID,
        /** A dry acid. */
        ACID,
        /** Dry sugar or salt. */
        SOLUBLE,
        /** Peel, spice, leaf, garnish: what is put in, and often taken out again. */
        SOLID
    }
}
