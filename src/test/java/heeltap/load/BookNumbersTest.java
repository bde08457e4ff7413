package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BookNumbersTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|12",
                "12.5|12.5",
                ".5|0.5",
                "0.125|0.125",
                "1,234.50|1234.5",
                "1 234.50|1234.5",
                "1'234.50|1234.5",
                "€ 12.50|12.5",
                "12.50 €|12.5",
                "$12|12",
                "12.50 EUR|12.5",
                "EUR 12.50|12.5",
                "22 %|22",
                "22%|22",
                "-3|-3",
                "−3|-3",
                "+3|3",
                "-$3|-3",
                "1,234|1234",
                "1.234|1.234",
                "1,234,567|1234567"
            })
    void readsPoints(String text, String number) {
        assertThat(new BookNumbers('.', true, false).parse(text)).isEqualTo(Exact.of(number));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|12",
                "12,5|12.5",
                ",5|0.5",
                "1.234,50|1234.5",
                "1 234,50|1234.5",
                "12,50 €|12.5",
                "1.234|1234",
                "1,234|1.234"
            })
    void readsCommas(String text, String number) {
        assertThat(new BookNumbers(',', true, false).parse(text)).isEqualTo(Exact.of(number));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''",
                "abc",
                "12,5",
                "1,23",
                "1.2.3",
                "12.",
                "1,2345.5",
                "0,123.5",
                "12 ml",
                "--3",
                "12..5",
                "1 2 3",
                "€",
                "%"
            })
    void refuses(String text) {
        assertThat(new BookNumbers('.', true, false).parse(text)).isNull();
    }

    @Test
    void decidesForTheWholeColumn() {
        assertThat(decide(List.of("12,5", "1.234"), List.of(), Locale.ENGLISH))
                .isEqualTo(new BookNumbers(',', true, false));
        assertThat(decide(List.of("1.234,5"), List.of(), Locale.ENGLISH)).isEqualTo(new BookNumbers(',', true, false));
        assertThat(decide(List.of("1,234,567"), List.of(), Locale.GERMAN)).isEqualTo(new BookNumbers('.', true, false));
        assertThat(decide(List.of("12.5", "0,5"), List.of(), Locale.ENGLISH))
                .isEqualTo(new BookNumbers('.', true, true));
    }

    @Test
    void thenByItsSheetAndThenByTheLanguage() {
        assertThat(decide(List.of("1.234"), List.of("0,5"), Locale.ENGLISH))
                .isEqualTo(new BookNumbers(',', true, false));
        assertThat(decide(List.of("1.234"), List.of(), Locale.GERMAN)).isEqualTo(new BookNumbers(',', false, false));
        assertThat(decide(List.of("1.234"), List.of(), Locale.ENGLISH)).isEqualTo(new BookNumbers('.', false, false));
    }

    @Test
    void inAMixedColumnOnlyWhatIsClearIsRead() {
        BookNumbers mixed = new BookNumbers('.', true, true);
        assertThat(mixed.parse("12,5")).isEqualTo(Exact.of("12.5"));
        assertThat(mixed.parse("12.5")).isEqualTo(Exact.of("12.5"));
        assertThat(mixed.parse("1.234,5")).isEqualTo(Exact.of("1234.5"));
        assertThat(mixed.parse("7")).isEqualTo(Exact.of(7));
        assertThat(mixed.parse("1,234")).isNull();
        assertThat(mixed.parse("-1.234")).isNull();
    }

    private static BookNumbers decide(List<String> column, List<String> sheet, Locale language) {
        return BookNumbers.decide(BookNumbers.evidence(column), BookNumbers.evidence(sheet), language);
    }
}
