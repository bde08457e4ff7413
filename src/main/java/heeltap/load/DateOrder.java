package heeltap.load;

import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.Locale;

/** In which order a date written in numbers names its parts. */
enum DateOrder {
    DAY_MONTH("day-month"),
    MONTH_DAY("month-day"),
    YEAR_MONTH_DAY("year-month-day");

    private final String word;

    DateOrder(String word) {
        this.word = word;
    }

    /** As {@code files.csv} and the sheet Columns say it. */
    String word() {
        return word;
    }

    /** Its place in arrays of counts. */
    @SuppressWarnings("EnumOrdinal")
    int at() {
        return ordinal();
    }

    /** As a language writes a short date (CLDR). */
    static DateOrder of(Locale language) {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                FormatStyle.SHORT, null, IsoChronology.INSTANCE, language);
        int day = pattern.indexOf('d');
        int month = pattern.indexOf('M');
        if (pattern.indexOf('y') < Math.min(day, month)) {
            return YEAR_MONTH_DAY;
        }
        return day < month ? DAY_MONTH : MONTH_DAY;
    }
}
