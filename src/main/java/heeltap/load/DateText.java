package heeltap.load;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A date, perhaps with a time behind it, as written. Numbers alone may be read in several orders, which the whole
 * column decides; two-digit years are of this century.
 *
 * @param first the numbers in written order; for a month in words: day, month, year
 * @param third {@link #NO_YEAR} where none is written
 * @param shape what it looks like: texts of one shape are read in one order
 * @param time the time behind the date; null where there is none
 * @param near a date without a year is of the year that brings it nearest to this month; null where a year is written
 */
record DateText(
        int first,
        int second,
        int third,
        Shape shape,
        @Nullable LocalTime time,
        @Nullable YearMonth near) {
    static final int NO_YEAR = -1;
    private static final Set<String> FILLERS = Set.of(
            "de", "del", "do", "di", "of", "the", "den", "le", "el", "il", "st", "nd", "rd", "th", "er", "a", "o");
    private static final Set<String> TIME_WORDS =
            Set.of("t", "at", "um", "a", "om", "alle", "ore", "as", "las", "los", "kl");

    /** What a date looks like. */
    enum Shape {
        /** The year first, in four digits. */
        YEAR_FIRST,
        /** The month in words. */
        WORDS,
        SLASH_FOUR,
        SLASH_TWO,
        POINT_FOUR,
        POINT_TWO,
        DASH_FOUR,
        DASH_TWO,
        /** No year; so too the next three. */
        WORDS_ALONE,
        SLASH_ALONE,
        POINT_ALONE,
        DASH_ALONE;

        boolean isDecided() {
            return this == YEAR_FIRST || isWords();
        }

        boolean isWords() {
            return this == WORDS || this == WORDS_ALONE;
        }

        boolean isWithoutYear() {
            return this == WORDS_ALONE || this == SLASH_ALONE || this == POINT_ALONE || this == DASH_ALONE;
        }

        boolean isShortYear() {
            return this == SLASH_TWO || this == POINT_TWO || this == DASH_TWO;
        }

        private static Shape of(char separator, boolean fourDigits) {
            return switch (separator) {
                case '/' -> fourDigits ? SLASH_FOUR : SLASH_TWO;
                case '.' -> fourDigits ? POINT_FOUR : POINT_TWO;
                default -> fourDigits ? DASH_FOUR : DASH_TWO;
            };
        }

        private static Shape withoutYear(char separator) {
            return separator == '/' ? SLASH_ALONE : separator == '.' ? POINT_ALONE : DASH_ALONE;
        }
    }

    /** The date under an order, or null where it is none. */
    @Nullable LocalDate date(DateOrder order) {
        if (shape == Shape.YEAR_FIRST) {
            return date(first, second, third);
        }
        if (shape.isWords()) {
            return date(year(second), second, first);
        }
        return switch (order) {
            case DAY_MONTH -> date(year(second), second, first);
            case MONTH_DAY -> date(year(first), first, second);
            case YEAR_MONTH_DAY -> shape.isShortYear() ? date(first, second, third) : null;
        };
    }

    private int year(int month) {
        if (third != NO_YEAR || near == null) {
            return third;
        }
        int ahead = month - near.getMonthValue();
        return near.getYear() + (ahead > 6 ? -1 : ahead < -6 ? 1 : 0);
    }

    private static @Nullable LocalDate date(int year, int month, int day) {
        int full = year < 100 ? 2000 + year : year;
        boolean valid = month >= 1
                && month <= 12
                && day >= 1
                && full >= 1900
                && full <= 2199
                && day <= YearMonth.of(full, month).lengthOfMonth();
        return valid ? LocalDate.of(full, month, day) : null;
    }

    /** The parts of the text, or null where it is no date. */
    static @Nullable DateText parse(String text) {
        return new Scanner(text, null).read();
    }

    /** The parts of the text, which may lack a year, or null where it is no date. */
    static @Nullable DateText parse(String text, YearMonth near) {
        return new Scanner(text, near).read();
    }

    /** Walks through one text. */
    private static final class Scanner {
        private final String text;
        private int at;
        private int length;
        private char separator;

        private final @Nullable YearMonth near;

        Scanner(String text, @Nullable YearMonth near) {
            this.text = text;
            this.near = near;
        }

        @Nullable DateText read() {
            skipTo();
            while (startsWord()) {
                String word = word();
                int month = MonthNames.find(word);
                if (month > 0 && !leadsToMonth(word)) {
                    return monthFirst(month);
                }
                // a weekday may stand before the date
                if (!MonthNames.isWeekday(word)) {
                    return null;
                }
                skipTo();
            }
            return numberFirst();
        }

        /** {@code mar} is a weekday too: it is one where a day and a month follow. */
        private boolean leadsToMonth(String word) {
            int start = at;
            skipTo();
            boolean leads = MonthNames.isWeekday(word) && number() >= 0;
            skipFillers();
            leads &= startsWord() && MonthNames.find(word()) > 0;
            at = start;
            return leads;
        }

        private @Nullable DateText monthFirst(int month) {
            skipTo();
            int day = number();
            if (month == 0 || day < 0 || length > 2) {
                return null;
            }
            return wordsWithYear(day, month);
        }

        private @Nullable DateText wordsWithYear(int day, int month) {
            int behind = at;
            skipFillers();
            int year = number();
            boolean plain =
                    year >= 0 && (length == 2 || length == 4) && !(at < text.length() && text.charAt(at) == ':');
            DateText dated = plain ? finish(day, month, year, Shape.WORDS) : null;
            at = plain ? at : behind;
            return plain || near == null ? dated : finish(day, month, NO_YEAR, Shape.WORDS_ALONE);
        }

        private @Nullable DateText numberFirst() {
            int first = number();
            int firstLength = length;
            if (first < 0) {
                return null;
            }
            if (firstLength == 8) {
                return finish(first / 10000, first / 100 % 100, first % 100, Shape.YEAR_FIRST);
            }
            skipFillers();
            char between = separator;
            if (startsWord()) {
                int month = MonthNames.find(word());
                if (month == 0) {
                    return null;
                }
                if (firstLength != 4) {
                    return firstLength <= 2 ? wordsWithYear(first, month) : null;
                }
                skipTo();
                int day = number();
                return day < 0 || length > 2 ? null : finish(day, month, first, Shape.WORDS);
            }
            int second = number();
            boolean usable = second >= 0 && length <= 2 && isDateSeparator(between);
            int behind = at;
            skipTo();
            int third = usable && separator == between ? number() : -1;
            int thirdLength = length;
            if (third < 0) {
                at = behind;
                return usable && firstLength <= 2 && near != null
                        ? finish(first, second, NO_YEAR, Shape.withoutYear(between))
                        : null;
            }
            if (firstLength == 4) {
                return thirdLength <= 2 ? finish(first, second, third, Shape.YEAR_FIRST) : null;
            }
            boolean four = thirdLength == 4;
            return firstLength <= 2 && (four || thirdLength == 2)
                    ? finish(first, second, third, Shape.of(between, four))
                    : null;
        }

        private @Nullable DateText finish(int a, int b, int c, Shape shape) {
            while (at < text.length()
                    && (TextFold.isSpace(text.charAt(at)) || ",.-\u2013".indexOf(text.charAt(at)) >= 0)) {
                at++;
            }
            while (startsWord() && TIME_WORDS.contains(peekWord())) {
                word();
                skipTo();
            }
            if (at >= text.length()) {
                return new DateText(a, b, c, shape, null, c == NO_YEAR ? near : null);
            }
            LocalTime time = TimeText.parse(text.substring(at));
            return time == null ? null : new DateText(a, b, c, shape, time, c == NO_YEAR ? near : null);
        }

        private static boolean isDateSeparator(char c) {
            return c == '/' || c == '.' || c == '-';
        }

        /** Goes to the next digit or letter and keeps the sign passed on the way; a space counts only alone. */
        private void skipTo() {
            separator = ' ';
            while (at < text.length() && !Character.isLetterOrDigit(text.charAt(at)) && text.charAt(at) != ':') {
                char c = text.charAt(at++);
                if (!TextFold.isSpace(c)) {
                    separator = NumberText.isDash(c) ? '-' : c;
                }
            }
        }

        private void skipFillers() {
            skipTo();
            while (startsWord() && FILLERS.contains(peekWord())) {
                word();
                skipTo();
            }
        }

        private boolean startsWord() {
            return at < text.length() && Character.isLetter(text.charAt(at));
        }

        private String peekWord() {
            int start = at;
            String word = TextFold.fold(word());
            at = start;
            return word;
        }

        private String word() {
            int start = at;
            while (startsWord()) {
                at++;
            }
            return text.substring(start, at);
        }

        private int number() {
            int value = 0;
            int start = at;
            while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9' && at - start < 9) {
                value = value * 10 + text.charAt(at++) - '0';
            }
            length = at - start;
            return length == 0 ? -1 : value;
        }
    }
}
