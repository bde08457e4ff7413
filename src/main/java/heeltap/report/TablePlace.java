package heeltap.report;

import heeltap.document.Table;

/**
 * Where a table stands in the workbook.
 *
 * @param headingRow from 0; the first column of the sheet is the table's first
 */
record TablePlace(String sheet, Table table, int headingRow) {
    int firstRow() {
        return headingRow + 1;
    }

    /** Of the body; above {@link #firstRow} where the table is empty. */
    int lastRow() {
        return headingRow + table.rows().size();
    }

    boolean isEmpty() {
        return table.rows().isEmpty();
    }

    int column(String key) {
        return table.indexOf(key);
    }

    /** Absolute, with the sheet's name. */
    String range(int column) {
        String letter = org.apache.poi.ss.util.CellReference.convertNumToColString(column);
        return quoted(sheet) + "!$" + letter + "$" + (firstRow() + 1) + ":$" + letter + "$" + (lastRow() + 1);
    }

    /** Name for a column's body cells, such as {@code drinks_net_sales}. */
    String nameOf(int column) {
        return (table.name() + "_" + table.columns().get(column).key()).replaceAll("[^A-Za-z0-9_]", "_");
    }

    static String quoted(String sheet) {
        return "'" + sheet.replace("'", "''") + "'";
    }
}
