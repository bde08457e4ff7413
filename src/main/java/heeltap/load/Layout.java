package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Row;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where a table of a sheet stands and which column holds which field.
 *
 * @param sheet file and sheet
 * @param headingRow the row of the (last) heading row; rows of the table stand below it
 * @param columns the column of each field that is there, counted from 0
 * @param headings the headings by column, of several heading rows joined
 * @param signatures what the heading rows say, to know them again on later pages
 * @param above the rows above the heading
 * @param width how many cells the heading row has; 0 where rows have no width of their own
 */
record Layout(
        Place sheet,
        int headingRow,
        Map<Field, Integer> columns,
        Map<Integer, String> headings,
        Set<String> signatures,
        List<Row> above,
        int width) {
    boolean has(Field field) {
        return columns.containsKey(field);
    }

    boolean hasAny(Field... fields) {
        for (Field field : fields) {
            if (has(field)) {
                return true;
            }
        }
        return false;
    }

    /** The place of a field's column; the sheet where the field has none. */
    Place column(Field field) {
        return cell(field, 0);
    }

    /** The place of a field in a row. */
    Place cell(Field field, int row) {
        Integer column = columns.get(field);
        Place place = sheet.withRow(row);
        return column == null ? place : place.withColumn(column, headings.getOrDefault(column, ""));
    }

    /** Whether the row says what the heading says: the top of another page. */
    boolean isHeading(Row row) {
        return signatures.contains(signature(row));
    }

    static String signature(Row row) {
        StringBuilder text = new StringBuilder();
        for (Cell cell : row.cells()) {
            text.append(cell.column())
                    .append('=')
                    .append(TextFold.fold(cell.text()))
                    .append(';');
        }
        return text.toString();
    }
}
