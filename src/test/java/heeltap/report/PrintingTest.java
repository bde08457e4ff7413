package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.CellValue;
import heeltap.document.Format;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintingTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    /** Marks of the languages: Unicode CLDR as the Java platform carries it; here written with plain spaces. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | MONEY | 1234.565 | 1,234.57",
                "en | MONEY | -0.5 | \u22120.50",
                "de | MONEY | 1234.565 | 1.234,57",
                "fr | MONEY | 1234.565 | 1 234,57",
                "en | FINE_MONEY | 0.01234567 | 0.01235",
                "en | FINE_MONEY | 12 | 12.00",
                "en | PERCENT | 22.45 | 22.5%",
                "de | PERCENT | 22.45 | 22,5 %",
                "fr | PERCENT | -0.05 | \u22120,1 %",
                "en | COUNT | 12 | 12",
                "en | COUNT | 12.345 | 12.35",
                "en | AMOUNT | 1234.56 | 1,234.6",
                "en | AMOUNT | 99.999 | 100",
                "en | AMOUNT | 0.125 | 0.13"
            })
    void printsNumbersForPeople(String language, Format format, String number, String expected) {
        Printing printing = new Printing(Locale.forLanguageTag(language), EUR);
        String printed = printing.cell(CellValue.of(Exact.of(number)), format);
        assertThat(printed.replace('\u00A0', ' ').replace('\u202F', ' ')).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | EUR | \u2212€1,234.50",
                "de | EUR | \u22121.234,50 €",
                "en-US | USD | \u2212$1,234.50",
                "en | JPY | \u2212¥1,235",
                "it | CHF | \u22121.234,50 CHF"
            })
    void printsMoneyAlone(String language, String currency, String expected) {
        Printing printing = new Printing(Locale.forLanguageTag(language), Currency.getInstance(currency));
        assertThat(printing.money(Money.of("-1234.5")).replace('\u00A0', ' ').replace("JP", ""))
                .isEqualTo(expected);
    }

    @Test
    void printsDatesAndWords() {
        Printing english = new Printing(Locale.ENGLISH, EUR);
        assertThat(english.date(LocalDate.of(2026, 10, 3))).isEqualTo("3 Oct 2026");
        assertThat(english.month(YearMonth.of(2026, 10))).isEqualTo("October 2026");
        assertThat(english.cell(CellValue.of(true), Format.YES_NO)).isEqualTo("yes");
        Printing french = new Printing(Locale.FRENCH, EUR);
        assertThat(french.month(YearMonth.of(2026, 8))).isEqualTo("Août 2026");
        assertThat(french.cell(CellValue.of(false), Format.YES_NO)).isEqualTo("non");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "de", "es", "it"})
    void everyLanguageHasEveryWord(String language) {
        Properties english = Words.read("en");
        Properties other = Words.read(language);
        assertThat(new TreeSet<>(other.stringPropertyNames())).isEqualTo(new TreeSet<>(english.stringPropertyNames()));
        for (String key : english.stringPropertyNames()) {
            assertThat(other.getProperty(key)).as(key).isNotBlank();
            assertThat(other.getProperty(key).contains("{0}"))
                    .as(key)
                    .isEqualTo(english.getProperty(key).contains("{0}"));
        }
    }
}
