package heeltap.load;

import java.util.List;

/**
 * A sheet of the book or a file of a month: its columns.
 *
 * @param name the sheet's name, or the beginning of the file's
 * @param required whether a bar can do without it
 * @param purpose one line for the person who fills it in
 * @param columns in the order of the blank template
 */
public record ColumnTable(String name, boolean required, String purpose, List<Column> columns) {}
