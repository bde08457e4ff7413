package heeltap.match;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be offered to paste as another spelling, and what may not since a word may change the drink. */
class SpellingTest {
    @ParameterizedTest
    @CsvSource({
        "Nergoni, Negroni",
        "Espreso Martini, Espresso Martini",
        "Martini espresso, Espresso Martini",
        "OLD FASH, Old Fashioned",
        "Housse lager, House Lager",
        "Gin & Tonic, Gin Tonic",
        "Cafe-Noir, Café Noir"
    })
    void spellings(String written, String known) {
        assertThat(Spelling.isVariant(written, known)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "Virgin Mary, Bloody Mary",
        "Alcohol-free Gin Tonic, Gin Tonic",
        "Negroni Bianco, Negroni",
        "Cherry Cobbler, Sherry Cobbler",
        "Pint Gin, Pink Gin",
        "Lager, House Lager",
        "Lager 25cl, Lager 50cl",
        "Dark Lager, Draught Lager",
        "901, Bloody Mary"
    })
    void otherDrinks(String written, String known) {
        assertThat(Spelling.isVariant(written, known)).isFalse();
    }
}
