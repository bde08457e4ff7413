package heeltap.document;

/**
 * A column of a table.
 *
 * @param key the column's contract name in the CSV table, such as {@code cost_percent}; unique in its table
 * @param heading for people, in the report's language
 * @param explanation a sentence on what the column holds and how it is computed; becomes the note on the heading
 * @param format how values print
 * @param formula the live formula of the workbook for body rows, with English function names, a comma between
 *     arguments and point decimals; {@code {key}} is the cell of another column in the same row, {@code {key:all}} the
 *     column's body cells, {@code {yes}} and {@code {no}} those words as the report prints them. Empty: values are
 *     written. The value of the cell is always given too, and the formula must give the same (22.5 for 22.5 %); a blank
 *     cell gets no formula. Guard against division by zero with {@code IF}.
 * @param total the formula of the total row, with {@code {key}} for the cell of the total row and {@code {key:all}} for
 *     the column's body cells, such as {@code SUM({total_margin:all})}; empty: the total row's value is written
 * @param input whether a reader of the workbook may type other values here, to see what follows from them
 */
public record Column(
        String key, String heading, String explanation, Format format, String formula, String total, boolean input) {
    public Column(String key, String heading, String explanation, Format format, String formula, String total) {
        this(key, heading, explanation, format, formula, total, false);
    }

    public static Column of(String key, String heading, String explanation, Format format) {
        return new Column(key, heading, explanation, format, "", "");
    }

    /** This column as one where the reader of the workbook may type. */
    public Column asInput() {
        return new Column(key, heading, explanation, format, formula, total, true);
    }

    public Column withFormula(String newFormula) {
        return new Column(key, heading, explanation, format, newFormula, total, input);
    }

    public Column withTotal(String newTotal) {
        return new Column(key, heading, explanation, format, formula, newTotal, input);
    }
}
