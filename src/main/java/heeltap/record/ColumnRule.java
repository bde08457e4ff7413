package heeltap.record;

import heeltap.source.Place;

/**
 * A row of the sheet Columns: how to read a file where the program's own reading is not right.
 *
 * @param file the beginning of the file's name
 * @param field the field's name in lower case, such as {@code quantity}; empty where the row only sets a form
 * @param heading the heading that holds it
 * @param dates {@code day-month}, {@code month-day}, {@code year-month-day} or empty
 * @param decimals {@code point}, {@code comma} or empty
 */
public record ColumnRule(String file, String field, String heading, String dates, String decimals, Place place) {}
