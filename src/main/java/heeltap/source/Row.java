package heeltap.source;

import java.util.List;
import java.util.Optional;

/**
 * One row of a sheet.
 *
 * @param number the spreadsheet's row from 1, or the physical line where a text record begins
 * @param cells the cells that are not blank, by column; empty for a blank row
 * @param width how many cells a text file's record has, blank ones too; 0 where rows have no width of their own
 */
public record Row(int number, List<Cell> cells, int width) {
    /** A row of a sheet whose cells have places of their own. */
    public Row(int number, List<Cell> cells) {
        this(number, cells, 0);
    }

    public boolean isBlank() {
        return cells.isEmpty();
    }

    public Optional<Cell> find(int column) {
        for (Cell cell : cells) {
            if (cell.column() == column) {
                return Optional.of(cell);
            }
        }
        return Optional.empty();
    }

    /** The trimmed text of a cell; empty where the cell is blank. */
    public String text(int column) {
        return find(column).map(cell -> cell.text().strip()).orElse("");
    }
}
