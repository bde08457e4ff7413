package heeltap.record;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoldingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Piña Colada | PINA-COLADA",
                "Crème de cassis | creme  de Cassis ",
                "Straßenbier | STRASSENBIER",
                "Rødgrød | rodgrod",
                "Smørre Æble | smorre aeble",
                "ILIK ÇAY | ilik çay",
                "ıl | IL",
                "İl | il",
                "Old-fashioned | Old Fashioned",
                "O'Hara’s Sour | OHaras sour",
                "Gin & Tonic | Gin Tonic",
                "Wein 0,75 l | wein 0.75L",
                "ΟΥΖΟΣ | ουζος",
                "½ pint | 1/2 pint",
                "ﬁzz | Fizz",
                "Ｓｏｕｒ | sour",
            })
    void spellingsOfOneNameFoldAlike(String one, String other) {
        assertThat(Folding.fold(one)).isEqualTo(Folding.fold(other));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Wein 1.5 l | Wein 15 l",
                "½ pint | 12 pint",
                "Gin Sour | Gin Sours",
                "Negroni | Negroni bianco",
                "कि | कु",
                "!!! | ???",
            })
    void differentNamesStayApart(String one, String other) {
        assertThat(Folding.fold(one)).isNotEqualTo(Folding.fold(other));
    }

    @Property
    void foldingTwiceChangesNothing(@ForAll String name) {
        assertThat(Folding.fold(Folding.fold(name))).isEqualTo(Folding.fold(name));
    }
}
