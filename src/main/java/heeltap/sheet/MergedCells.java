package heeltap.sheet;

import heeltap.source.Cell;
import heeltap.source.Sheet;
import java.util.ArrayList;
import java.util.List;

/** The merged ranges of a sheet. A spreadsheet shows the first cell of each; the others are covered. */
final class MergedCells {
    private final List<int[]> ranges = new ArrayList<>();
    private int lastRow;

    /** Rows from 1, columns from 0, both ends inside. */
    void add(int firstRow, int firstColumn, int lastRowOfRange, int lastColumn) {
        ranges.add(new int[] {firstRow, firstColumn, lastRowOfRange, lastColumn});
        lastRow = Math.max(lastRow, lastRowOfRange);
    }

    boolean isEmpty() {
        return ranges.isEmpty();
    }

    int lastRow() {
        return lastRow;
    }

    boolean covers(int row, int column) {
        if (row > lastRow) {
            return false;
        }
        for (int[] range : ranges) {
            boolean inside = row >= range[0] && row <= range[2] && column >= range[1] && column <= range[3];
            if (inside && (row != range[0] || column != range[1])) {
                return true;
            }
        }
        return false;
    }

    /** Takes the rows as if nothing were merged, and names the values that are covered. */
    Sheet.RowReader namingCovered(OddPlaces odd) {
        return row -> {
            for (Cell cell : row.cells()) {
                if (covers(row.number(), cell.column())) {
                    odd.addCovered(row.number(), cell.column(), cell.text());
                }
            }
            return true;
        };
    }
}
