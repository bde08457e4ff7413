package heeltap.review;

import heeltap.match.Match;
import heeltap.quantity.Exact;
import heeltap.source.Place;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A row of a count or of the losses, brought to one ingredient. A row that names a preparation or a drink gives one of
 * these for each ingredient in it.
 *
 * @param kind {@code opening}, {@code closing}, or the reason of a loss
 * @param ingredient in whose sums it stands; empty where the row could not be brought to any
 * @param item as the book spells what was counted or lost
 * @param itemKind what that is
 * @param day of a loss; null where the file does not say, and for counts
 * @param number as written, {@code Times} of the name applied
 * @param unit as written
 * @param location as written
 * @param base in the ingredient's measure, losses as bought; empty where the row could not be understood
 * @param used whether it counts: not where another row of the ingredient could not be understood, or where only
 *     preparations hold it
 */
record CountedRow(
        String kind,
        String ingredient,
        String item,
        Match.Kind itemKind,
        @Nullable LocalDate day,
        Exact number,
        String unit,
        String location,
        Optional<Exact> base,
        boolean used,
        Place place) {
    static final String OPENING = "opening";
    static final String CLOSING = "closing";
    /** Reasons of what was given away and not lost. */
    static final Set<String> GIFTS = Set.of("staff", "complimentary");

    CountedRow as(String otherKind) {
        return new CountedRow(otherKind, ingredient, item, itemKind, day, number, unit, location, base, used, place);
    }

    CountedRow unused() {
        return new CountedRow(kind, ingredient, item, itemKind, day, number, unit, location, base, false, place);
    }
}
