package heeltap.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoredNumberTest {
    /** Dust behind the 15th digit goes; arithmetic verified by hand. */
    @ParameterizedTest
    @CsvSource({
        "0.30000000000000004, 0.3",
        "0.1, 0.1",
        "12.50, 12.5",
        "4.4999999999999996, 4.5",
        "1E3, 1000",
        "100, 100",
        "-0.99999999999999989, -1",
        "1.7976931348623157E+308, 1.79769313486232E+308",
        "123456789012345678, 123456789012346000",
        "0, 0",
        "0.0, 0"
    })
    void numbersHaveFifteenDigits(String raw, BigDecimal expected) {
        BigDecimal number = StoredNumber.parse(raw);
        assertThat(number).isEqualByComparingTo(expected);
        if (number != null && number.scale() > 0) {
            assertThat(number).isEqualTo(number.stripTrailingZeros());
        }
    }

    /** ECMA-376 Part 1, 18.17.4.1 (clause from memory; the day arithmetic verified). */
    @ParameterizedTest
    @CsvSource({
        "1, 1900-01-01T00:00, 1904-01-02T00:00",
        "2, 1900-01-02T00:00, 1904-01-03T00:00",
        "31, 1900-01-31T00:00, 1904-02-01T00:00",
        "59, 1900-02-28T00:00, 1904-02-29T00:00",
        "60, , 1904-03-01T00:00",
        "61, 1900-03-01T00:00, 1904-03-02T00:00",
        "366, 1900-12-31T00:00, 1905-01-01T00:00",
        "367, 1901-01-01T00:00, 1905-01-02T00:00",
        "1462, 1904-01-01T00:00, 1908-01-02T00:00",
        "25569, 1970-01-01T00:00, 1974-01-02T00:00",
        "36526, 2000-01-01T00:00, 2004-01-02T00:00",
        "45717, 2025-03-01T00:00, 2029-03-02T00:00",
        "46023, 2026-01-01T00:00, 2030-01-02T00:00",
        "73050, 2099-12-31T00:00, 2104-01-02T00:00",
        "2958465, 9999-12-31T00:00,",
        "2958466, ,",
        "0.5, 1899-12-31T12:00, 1904-01-01T12:00",
        "45658.75, 2025-01-01T18:00, 2029-01-02T18:00",
        "45658.7499999999, 2025-01-01T18:00, 2029-01-02T18:00",
        "-1, ,"
    })
    void serialDaysAreMoments(BigDecimal serial, String since1900, String since1904) {
        assertThat(String.valueOf(StoredNumber.moment(serial, false))).isEqualTo(String.valueOf(since1900));
        assertThat(String.valueOf(StoredNumber.moment(serial, true))).isEqualTo(String.valueOf(since1904));
    }

    @ParameterizedTest
    @CsvSource({"NaN", "'1,5'", "x"})
    void whatIsNoNumberStaysText(String raw) {
        assertThat(StoredNumber.parse(raw)).isNull();
    }
}
