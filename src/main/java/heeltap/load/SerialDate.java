package heeltap.load;

import heeltap.source.Cell;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * Dates as spreadsheets number them, days since the end of 1899 with the time as a fraction (ECMA-376 part 1, 18.17.4;
 * the 1900 system, and that of 1904). Only days of this century are taken for dates.
 */
final class SerialDate {
    private static final BigDecimal FIRST = new BigDecimal(36526);
    private static final BigDecimal LAST = new BigDecimal(73050);
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    /** Days between the two systems. */
    private static final BigDecimal FROM_1904 = new BigDecimal(1462);

    private static final BigDecimal SECONDS_A_DAY = new BigDecimal(86400);

    private SerialDate() {}

    /** The moment of a number in a date column, to the second; null where it is none. */
    static @Nullable LocalDateTime parse(Cell cell, boolean since1904) {
        BigDecimal serial = cell.number();
        if (serial == null) {
            String text = TextFold.trim(cell.text());
            serial = text.length() >= 5 && text.charAt(0) >= '3' && text.charAt(0) <= '7'
                    ? NumberText.parse(text, Decimals.POINT)
                    : null;
        }
        serial = serial == null || !since1904 ? serial : serial.add(FROM_1904);
        if (serial == null || serial.compareTo(FIRST) < 0 || serial.compareTo(LAST) > 0) {
            return null;
        }
        BigDecimal day = serial.setScale(0, RoundingMode.FLOOR);
        long seconds = serial.subtract(day)
                .multiply(SECONDS_A_DAY)
                .setScale(0, RoundingMode.HALF_UP)
                .longValue();
        return DAY_ZERO.plusDays(day.longValue()).atStartOfDay().plusSeconds(seconds);
    }

    /** The time of day that a fraction of a day is; null where the cell is none. */
    static @Nullable LocalTime parseTime(Cell cell) {
        BigDecimal part = cell.number();
        if (part == null || part.signum() < 0 || part.compareTo(BigDecimal.ONE) >= 0) {
            return null;
        }
        long seconds =
                part.multiply(SECONDS_A_DAY).setScale(0, RoundingMode.HALF_UP).longValue();
        return LocalTime.ofSecondOfDay(seconds % 86400);
    }
}
