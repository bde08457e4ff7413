package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Row;
import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The cells of one row by field; filled anew for each row, so that a long export makes no garbage. */
final class Fields {
    private final @Nullable Field[] byColumn;
    private final @Nullable Cell[] cells = new @Nullable Cell[Field.SIZE];

    Fields(Layout layout) {
        int width =
                layout.columns().values().stream().mapToInt(c -> c + 1).max().orElse(0);
        byColumn = new @Nullable Field[width];
        for (Map.Entry<Field, Integer> entry : layout.columns().entrySet()) {
            byColumn[entry.getValue()] = entry.getKey();
        }
    }

    void load(Row row) {
        Arrays.fill(cells, null);
        for (Cell cell : row.cells()) {
            Field field = cell.column() < byColumn.length ? byColumn[cell.column()] : null;
            if (field != null) {
                cells[field.at()] = cell;
            }
        }
    }

    @Nullable Cell find(Field field) {
        return cells[field.at()];
    }

    boolean has(Field field) {
        return cells[field.at()] != null;
    }

    /** Trimmed; empty where the cell is blank or the field has no column. An item's size or modifier follows its name. */
    String text(Field field) {
        Cell cell = cells[field.at()];
        String text = cell == null ? "" : TextFold.trim(cell.text());
        Cell variant = field == Field.ITEM ? cells[Field.VARIANT.at()] : null;
        return variant == null || text.isEmpty() ? text : text + " " + TextFold.trim(variant.text());
    }

    /** Whether the item's text has a size or modifier of another column in it. */
    boolean hasVariant() {
        return has(Field.VARIANT) && has(Field.ITEM);
    }
}
