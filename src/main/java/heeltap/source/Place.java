package heeltap.source;

/**
 * Where a value was written, as its reader would look for it.
 *
 * @param file path from the bar folder, with {@code /}
 * @param sheet the sheet's name; empty in a text file
 * @param row the spreadsheet's row, or the physical line where a text record begins; 0 for the file or sheet as a whole
 * @param column the column's letter as a spreadsheet counts it ({@code A}, {@code AB}); empty for the whole row
 * @param heading the heading above the cell; empty where there is none
 */
public record Place(String file, String sheet, int row, String column, String heading) implements Comparable<Place> {
    public static Place of(String file) {
        return new Place(file, "", 0, "", "");
    }

    public static Place of(String file, String sheet) {
        return new Place(file, sheet, 0, "", "");
    }

    public Place withRow(int newRow) {
        return new Place(file, sheet, newRow, "", "");
    }

    /** A cell of this row; {@code columnIndex} counts from 0. */
    public Place withColumn(int columnIndex, String newHeading) {
        return new Place(file, sheet, row, columnLetters(columnIndex), newHeading);
    }

    /** {@code 0 -> A}, {@code 25 -> Z}, {@code 26 -> AA}. */
    public static String columnLetters(int columnIndex) {
        StringBuilder letters = new StringBuilder();
        for (int n = columnIndex + 1; n > 0; n = (n - 1) / 26) {
            letters.insert(0, (char) ('A' + (n - 1) % 26));
        }
        return letters.toString();
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        int bySheet = byFile != 0 ? byFile : sheet.compareTo(other.sheet);
        int byRow = bySheet != 0 ? bySheet : Integer.compare(row, other.row);
        return byRow != 0 ? byRow : column.compareTo(other.column);
    }

    /** {@code 2026-10/sales.csv, row 14, column C (Qty)}; the parts that are absent are left out. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        if (!sheet.isEmpty()) {
            text.append(", sheet ").append(sheet);
        }
        if (row > 0) {
            text.append(", row ").append(row);
        }
        if (!column.isEmpty()) {
            text.append(", column ").append(column);
        }
        if (!heading.isEmpty()) {
            text.append(" (").append(heading).append(')');
        }
        return text.toString();
    }
}
