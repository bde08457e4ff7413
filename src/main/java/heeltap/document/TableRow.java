package heeltap.document;

import java.util.List;

/**
 * One row of a table.
 *
 * @param cells one for each column of the table
 * @param emphasis how the row stands out
 */
public record TableRow(List<CellValue> cells, Emphasis emphasis) {
    /** How a row stands out. */
    public enum Emphasis {
        PLAIN,
        /** Worth a second look: drawn so that it is seen without colour too. */
        MARKED,
        /** Shown but not counted. */
        FAINT
    }

    public TableRow {
        cells = List.copyOf(cells);
    }
}
