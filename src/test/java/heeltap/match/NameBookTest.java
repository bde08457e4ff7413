package heeltap.match;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.BookBuilder;
import heeltap.match.Match.Kind;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.record.KnownNames.Answer;
import heeltap.record.NameRule.Where;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameBookTest {
    private static BookBuilder bar() {
        return new BookBuilder()
                .drink("Garden Sour", drink -> drink.code("101"))
                .drink("Harbour Spritz", drink -> drink.code("102"))
                .drink("Pilsner 33cl", drink -> drink.code("103"))
                .ingredient("Pilsner 33cl", Measure.EACH)
                .ingredient("Dry Gin", Measure.ML)
                .ingredient("Lemon", Measure.EACH)
                .preparation("Lemon syrup");
    }

    private static NameBook book() {
        return NameBook.of(bar().name("GDN SOUR DBL", "Garden Sour", Where.SALES, "2")
                .name("Deposit", "(ignore)", Where.ANY, "1")
                .name("London style gin 70", "dry gin", Where.INVOICES, "1")
                .name("Pils", "Pilsner 33cl", Where.ANY, "1")
                .name("Tray of pils", "Pilsner 33cl", Where.INVOICES, "24")
                .name("Pils", "Pilsner 33cl", Where.STOCK, "6")
                .name("9001", "Harbour Spritz", Where.SALES, "3")
                .build());
    }

    @ParameterizedTest
    @CsvSource({
        "SALES, garden  sour, '', Garden Sour, DRINK, 1",
        "SALES, unknown, 102, Harbour Spritz, DRINK, 1",
        "SALES, Garden Sour, 102, Garden Sour, DRINK, 1",
        "SALES, '', 101, Garden Sour, DRINK, 1",
        "SALES, 101, '', Garden Sour, DRINK, 1",
        "SALES, gdn sour dbl, '', Garden Sour, DRINK, 2",
        "SALES, '', 9001, Harbour Spritz, DRINK, 3",
        "SALES, DEPOSIT, '', Deposit, IGNORED, 1",
        "SALES, Pils, '', Pilsner 33cl, DRINK, 1",
        "INVOICES, Pils, '', Pilsner 33cl, INGREDIENT, 1",
        "INVOICES, Tray of Pils, '', Pilsner 33cl, INGREDIENT, 24",
        "INVOICES, London-style gin 70, '', Dry Gin, INGREDIENT, 1",
        "STOCK, Pils, '', Pilsner 33cl, INGREDIENT, 6",
        "STOCK, Lemon Syrup, '', Lemon syrup, PREPARATION, 1",
        "LOSSES, Garden Sour, '', Garden Sour, DRINK, 1",
        "LOSSES, Pilsner 33cl, '', Pilsner 33cl, INGREDIENT, 1",
    })
    void findsWhatANameMeans(Where where, String name, String code, String means, Kind kind, String times) {
        assertThat(book().find(where, name, code)).contains(new Match(means, kind, Exact.of(times)));
    }

    @ParameterizedTest
    @CsvSource({
        "SALES, Garden Sours, ''",
        "SALES, Dry Gin, ''",
        "SALES, Lemon, ''",
        "INVOICES, Garden Sour, ''",
        "INVOICES, Lemon syrup, ''",
        "INVOICES, 101, ''",
        "STOCK, Garden Sour, ''",
        "SALES, '', ''",
        "SALES, London style gin 70, ''",
    })
    void doesNotJoinWhatTheFileCannotMean(Where where, String name, String code) {
        assertThat(book().find(where, name, code)).isEmpty();
    }

    @Test
    void anUnknownNameIsAnsweredWithTheNearest() {
        var verdict = book().ask(Where.SALES, "Harbr Spritz", "");
        assertThat(verdict.answer()).isEqualTo(Answer.UNKNOWN);
        assertThat(verdict.nearest()).hasSize(3).first().isEqualTo("Harbour Spritz");
        assertThat(book().nearest(Where.SALES, "sour garden")).first().isEqualTo("Garden Sour");
        assertThat(book().nearest(Where.INVOICES, "Gin, dry, 70cl")).first().isEqualTo("Dry Gin");
        assertThat(book().ask(Where.SALES, "deposit", "").answer()).isEqualTo(Answer.IGNORED);
        assertThat(book().ask(Where.SALES, "GARDEN SOUR", "").answer()).isEqualTo(Answer.KNOWN);
    }

    @Test
    void equallyNearNamesComeInTheOrderOfTheirLetters() {
        NameBook one = NameBook.of(new BookBuilder()
                .drink("bb")
                .drink("aa")
                .drink("cc")
                .drink("dd")
                .build());
        assertThat(one.nearest(Where.SALES, "zz")).containsExactly("aa", "bb", "cc");
    }

    @Test
    void aNameThatStandsForTwoThingsJoinsNothingAndIsReported() {
        NameBook names = NameBook.of(
                bar().drink("GARDEN-SOUR", drink -> drink.code("102")).build());
        assertThat(names.find(Where.SALES, "Garden Sour", "")).isEmpty();
        assertThat(names.find(Where.SALES, "", "102")).isEmpty();
        assertThat(names.find(Where.SALES, "", "101")).isPresent();
        assertThat(names.problems())
                .extracting(Problem::kind)
                .containsOnly(ProblemKind.NAME_TWICE)
                .hasSize(2);
    }

    @Test
    void anIngredientAndAPreparationOfOneNameAreNeither() {
        NameBook names = NameBook.of(
                bar().ingredient("lemon-syrup", Measure.ML).drink("Lemon Syrup").build());
        assertThat(names.findInSpecs("Lemon syrup")).isEmpty();
        assertThat(names.find(Where.LOSSES, "Lemon syrup", "")).isEmpty();
        assertThat(names.problems()).extracting(Problem::kind).containsExactly(ProblemKind.NAME_TWICE);
    }

    @Test
    void specsTakeTheIngredientBeforeTheDrinkOfItsName() {
        assertThat(book().findInSpecs("pilsner 33CL")).map(Match::kind).contains(Kind.INGREDIENT);
        assertThat(book().findInSpecs("Harbour spritz")).map(Match::kind).contains(Kind.DRINK);
        assertThat(book().findInSpecs("Pils")).map(Match::kind).contains(Kind.INGREDIENT);
        assertThat(book().findInSpecs("Deposit")).isEmpty();
        assertThat(book().findItem("Pilsner 33cl")).map(Match::kind).contains(Kind.DRINK);
    }

    @Test
    void rulesThatLeadNowhereAreReported() {
        NameBook names = NameBook.of(bar().name("G Sour", "Gardn Sour", Where.SALES, "1")
                .name("Garden Sour", "Harbour Spritz", Where.SALES, "1")
                .name("Spritz", "Harbour Spritz", Where.SALES, "1")
                .name("spritz", "Harbour Spritz", Where.SALES, "2")
                .build());
        assertThat(names.find(Where.SALES, "G Sour", "")).isEmpty();
        assertThat(names.find(Where.SALES, "Spritz", "")).isEmpty();
        assertThat(names.find(Where.SALES, "Garden Sour", "")).map(Match::name).contains("Garden Sour");
        assertThat(names.problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.NAME_UNKNOWN, ProblemKind.NAME_TWICE, ProblemKind.NAME_TWICE);
        assertThat(names.problems().get(0).remedy()).contains("nearest are: Garden Sour;");
    }
}
