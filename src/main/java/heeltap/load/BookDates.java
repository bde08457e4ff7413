package heeltap.load;

import heeltap.source.Cell;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates of the book: stored by a spreadsheet, {@code 2026-09-01}, {@code 1.9.2026}, and {@code 13/9/2026} where a column
 * leaves one order of day and month only.
 */
final class BookDates {
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ]00:00(?::00)?)?");
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.\\s?(\\d{1,2})\\.\\s?(\\d{4})");
    private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4})");

    private BookDates() {}

    /** In which order a column of dates with slashes is written. */
    enum Order {
        DAY_MONTH,
        MONTH_DAY,
        UNKNOWN;

        static Order of(List<String> texts) {
            boolean day = false;
            boolean month = false;
            for (String text : texts) {
                Matcher matcher = SLASHES.matcher(BookText.clean(text));
                if (matcher.matches()) {
                    day |= Integer.parseInt(matcher.group(1)) > 12;
                    month |= Integer.parseInt(matcher.group(2)) > 12;
                }
            }
            return day == month ? UNKNOWN : day ? DAY_MONTH : MONTH_DAY;
        }
    }

    static Optional<LocalDate> parse(Cell cell, Order order) {
        if (cell.moment() != null) {
            return Optional.of(cell.moment().toLocalDate());
        }
        String text = BookText.clean(cell.text());
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return date(iso.group(1), iso.group(2), iso.group(3));
        }
        Matcher points = POINTS.matcher(text);
        if (points.matches()) {
            return date(points.group(3), points.group(2), points.group(1));
        }
        Matcher slashes = SLASHES.matcher(text);
        if (!slashes.matches() || isAmbiguous(text, order)) {
            return Optional.empty();
        }
        boolean monthFirst =
                order == Order.MONTH_DAY || (order == Order.UNKNOWN && Integer.parseInt(slashes.group(2)) > 12);
        return monthFirst
                ? date(slashes.group(3), slashes.group(1), slashes.group(2))
                : date(slashes.group(3), slashes.group(2), slashes.group(1));
    }

    /** Whether the text is a date in which day and month cannot be told apart. */
    static boolean isAmbiguous(String text, Order order) {
        Matcher matcher = SLASHES.matcher(BookText.clean(text));
        return matcher.matches()
                && order == Order.UNKNOWN
                && Integer.parseInt(matcher.group(1)) <= 12
                && Integer.parseInt(matcher.group(2)) <= 12
                && !matcher.group(1).equals(matcher.group(2));
    }

    /** How the column says its dates, for the account of files; empty for other texts. */
    static String form(Cell cell, Order order) {
        if (cell.moment() != null) {
            return "stored";
        }
        String text = BookText.clean(cell.text());
        if (ISO.matcher(text).matches()) {
            return "year-month-day";
        }
        if (POINTS.matcher(text).matches()) {
            return "day-month";
        }
        return SLASHES.matcher(text).matches() && order != Order.UNKNOWN
                ? order.name().toLowerCase(Locale.ROOT).replace('_', '-')
                : "";
    }

    private static Optional<LocalDate> date(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
