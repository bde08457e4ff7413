package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.DateFormat;
import com.ibm.icu.text.NumberFormat;
import com.ibm.icu.util.Calendar;
import com.ibm.icu.util.GregorianCalendar;
import com.ibm.icu.util.TimeZone;
import com.ibm.icu.util.ULocale;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers and dates as ICU4J 77.1 (CLDR 47) writes them in many locales are read back. */
class LocaleDataTest {
    private static final List<String> NUMBERS =
            List.of("0.5", "12.5", "-12.25", "1234.5", "-1234567.75", "12345678.25");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "en", "en-GB", "en-IN", "en-ZA", "en-CH", "fr", "fr-CA", "fr-CH", "fr-BE", "de", "de-AT", "de-CH", "es",
                "es-MX", "it", "it-CH", "nl", "nl-BE", "pt", "pt-PT", "sv", "pl", "da", "nb", "fi", "cs"
            })
    void numbersAndMoney(String tag) {
        ULocale locale = ULocale.forLanguageTag(tag);
        for (NumberFormat format :
                List.of(NumberFormat.getInstance(locale), NumberFormat.getCurrencyInstance(locale))) {
            format.setMinimumFractionDigits(2);
            for (String number : NUMBERS) {
                String written = format.format(new BigDecimal(number));
                BigDecimal point = NumberText.parse(written, Decimals.POINT);
                BigDecimal comma = NumberText.parse(written, Decimals.COMMA);
                BigDecimal read = point != null ? point : comma;
                assertThat(read).as(tag + " " + written).isNotNull().isEqualByComparingTo(number);
                assertThat(NumberText.readings(written))
                        .as(written)
                        .isIn(NumberText.Readings.POINT_ONLY, NumberText.Readings.COMMA_ONLY);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "en-GB", "fr", "de", "es", "it", "nl", "pt", "pt-PT"})
    void datesAndTimesOfEachMonth(String tag) {
        ULocale locale = ULocale.forLanguageTag(tag);
        for (int style : new int[] {DateFormat.FULL, DateFormat.LONG, DateFormat.MEDIUM, DateFormat.SHORT}) {
            DateFormat format = DateFormat.getDateTimeInstance(style, DateFormat.SHORT, locale);
            format.setTimeZone(TimeZone.GMT_ZONE);
            for (int month = 1; month <= 12; month++) {
                Calendar calendar = new GregorianCalendar(TimeZone.GMT_ZONE);
                calendar.clear();
                calendar.set(2026, month - 1, 23, 21, 14);
                String written = format.format(calendar.getTime());
                DateText text = DateText.parse(written);
                assertThat(text).as(tag + " " + written).isNotNull();
                if (text != null) {
                    assertThat(text.date(DateOrder.of(locale.toLocale())))
                            .as(tag + " " + written)
                            .isEqualTo(LocalDate.of(2026, month, 23));
                    assertThat(text.time()).as(tag + " " + written).hasToString("21:14");
                }
            }
        }
    }
}
