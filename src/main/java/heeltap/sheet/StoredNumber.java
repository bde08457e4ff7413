package heeltap.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** Numbers as spreadsheets store them: binary floating-point numbers of 15 significant decimal digits, and days. */
final class StoredNumber {
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_UP);
    private static final BigDecimal MILLIS_A_DAY = BigDecimal.valueOf(86_400_000);

    /** The first and last day that a spreadsheet shows. */
    private static final LocalDate BASE_1900 = LocalDate.of(1899, 12, 30);

    private static final LocalDate BASE_1904 = LocalDate.of(1904, 1, 1);
    private static final int DAYS_1900 = 2_958_466;
    private static final int DAYS_1904 = 2_957_004;

    /** The 29 February 1900, which never was but is counted. */
    private static final int FALSE_DAY = 60;

    private StoredNumber() {}

    /** The number without the dust behind its 15th digit; null where the text is no number. */
    static @Nullable BigDecimal parse(String raw) {
        try {
            return rounded(new BigDecimal(raw.strip()));
        } catch (NumberFormatException notANumber) {
            return null;
        }
    }

    static BigDecimal rounded(BigDecimal stored) {
        BigDecimal number = stored.round(DIGITS);
        if (number.scale() > 0) {
            number = number.stripTrailingZeros();
        }
        return number.scale() < 0 && number.scale() > -400 ? number.setScale(0) : number;
    }

    /**
     * The date and time of a serial day number, to the millisecond.
     *
     * @param since1904 whether day 0 is 1904-01-01; else day 1 is 1900-01-01 (ECMA-376 Part 1, 18.17.4.1)
     * @return null outside the days that a spreadsheet shows, and for the 29 February 1900, which never was
     */
    static @Nullable LocalDateTime moment(BigDecimal serial, boolean since1904) {
        BigDecimal days = serial.setScale(0, RoundingMode.FLOOR);
        if (serial.signum() < 0 || days.compareTo(BigDecimal.valueOf(since1904 ? DAYS_1904 : DAYS_1900)) >= 0) {
            return null;
        }
        int day = days.intValueExact();
        if (!since1904 && day == FALSE_DAY) {
            return null;
        }
        LocalDate base = since1904 ? BASE_1904 : BASE_1900;
        int shift = !since1904 && day < FALSE_DAY ? 1 : 0;
        long millis = serial.subtract(days)
                .multiply(MILLIS_A_DAY)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
        return base.plusDays((long) day + shift).atStartOfDay().plusNanos(millis * 1_000_000);
    }
}
