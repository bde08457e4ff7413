package heeltap.sheet;

import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Collectors;

/** Collects what is odd about a file that can be read all the same: at most so many places by name, the rest by number. */
final class OddPlaces {
    private static final int NAMED = 200;
    private static final int RAW_LENGTH = 80;

    private final Place place;
    private final List<Problem> named = new ArrayList<>();
    private long count;
    private int last;

    OddPlaces(Place place) {
        this.place = place;
    }

    long count() {
        return count;
    }

    void addStrayQuote(int line, String text) {
        add(
                place.withRow(line),
                text,
                "A quotation mark stands where none can open or close a cell, so it was read as an ordinary character.",
                "Compare this row with its source; quotation marks stand around a whole cell, and are doubled inside.");
    }

    void addSurvey(TextSurvey survey) {
        if (survey.dropped().count() > 0) {
            add(
                    place.withRow(survey.dropped().line()),
                    "",
                    "The file holds " + survey.dropped().count()
                            + " characters that are no text (such as NUL), the first in this line; they were left out.",
                    "Compare this line with its source, or export the file again.");
        }
        if (survey.unknown().count() > 0) {
            add(
                    place.withRow(survey.unknown().line()),
                    "",
                    "The file holds " + survey.unknown().count()
                            + " bytes that its character set does not know, the first in this line;"
                            + " they show as \ufffd.",
                    "Export the file again as UTF-8.");
        }
    }

    void addUncalculated(int row, int column, String formula) {
        add(
                place.withRow(row).withColumn(column, ""),
                formula,
                "The formula was saved without its result.",
                "Open the workbook in a spreadsheet program, let it calculate, and save it.");
    }

    void addCutOff(int line, String text) {
        add(
                place.withRow(line),
                text,
                "The file ends without a line end, and its last row looks shorter than the others: it may be cut off here.",
                "Export it again, and compare its last rows with the till.");
    }

    void addHiddenRows(int firstRow, int rows) {
        add(
                place.withRow(firstRow),
                "",
                "Rows are hidden here, " + rows + " in this sheet; they are read like the others.",
                "Unhide them to see them, or delete them if they do not count.");
    }

    /** @param columns those that hold something, from 0; none is nothing odd */
    void addHiddenColumns(SortedSet<Integer> columns) {
        if (columns.isEmpty()) {
            return;
        }
        String letters = columns.stream().map(Place::columnLetters).collect(Collectors.joining(", "));
        add(
                place.withColumn(columns.first(), ""),
                "",
                "Columns are hidden here, " + columns.size() + " in this sheet (" + letters
                        + "); they are read like the others.",
                "Unhide them to see them, or delete them if they do not count.");
    }

    void addCovered(int row, int column, String text) {
        add(
                place.withRow(row).withColumn(column, ""),
                text,
                "The cell is covered by a merged one and does not show; its value is not used.",
                "Unmerge the cells if the value counts.");
    }

    private void add(Place where, String raw, String reason, String remedy) {
        count++;
        last = Math.max(last, where.row());
        if (named.size() < NAMED) {
            named.add(Problem.notice(ProblemKind.VALUE_DOUBTFUL, where, shortened(raw), reason, remedy));
        }
    }

    List<Problem> problems() {
        List<Problem> all = new ArrayList<>(named);
        if (count > NAMED) {
            all.add(Problem.notice(
                    ProblemKind.VALUE_DOUBTFUL,
                    place,
                    "",
                    "There are " + (count - NAMED) + " more such places, the last in row " + last + ".",
                    "Export the file again if there are many."));
        }
        all.sort(Problem.ORDER);
        return List.copyOf(all);
    }

    private static String shortened(String raw) {
        String text = raw.strip();
        return text.length() <= RAW_LENGTH ? text : text.substring(0, RAW_LENGTH) + "…";
    }
}
