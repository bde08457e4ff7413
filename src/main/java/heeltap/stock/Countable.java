package heeltap.stock;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import java.util.Optional;

/**
 * What must be known of an ingredient or preparation to turn a count of it into its base measure.
 *
 * @param name as the book spells it
 * @param measure its base measure
 * @param bottle what one bottle (or can, or bag) holds: Bottle ml, else the single unit of the last pack that is no keg
 * @param bottleMlKnown whether the book itself says what a bottle holds: then a count without a unit is of bottles
 * @param containers what it comes in
 * @param batch what one batch makes, for a preparation
 * @param density g/ml; empty unknown
 * @param eachGrams what one piece weighs; empty unknown
 * @param fullGrams weight of a full bottle; empty unknown; so too the empty one
 */
public record Countable(
        String name,
        Measure measure,
        Optional<Amount> bottle,
        boolean bottleMlKnown,
        Containers containers,
        Optional<Exact> batch,
        Optional<Exact> density,
        Optional<Exact> eachGrams,
        Optional<Exact> fullGrams,
        Optional<Exact> emptyGrams) {}
