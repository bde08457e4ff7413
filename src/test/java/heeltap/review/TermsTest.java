package heeltap.review;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cost.PriceBasis;
import heeltap.cost.WaterFrom;
import heeltap.document.CellValue;
import heeltap.match.Match;
import heeltap.quantity.Measure;
import heeltap.record.Loss;
import heeltap.stock.Journal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every word of a closed set that a table may hold is said in every language. */
class TermsTest {
    private record Word(String set, String published) {}

    private static List<Word> words() {
        List<Word> words = new ArrayList<>();
        add(words, "price-basis", PriceBasis.values(), PriceBasis::text);
        add(words, "water-from", WaterFrom.values(), WaterFrom::text);
        add(words, "measure", Measure.values(), Measure::symbol);
        add(words, "line", Match.Kind.values(), TermsTest::lower);
        add(words, "counted", Loss.Reason.values(), TermsTest::lower);
        add(words, "account", Journal.Account.values(), Journal.Account::standardName);
        words.add(new Word("counted", CountedRow.OPENING));
        words.add(new Word("counted", CountedRow.CLOSING));
        words.add(new Word("measure", "serve"));
        return words;
    }

    private static <E> void add(List<Word> words, String set, E[] values, Function<E, String> published) {
        Arrays.stream(values)
                .map(value -> new Word(set, published.apply(value)))
                .forEach(words::add);
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "es", "fr", "it"})
    void everyWordIsSaid(String language) {
        Texts texts = Texts.in(Locale.forLanguageTag(language));
        for (Word word : words()) {
            CellValue.Term term = texts.term(word.set(), word.published());
            assertThat(term.published()).isEqualTo(word.published());
            if (language.equals("en")) {
                assertThat(term.said()).isEqualTo(word.published());
            } else {
                assertThat(term.said()).isNotBlank();
            }
        }
        assertThat(texts.term("price-basis", "earlier month").said().equals("earlier month"))
                .isEqualTo(language.equals("en"));
    }
}
