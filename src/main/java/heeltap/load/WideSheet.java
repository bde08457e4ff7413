package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A sheet that has one column an item, as one that has a row for each filled cell: the columns before the items stay, the
 * item and its quantity follow them.
 */
final class WideSheet implements Sheet {
    /** The field of the sheet Columns that says a file is so. */
    static final String FIELD = "each column is an item";

    private final Sheet sheet;
    private final int headingRow;
    private final int first;
    private final Map<Integer, String> items;

    private WideSheet(Sheet sheet, int headingRow, int first, Map<Integer, String> items) {
        this.sheet = sheet;
        this.headingRow = headingRow;
        this.first = first;
        this.items = items;
    }

    /** The sheet unfolded; null where no row has the heading of the first item. */
    static @Nullable Sheet of(Sheet sheet, List<Row> head, String firstItem) {
        String wanted = TextFold.fold(firstItem);
        for (Row row : head) {
            for (Cell cell : row.cells()) {
                if (TextFold.fold(cell.text()).equals(wanted)) {
                    return new WideSheet(sheet, row.number(), cell.column(), items(row, cell.column()));
                }
            }
        }
        return null;
    }

    /** Totals at the right are no items. */
    private static Map<Integer, String> items(Row row, int first) {
        Map<Integer, String> items = new TreeMap<>();
        for (Cell cell : row.cells()) {
            String name = TextFold.trim(cell.text());
            if (cell.column() >= first && !RowWords.is("total", name)) {
                items.put(cell.column(), name);
            }
        }
        return items;
    }

    @Override
    public SheetFacts facts() {
        return sheet.facts();
    }

    @Override
    public void read(RowReader reader) {
        sheet.read(row -> (row.number() < headingRow || row.isBlank()) ? reader.take(row) : unfold(row, reader));
    }

    private boolean unfold(Row row, RowReader reader) {
        List<Cell> before =
                row.cells().stream().filter(cell -> cell.column() < first).toList();
        if (row.number() == headingRow) {
            return reader.take(with(row, before, "Item", Cell.text(first + 1, "Quantity")));
        }
        if (before.stream().anyMatch(cell -> RowWords.is("total", cell.text()))) {
            return reader.take(new Row(row.number(), before));
        }
        for (Map.Entry<Integer, String> item : items.entrySet()) {
            Cell cell = row.find(item.getKey()).orElse(null);
            boolean more = cell == null
                    || reader.take(with(
                            row,
                            before,
                            item.getValue(),
                            new Cell(first + 1, cell.text(), cell.number(), cell.moment())));
            if (!more) {
                return false;
            }
        }
        return true;
    }

    private Row with(Row row, List<Cell> before, String item, Cell quantity) {
        List<Cell> cells = new ArrayList<>(before);
        cells.add(Cell.text(first, item));
        cells.add(quantity);
        return new Row(row.number(), cells);
    }
}
