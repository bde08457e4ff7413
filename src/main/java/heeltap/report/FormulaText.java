package heeltap.report;

import heeltap.document.Column;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;

/** Turns a column's formula with {@code {key}} and {@code {key:all}} into one with cell references. */
final class FormulaText {
    private static final Pattern PLACE = Pattern.compile("\\{(?:([A-Za-z0-9_]+)\\.)?([A-Za-z0-9_]+)(:all)?}");

    private FormulaText() {}

    /**
     * @param others tables that stand above it on the same sheet
     * @param row of the cell that the formula stands in, from 0
     * @throws IllegalArgumentException if a key is not in the table
     */
    static String of(String formula, TablePlace place, List<TablePlace> others, int row, Words words) {
        Matcher matcher = PLACE.matcher(formula);
        StringBuilder text = new StringBuilder();
        while (matcher.find()) {
            matcher.appendReplacement(
                    text,
                    Matcher.quoteReplacement(
                            matcher.group(1) == null
                                    ? reference(matcher, place, row, words)
                                    : elsewhere(matcher, others)));
        }
        matcher.appendTail(text);
        return text.toString();
    }

    private static String reference(Matcher matcher, TablePlace place, int row, Words words) {
        String key = matcher.group(2);
        if (matcher.group(3) == null && isWord(key, place)) {
            return '"' + words.get(key) + '"';
        }
        int column = place.column(key);
        return matcher.group(3) == null
                ? new CellReference(row, column, false, false).formatAsString()
                : new CellRangeAddress(place.firstRow(), place.lastRow(), column, column).formatAsString();
    }

    /** The body cells of a column of another table of the sheet, fixed. */
    private static String elsewhere(Matcher matcher, List<TablePlace> others) {
        TablePlace place = others.stream()
                .filter(other -> other.table().name().equals(matcher.group(1)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no table above: " + matcher.group()));
        return place.range(place.column(matcher.group(2)));
    }

    private static boolean isWord(String key, TablePlace place) {
        return ("yes".equals(key) || "no".equals(key))
                && place.table().columns().stream().map(Column::key).noneMatch(key::equals);
    }
}
