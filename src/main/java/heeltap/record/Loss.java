package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.source.Place;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A recorded loss, gift or transfer.
 *
 * @param date null where the file does not say
 * @param item an ingredient, a preparation or a drink, as written
 * @param unit as written; empty: the ingredient's measure, or a serve of a drink
 */
public record Loss(@Nullable LocalDate date, String item, Exact amount, String unit, Reason reason, Place place) {
    /** Why it left, or came. */
    public enum Reason {
        SPILL,
        BREAKAGE,
        SPOILED,
        RETURNED,
        STAFF,
        COMPLIMENTARY,
        TRAINING,
        TRANSFER_IN,
        TRANSFER_OUT
    }
}
