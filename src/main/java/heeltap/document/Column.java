package heeltap.document;

/**
 * A column of a table.
 *
 * @param key the column's contract name in the CSV table, such as {@code cost_percent}; unique in its table
 * @param heading for people, in the report's language
 * @param explanation a sentence on what the column holds and how it is computed; becomes the note on the heading
 * @param format how values print
 * @param formula the live formula of the workbook for body rows, in the formula language of OpenFormula with {@code
 *     {key}} for the cell of another column in the same row; empty: values are written. The value of the cell is always
 *     given too, and the formula must give the same. Guard against division by zero with {@code IF}.
 * @param total the formula of the total row, with {@code {key}} for the cell of the total row and {@code {key:all}} for
 *     the column's body cells, such as {@code SUM({total_margin:all})}; empty: the total row's value is written
 */
public record Column(String key, String heading, String explanation, Format format, String formula, String total) {
    public static Column of(String key, String heading, String explanation, Format format) {
        return new Column(key, heading, explanation, format, "", "");
    }

    public Column withFormula(String newFormula) {
        return new Column(key, heading, explanation, format, newFormula, total);
    }

    public Column withTotal(String newTotal) {
        return new Column(key, heading, explanation, format, formula, newTotal);
    }
}
