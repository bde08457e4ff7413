package heeltap.source;

import java.util.List;

/**
 * How a sheet was understood as a file, before its columns are looked at.
 *
 * @param place file and sheet
 * @param encoding the character set of a text file, such as {@code UTF-8}; empty for a workbook
 * @param delimiter {@code comma}, {@code semicolon}, {@code tab}, {@code bar} or {@code spaces}, {@code none} for a
 *     single column, any other as itself; empty for a workbook
 * @param hidden whether a workbook hides the sheet
 * @param problems what was odd about the file itself, such as a stray quote
 */
public record SheetFacts(Place place, String encoding, String delimiter, boolean hidden, List<Problem> problems) {}
