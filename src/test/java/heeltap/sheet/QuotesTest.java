package heeltap.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class QuotesTest {
    private static final String HEAD = "Item,Qty,Net\n";
    private static final String TAIL = "Sour,1,4.00\n\"Mule, long\",2,8.00\n\"Fizz\",3,9.00\n";

    @TempDir
    Path folder;

    private Opened open(String text) {
        return Opened.text(folder, text);
    }

    @Test
    void doubledQuotesAndDelimitersInsideQuotes() {
        Opened opened = open(HEAD + "\"Gin \"\"Slim\"\", dry\",2,\"5,000.00\"\n" + TAIL);
        assertThat(opened.lines()).contains("2|Gin \"Slim\", dry|2|5,000.00");
        assertThat(opened.oddRows()).isEmpty();
    }

    @Test
    void backslashEscapedQuotes() {
        Opened opened = open(HEAD + "\"Gin \\\"Slim\\\", dry\",2,5.00\n\"C:\\\\bar\",1,1.00\n" + TAIL);
        assertThat(opened.lines()).contains("2|Gin \"Slim\", dry|2|5.00", "3|C:\\bar|1|1.00");
        assertThat(opened.oddRows()).isEmpty();
    }

    @Test
    void aBackslashAtTheEndOfAFieldIsNoEscape() {
        Opened opened = open(HEAD + "\"dir\\\",2,\"5.00\"\n\"x\\\",2,\"5.00\"\n");
        assertThat(opened.lines()).contains("2|dir\\|2|5.00", "3|x\\|2|5.00");
    }

    @Test
    void singleQuotesWhereClear() {
        Opened opened = open("'Item','Qty'\n'Gin, dry','2'\n'Joe''s','3'\n");
        assertThat(opened.lines()).containsExactly("1|Item|Qty", "2|Gin, dry|2", "3|Joe's|3");
    }

    @Test
    void anApostropheIsNoQuote() {
        Opened opened = open(HEAD + "'Nduja Sour,2,5.00\nJoe's 'Best',1,3.00\n'Tis,1,1.00\n");
        assertThat(opened.lines()).contains("2|'Nduja Sour|2|5.00", "3|Joe's 'Best'|1|3.00", "4|'Tis|1|1.00");
    }

    @Test
    void lineBreaksInsideQuotesKeepThePhysicalLine() {
        Opened opened = open(HEAD + "\"Gin\r\nand\nTonic\",2,5.00\n" + TAIL);
        assertThat(opened.lines())
                .containsExactly(
                        "1|Item|Qty|Net",
                        "2|Gin\r\nand\nTonic|2|5.00",
                        "5|Sour|1|4.00",
                        "6|Mule, long|2|8.00",
                        "7|Fizz|3|9.00");
    }

    @Test
    void aLineBreakInTheLastColumn() {
        Opened opened = open(HEAD + "Gin,2,\"5.00\nand more, or less\"\n" + TAIL);
        assertThat(opened.lines()).contains("2|Gin|2|5.00\nand more, or less", "4|Sour|1|4.00");
        assertThat(opened.oddRows()).isEmpty();
    }

    @Test
    void spacesAroundQuotes() {
        assertThat(open("Item, Qty\n\"Gin, dry\" , \"2\"\n\"Rum, old\" , \"3\"\n")
                        .lines())
                .containsExactly("1|Item| Qty", "2|Gin, dry|2", "3|Rum, old|3");
    }

    @Test
    void inchMarksAreOrdinary() {
        Opened opened = open(HEAD + "Pan 12\",2,5.00\n12\" plate,1,3.00\n" + TAIL);
        assertThat(opened.lines()).contains("2|Pan 12\"|2|5.00", "3|12\" plate|1|3.00");
        assertThat(opened.oddRows()).isEmpty();
    }

    static List<Arguments> damage() {
        return List.of(
                Arguments.of("opening without closing", "\"Gin,2,5.00", "2|\"Gin|2|5.00"),
                Arguments.of("closing without opening", "Gin\",2,5.00", "2|Gin\"|2|5.00"),
                Arguments.of("in the middle of plain text", "G\"in,2,5.00", "2|G\"in|2|5.00"),
                Arguments.of("before a number", "Gin,\"2,5.00", "2|Gin|\"2|5.00"),
                Arguments.of("before the last field", "Gin,2,\"5.00", "2|Gin|2|\"5.00"),
                Arguments.of("doubled at the end of a quoted field", "\"Gin, dry\"\",2,5.00", "2|Gin, dry\"|2|5.00"),
                Arguments.of("doubled at the beginning", "\"\"Gin, dry\",2,5.00", "2|\"Gin, dry|2|5.00"),
                Arguments.of("before a delimiter inside", "\"Gin\", dry\",2,5.00", "2|Gin| dry\"|2|5.00"),
                Arguments.of("behind a delimiter inside", "\"Gin,\"dry\",2,5.00", "2|Gin,\"dry|2|5.00"),
                Arguments.of("not doubled inside", "\"Gin \"Slim\" dry, x\",2,5.00", "2|Gin \"Slim\" dry, x|2|5.00"),
                Arguments.of("at the end of the line", "Gin,2,5.00\"", "2|Gin|2|5.00\""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("damage")
    void aStrayQuoteStaysInItsLine(String name, String line, String expected) {
        Opened opened = open(HEAD + line + "\n" + TAIL);
        assertThat(opened.lines())
                .containsExactly("1|Item|Qty|Net", expected, "3|Sour|1|4.00", "4|Mule, long|2|8.00", "5|Fizz|3|9.00");
        if (!name.equals("at the end of the line")) {
            assertThat(opened.oddRows()).containsExactly(2);
        }
    }

    @Test
    void twoStrayQuotesDoNotSwallowTheRowsBetween() {
        String rows = "Rum,1,1.00\n".repeat(10);
        Opened opened = open(HEAD + "\"Gin,2,5.00\n" + rows + "Pan 12\",1,3.00\n" + rows);
        assertThat(opened.rows()).hasSize(23);
        assertThat(opened.oddRows()).containsExactly(2);
    }

    @Test
    void aStrayQuoteInALongFileWithoutOtherQuotesCostsNoRow() {
        Opened opened = open(HEAD + "Rum,1,1.00\n".repeat(5000) + "\"Gin,2,5.00\n" + "Rum,1,1.00\n".repeat(5000));
        assertThat(opened.rows()).hasSize(10_002);
        assertThat(opened.oddRows()).containsExactly(5002);
    }

    @Test
    void manyStrayQuotesAreNamedUpToALimitAndThenCounted() {
        Opened opened = open(HEAD + "\"Gin,2,5.00\n".repeat(300) + TAIL);
        assertThat(opened.rows()).hasSize(304);
        assertThat(opened.sheet().facts().problems()).hasSize(201);
        assertThat(opened.sheet().facts().problems().get(0).reason()).contains("100 more", "row 301");
    }
}
