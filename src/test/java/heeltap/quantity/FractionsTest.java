package heeltap.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FractionsTest {
    @ParameterizedTest
    @CsvSource({
        "3/4, 3, 4",
        "1 1/2, 3, 2",
        "1½, 3, 2",
        "½, 1, 2",
        "¾, 3, 4",
        "2 ¼, 9, 4",
        "⅓, 1, 3",
        "1⅔, 5, 3",
        "⅛, 1, 8",
        "3⁄4, 3, 4",
        "3∕4, 3, 4",
        "5/4, 5, 4",
        "'1 / 2', 1, 2"
    })
    void understands(String text, long above, long below) {
        assertThat(Fractions.parse(text)).contains(Exact.of(above).dividedBy(Exact.of(below)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "1/0", "1 3/2", "1/2/3", "a/b", "-1/2", "1.5/2", "1 2 1/2"})
    void refuses(String text) {
        assertThat(Fractions.parse(text)).isEmpty();
    }
}
