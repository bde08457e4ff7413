package heeltap.source;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * One cell that is not blank.
 *
 * @param column counts from 0
 * @param text as written or as the spreadsheet shows it, never blank; surrounding white space kept
 * @param number the number a spreadsheet stores, to 15 significant digits; null for text and in text files
 * @param moment the date and time a spreadsheet stores (a number with a date format); null otherwise
 */
public record Cell(
        int column,
        String text,
        @Nullable BigDecimal number,
        @Nullable LocalDateTime moment) {
    public static Cell text(int column, String text) {
        return new Cell(column, text, null, null);
    }
}
