package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.Figures;
import java.time.YearMonth;
import java.util.Currency;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Months in sentences and alone. French, Spanish and Italian write them small (their usual orthography). */
class MonthNamesTest {
    @ParameterizedTest
    @CsvSource({
        "en, October 2026, October 2026",
        "de, Oktober 2026, Oktober 2026",
        "fr, octobre 2026, Octobre 2026",
        "es, octubre de 2026, Octubre de 2026",
        "it, ottobre 2026, Ottobre 2026"
    })
    void standAsTheLanguageWritesThem(String language, String inASentence, String alone) {
        Figures figures = new Figures(Locale.forLanguageTag(language), Currency.getInstance("EUR"));
        assertThat(figures.month(YearMonth.of(2026, 10))).isEqualTo(inASentence);
        assertThat(figures.monthAlone(YearMonth.of(2026, 10))).isEqualTo(alone);
    }
}
