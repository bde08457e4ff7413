package heeltap.report;

import heeltap.document.CellValue;
import heeltap.quantity.Exact;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A column of a table in the workbook, named in a document as {@code table.key}. */
record ColumnPlace(TablePlace table, int column) {
    /** Null where the workbook shows no such table or the table has no such column. */
    static @Nullable ColumnPlace find(Map<String, TablePlace> tables, String reference) {
        int dot = reference.indexOf('.');
        TablePlace place = dot < 0 ? null : tables.get(reference.substring(0, dot));
        String key = reference.substring(dot + 1);
        if (place == null
                || place.table().columns().stream().noneMatch(c -> c.key().equals(key))) {
            return null;
        }
        return new ColumnPlace(place, place.column(key));
    }

    String range() {
        return table.range(column);
    }

    /** Whether the first row with this label holds the value, so that looking it up gives what the chart shows. */
    boolean holds(ColumnPlace labels, String label, Exact value) {
        if (!labels.table.equals(table)) {
            return false;
        }
        return table.table().rows().stream()
                .filter(row -> row.cells().get(labels.column) instanceof CellValue.Text text
                        && text.text().equalsIgnoreCase(label))
                .findFirst()
                .filter(row -> CellValue.of(value).equals(number(row.cells().get(column))))
                .isPresent();
    }

    private static CellValue number(CellValue value) {
        return value instanceof CellValue.Sum sum
                ? new CellValue.Figure(sum.money().amount())
                : value;
    }
}
