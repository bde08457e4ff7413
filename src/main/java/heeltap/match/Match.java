package heeltap.match;

import heeltap.quantity.Exact;

/**
 * What a written name means in the book.
 *
 * @param name as the book spells it; for an ignored name as it was written
 * @param kind what sort of thing it is
 * @param times how many of it one of the written thing is: a double is 2
 */
public record Match(String name, Kind kind, Exact times) {
    /** What a name can mean. */
    public enum Kind {
        DRINK,
        INGREDIENT,
        PREPARATION,
        /** The book says to leave it aside. */
        IGNORED
    }
}
