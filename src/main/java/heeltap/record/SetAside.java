package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.source.Place;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row that was read and not used, with why.
 *
 * @param place file, sheet and row; row 0 for a file refused as a whole
 * @param reason one sentence
 * @param text what the row said: the unknown name, or the raw row
 * @param quantity as printed; null where it could not be read
 * @param money as printed; null where it could not be read
 * @param nearest the nearest known names, nearest first; empty where the name is not the matter
 * @param item what the row is about, as written; empty where nobody needs to know or the row names nothing
 */
public record SetAside(
        Place place,
        String reason,
        String text,
        @Nullable Exact quantity,
        @Nullable Money money,
        List<String> nearest,
        String item) {
    /** A row of which only the text is kept. */
    public SetAside(
            Place place,
            String reason,
            String text,
            @Nullable Exact quantity,
            @Nullable Money money,
            List<String> nearest) {
        this(place, reason, text, quantity, money, nearest, "");
    }
}
