package heeltap.sheet;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextEncodingTest {
    private static final String TABLE = "Artikel;Menge;Preis\nKöln Café – Süß;3;4,50\nCrème brûlée;1;6,00\n";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"})
    void unmarkedFilesAreDecodedAndTheirCharacterSetNamed(String charset) {
        Opened opened = Opened.text(folder, TABLE, Charset.forName(charset));
        assertThat(opened.encoding()).isEqualTo(charset);
        assertThat(opened.lines())
                .containsExactly("1|Artikel|Menge|Preis", "2|Köln Café – Süß|3|4,50", "3|Crème brûlée|1|6,00");
        assertThat(opened.delimiter()).isEqualTo("semicolon");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void byteOrderMarksDecideAndAreNoText(String charset) {
        Opened opened = Opened.text(folder, "\ufeff" + TABLE, Charset.forName(charset));
        assertThat(opened.encoding()).isEqualTo(charset);
        assertThat(opened.lines().get(0)).isEqualTo("1|Artikel|Menge|Preis");
        assertThat(opened.oddRows()).isEmpty();
    }

    /** Windows-1252 table of Microsoft as in WHATWG's encoding standard. */
    @ParameterizedTest
    @CsvSource({
        "80,€", "82,‚", "83,ƒ", "84,„", "85,…", "86,†", "87,‡", "88,ˆ", "89,‰", "8A,Š", "8B,‹", "8C,Œ", "8E,Ž", "91,‘",
        "92,’", "93,“", "94,”", "95,•", "96,–", "97,—", "98,˜", "99,™", "9A,š", "9B,›", "9C,œ", "9E,ž", "9F,Ÿ"
    })
    void windows1252IsReadByItsTable(String hex, String expected) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write("Item,Qty\nCaf\u00e9 d\u00e9j\u00e0 Cr\u00e8me,2\nX ".getBytes(ISO_8859_1));
        bytes.write(Integer.parseInt(hex, 16));
        bytes.write(" Y,1\n".getBytes(ISO_8859_1));
        Opened opened = Opened.bytes(folder, "a.csv", bytes.toByteArray());
        assertThat(opened.encoding()).isEqualTo("windows-1252");
        assertThat(opened.lines().get(2)).isEqualTo("3|X " + expected + " Y|1");
    }

    @Test
    void aByteThatWindows1252DoesNotKnowIsShownAndItsLineNamed() {
        Opened opened = Opened.text(folder, "Item,Qty\nCaf\u00e9 Cr\u00e8me,2\nX\u0081Y,1\n", ISO_8859_1);
        assertThat(opened.lines().get(2)).isEqualTo("3|X\ufffdY|1");
        assertThat(opened.oddRows()).containsExactly(3);
    }

    @ParameterizedTest
    @CsvSource({
        "x-MacRoman,MacRoman,Café Crème – Mañana",
        "windows-1250,windows-1250,Żubrówka łódzka święta",
        "ISO-8859-15,ISO-8859-15,Café 12 €",
        "IBM850,IBM850,Café Crème – Süße",
    })
    void otherCharacterSetsAreTakenOnClearEvidence(String charset, String name, String item) {
        String written = item.replace("–", "-");
        Opened opened = Opened.text(folder, "Item,Qty\n" + written + ",2\n", Charset.forName(charset));
        assertThat(opened.encoding()).isEqualTo(name);
        assertThat(opened.lines().get(1)).isEqualTo("2|" + written + "|2");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Jack’s, Tom’s, Ann’s and Joe’s",
                "½ oz and ¼ oz… wait…",
                "word—word, word–word, word—word",
                "bœuf, cœur, sœur, nœud",
                "Österreich Ägypten Übel",
                "“quoted” ‘text’ 12 € 5 £"
            })
    void whatWindows1252WritesOftenIsNotTakenForAnother(String item) {
        Opened opened = Opened.text(folder, "Item\tQty\n" + item + "\t2\n", Charset.forName("windows-1252"));
        assertThat(opened.encoding()).isEqualTo("windows-1252");
        assertThat(opened.lines().get(1)).isEqualTo("2|" + item + "|2");
    }

    @Test
    void evidenceAtTheEndOfALongFileCounts() {
        String text = "Item,Qty\n" + "Plain,1\n".repeat(60_000) + "Caf\u00e9,2\n";
        Opened latin = Opened.text(folder, text, ISO_8859_1);
        assertThat(latin.encoding()).isEqualTo("windows-1252");
        assertThat(latin.lines().get(60_001)).isEqualTo("60002|Café|2");
        assertThat(Opened.text(folder, text, UTF_8).encoding()).isEqualTo("UTF-8");
    }

    @Test
    void aFewBadBytesInUtf8AreDamageNotAnotherCharacterSet() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write("Item,Qty\nCafé,2\nCrème brûlée,1\nPâté,1\nX".getBytes(UTF_8));
        bytes.write(0xe9);
        bytes.write("Y,1\n".getBytes(UTF_8));
        Opened opened = Opened.bytes(folder, "a.csv", bytes.toByteArray());
        assertThat(opened.encoding()).isEqualTo("UTF-8");
        assertThat(opened.lines()).contains("2|Café|2", "5|X\ufffdY|1");
        assertThat(opened.oddRows()).containsExactly(5);
    }

    @Test
    void nulBytesAreLeftOutAndTheirLineNamed() {
        Opened opened = Opened.text(folder, "Item,Qty\nGi\0n,\0 2\nRum,3\n");
        assertThat(opened.lines()).containsExactly("1|Item|Qty", "2|Gin| 2", "3|Rum|3");
        assertThat(opened.oddRows()).containsExactly(2);
        assertThat(opened.encoding()).isEqualTo("UTF-8");
    }

    @Test
    void aBlockOfNulBytesAtTheEndIsNoRow() {
        Opened opened = Opened.text(folder, "Item,Qty\nGin,2\n" + "\0".repeat(4096));
        assertThat(opened.lines()).containsExactly("1|Item|Qty", "2|Gin|2");
    }

    @Test
    void theEndOfFileMarkOfOldSystemsIsNoRow() {
        assertThat(Opened.text(folder, "Item,Qty\r\nGin,2\r\n\u001a").lines()).containsExactly("1|Item|Qty", "2|Gin|2");
    }

    @Test
    void utf16OfOddLengthIsStillRead() {
        byte[] whole = TABLE.getBytes(UTF_16LE);
        byte[] cut = java.util.Arrays.copyOf(whole, whole.length - 1);
        assertThat(Opened.bytes(folder, "a.csv", cut).encoding()).isEqualTo("UTF-16LE");
        assertThat(Opened.text(folder, TABLE, UTF_16BE).lines()).hasSize(3);
    }
}
