package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spellings of numbers, of tills and of the locales of CLDR 47 (decimal and grouping characters as published there). */
class NumberTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "12; 12; 12; SAME",
                "1,234.50; 1234.50; -; POINT_ONLY",
                "1.234,50; -; 1234.50; COMMA_ONLY",
                "1 234,50; -; 1234.50; COMMA_ONLY",
                "1\u00A0234,50; -; 1234.50; COMMA_ONLY",
                "1\u202F234,50; -; 1234.50; COMMA_ONLY",
                "1'234.50; 1234.50; -; POINT_ONLY",
                "1\u2019234.50; 1234.50; -; POINT_ONLY",
                "(12.00); -12.00; -; POINT_ONLY",
                "(€12.00); -12.00; -; POINT_ONLY",
                "-12; -12; -12; SAME",
                "12-; -12; -12; SAME",
                "\u221212; -12; -12; SAME",
                "€12; 12; 12; SAME",
                "12 €; 12; 12; SAME",
                "-€12.50; -12.50; -; POINT_ONLY",
                "€-12.50; -12.50; -; POINT_ONLY",
                "€ 12,-; -; 12; COMMA_ONLY",
                "CHF 12.-; 12; -; POINT_ONLY",
                "12.50 Fr.; 12.50; -; POINT_ONLY",
                "Rs.500; 500; 500; SAME",
                "EUR 1.234,5; -; 1234.5; COMMA_ONLY",
                "12.50 CR; -12.50; -; POINT_ONLY",
                "12.50 DR; 12.50; -; POINT_ONLY",
                "12,34,567.89; 1234567.89; -; POINT_ONLY",
                "12,34,567; 1234567; -; POINT_ONLY",
                "1.234; 1.234; 1234; TWO",
                "1,234; 1234; 1.234; TWO",
                "0.750; 0.750; -; POINT_ONLY",
                "0,750; -; 0.750; COMMA_ONLY",
                "1234,567; -; 1234.567; COMMA_ONLY",
                "1.234.567; -; 1234567; COMMA_ONLY",
                "1,234,567; 1234567; -; POINT_ONLY",
                ".5; 0.5; -; POINT_ONLY",
                "+5; 5; 5; SAME",
                "1 23; -; -; NONE",
                "1,23.4; -; -; NONE",
                "12 pcs; -; -; NONE",
                "x2; -; -; NONE",
                "--5; -; -; NONE",
                "(-5); -; -; NONE",
                "12 USD CR; -12; -12; SAME",
                "2026-10-03; -; -; NONE",
                "1.2.3; -; -; NONE",
                "-; -; -; NONE",
                "€; -; -; NONE",
                "1e3; -; -; NONE"
            })
    void isReadUnderBothStyles(String text, String point, String comma, NumberText.Readings readings) {
        assertThat(NumberText.parse(text, Decimals.POINT)).isEqualTo(number(point));
        assertThat(NumberText.parse(text, Decimals.COMMA)).isEqualTo(number(comma));
        assertThat(NumberText.readings(text)).isEqualTo(readings);
    }

    private static @Nullable BigDecimal number(String text) {
        return text.equals("-") ? null : new BigDecimal(text);
    }
}
