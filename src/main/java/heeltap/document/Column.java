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
 *     column's body cells, {@code {table.key:all}} those of a table that stands above it on the same sheet, {@code
 *     {yes}} and {@code {no}} those words as the report prints them. Empty: values are
 *     written. The value of the cell is always given too, and the formula must give the same (22.5 for 22.5 %); a blank
 *     cell gets no formula. Guard against division by zero with {@code IF}.
 * @param total the formula of the total row, with {@code {key}} for the cell of the total row and {@code {key:all}} for
 *     the column's body cells, such as {@code SUM({total_margin:all})}; empty: the total row's value is written
 * @param input what a reader of the workbook may type here instead, to see what follows from it
 */
public record Column(
        String key, String heading, String explanation, Format format, String formula, String total, Input input) {
    /** Numbers that may be typed. */
    public enum Input {
        NONE,
        FROM_ZERO,
        BELOW_ZERO
    }

    public Column(String key, String heading, String explanation, Format format, String formula, String total) {
        this(key, heading, explanation, format, formula, total, Input.NONE);
    }

    public static Column of(String key, String heading, String explanation, Format format) {
        return new Column(key, heading, explanation, format, "", "");
    }

    /** This column as one where the reader of the workbook may type such numbers. */
    public Column asInput(Input numbers) {
        return new Column(key, heading, explanation, format, formula, total, numbers);
    }

    public Column withFormula(String newFormula) {
        return new Column(key, heading, explanation, format, newFormula, total, input);
    }

    public Column withTotal(String newTotal) {
        return new Column(key, heading, explanation, format, formula, newTotal, input);
    }
}
