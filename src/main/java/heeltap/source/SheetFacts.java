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
 * @param since1904 whether the workbook counts days from 1904 rather than 1900
 * @param problems what was odd about the file itself, such as a stray quote
 */
public record SheetFacts(
        Place place, String encoding, String delimiter, boolean hidden, boolean since1904, List<Problem> problems) {
    /** Of a sheet that counts days from 1900, or no days at all. */
    public SheetFacts(Place place, String encoding, String delimiter, boolean hidden, List<Problem> problems) {
        this(place, encoding, delimiter, hidden, false, problems);
    }
}
