package heeltap.report;

/** What a page is filled with, one under the other. */
sealed interface Piece permits Slab, ColumnSet, RowSet {
    /** Space above it, in points; dropped at the top of a page. */
    float before();

    /** Whether the page may not end behind it. */
    boolean withNext();
}
