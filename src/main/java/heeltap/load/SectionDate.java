package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Row;
import java.time.YearMonth;
import org.jspecify.annotations.Nullable;

/** A row that holds nothing but a date, which is that of the rows below it that have none of their own. */
final class SectionDate {
    /** A label beside the date, and no more. */
    private static final int MOST_CELLS = 2;

    private final boolean known;
    private final Reading reading;
    private final YearMonth month;
    private Reading.@Nullable Moment present;

    SectionDate(Layout layout, Reading reading, YearMonth month) {
        this.known = isKnownIn(layout);
        this.reading = reading;
        this.month = month;
    }

    /** Sales and losses are listed by day; the rows of an invoice or a count are not. */
    static boolean isKnownIn(Layout layout) {
        FileKind kind = FileKind.find(layout.sheet().file());
        return kind == FileKind.SALES || kind == FileKind.LOSSES;
    }

    /** The cell with the date where the row holds nothing else, as {@code 03/10/2026} or {@code Date: 03/10/2026}. */
    static @Nullable Cell find(Row row, YearMonth month) {
        if (row.cells().size() > MOST_CELLS) {
            return null;
        }
        Cell found = null;
        for (Cell cell : row.cells()) {
            Cell date = date(cell, month);
            if (date == null && !RowWords.is("label date", cell.text())) {
                return null;
            }
            if (date != null && found != null) {
                return null;
            }
            found = date != null ? date : found;
        }
        return found;
    }

    private static @Nullable Cell date(Cell cell, YearMonth month) {
        if (cell.moment() != null) {
            return cell;
        }
        String text = TextFold.trim(cell.text());
        int colon = text.indexOf(':');
        boolean labelled = colon > 0 && RowWords.is("label date", text.substring(0, colon));
        Cell value = labelled ? Cell.text(cell.column(), TextFold.trim(text.substring(colon + 1))) : cell;
        return DateText.parse(value.text(), month) == null ? null : value;
    }

    /** Whether the row is such a date; it then holds for the rows that follow. */
    boolean take(Row row) {
        Cell cell = known ? find(row, month) : null;
        Reading.Moment moment = cell == null ? null : reading.moment(cell);
        present = moment == null ? present : new Reading.Moment(moment.date(), null);
        return moment != null;
    }

    /** The date of the present section; null where there is none. */
    Reading.@Nullable Moment present() {
        return present;
    }
}
