package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.source.Place;

/**
 * A row of the sheet Names: another spelling.
 *
 * @param asWritten the name on the till, an invoice, a count …
 * @param means a name of the book, or {@code (ignore)}
 * @param where which kind of file it holds for
 * @param times how many of {@code means} one is: a double is 2
 */
public record NameRule(String asWritten, String means, Where where, Exact times, Place place) {
    public static final String IGNORE = "(ignore)";

    /** The kinds of file a rule may hold for. */
    public enum Where {
        SALES,
        INVOICES,
        STOCK,
        LOSSES,
        ANY
    }

    public boolean isIgnore() {
        return means.strip().equalsIgnoreCase(IGNORE);
    }
}
