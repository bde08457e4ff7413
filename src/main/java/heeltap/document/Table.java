package heeltap.document;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A table of the review. CSV writes every column and body row; the workbook does too, with formulas and the total row;
 * a page shows the columns that its section names.
 *
 * @param name the contract name, such as {@code drinks}: {@code tables/drinks.csv}
 * @param title for people; also the workbook sheet's name where it has its own (31 characters at the most)
 * @param note a sentence under the title on how to read it; empty for none
 * @param columns unique keys
 * @param rows in their final order
 * @param total the row under the body; empty for none; never written to CSV
 */
public record Table(
        String name, String title, String note, List<Column> columns, List<TableRow> rows, Optional<TableRow> total) {
    /** @throws IllegalArgumentException if a row has not one cell for each column, or a key stands twice */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        int width = columns.size();
        if (columns.stream().map(Column::key).distinct().count() != width) {
            throw new IllegalArgumentException("a key stands twice in table " + name);
        }
        if (rows.stream().anyMatch(row -> row.cells().size() != width)
                || total.filter(row -> row.cells().size() != width).isPresent()) {
            throw new IllegalArgumentException("a row of table " + name + " has not " + width + " cells");
        }
    }

    /** @throws IllegalArgumentException if there is no such column */
    public int indexOf(String key) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().equals(key)) {
                return i;
            }
        }
        throw new IllegalArgumentException("table " + name + " has no column " + key);
    }

    /** Whether nothing stands in a column, neither in the body nor in the total row; false of a table without rows. */
    public boolean isEmpty(int column) {
        return !rows.isEmpty()
                && rows.stream().allMatch(row -> row.cells().get(column) instanceof CellValue.Blank)
                && total.map(row -> row.cells().get(column) instanceof CellValue.Blank)
                        .orElse(true);
    }

    public CellValue cell(int row, String key) {
        return rows.get(row).cells().get(indexOf(key));
    }

    /** The same table with those of its rows that pass, and without a total. */
    public Table where(Predicate<TableRow> passes) {
        return new Table(
                name, title, note, columns, rows.stream().filter(passes).toList(), Optional.empty());
    }
}
