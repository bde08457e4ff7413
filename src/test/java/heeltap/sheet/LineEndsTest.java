package heeltap.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineEndsTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void eachLineEnd(String end) {
        assertThat(Opened.text(folder, "Item,Qty" + end + end + "Gin,2" + end).lines())
                .containsExactly("1|Item|Qty", "2", "3|Gin|2");
    }

    @Test
    void mixedLineEnds() {
        assertThat(Opened.text(folder, "Item,Qty\r\nGin,2\rRum,3\nSour,4\r\n").lines())
                .containsExactly("1|Item|Qty", "2|Gin|2", "3|Rum|3", "4|Sour|4");
    }

    @Test
    void noFinalLineEnd() {
        assertThat(Opened.text(folder, "Item,Qty\nGin,2").lines()).containsExactly("1|Item|Qty", "2|Gin|2");
    }

    @Test
    void severalFinalLineEndsAreBlankRows() {
        assertThat(Opened.text(folder, "Item,Qty\nGin,2\n\n\n").lines())
                .containsExactly("1|Item|Qty", "2|Gin|2", "3", "4");
    }

    @Test
    void lineEndAcrossTheReadersBuffer() {
        String first = "x".repeat(LineReader.BUFFER - 3);
        assertThat(Opened.text(folder, "a,b\r\n" + first + ",2\r\nGin,3\r\n").lines())
                .containsExactly("1|a|b", "2|" + first + "|2", "3|Gin|3");
        String edge = "y".repeat(LineReader.BUFFER - 8);
        assertThat(Opened.text(folder, "a,b\r\n" + edge + ",2\r\nG\"in,3\r\n").lines())
                .containsExactly("1|a|b", "2|" + edge + "|2", "3|G\"in|3");
    }

    @Test
    void rowsWithADelimiterTooFewOrTooManyAreHandedOn() {
        assertThat(Opened.text(folder, "Item,Qty,Net\nGin,2\nRum,3,1.00,\nSour,4,2.00,x\nFizz,1,1.00\n")
                        .lines())
                .containsExactly("1|Item|Qty|Net", "2|Gin|2", "3|Rum|3|1.00", "4|Sour|4|2.00|x", "5|Fizz|1|1.00");
    }

    @Test
    void cellsOfWhiteSpaceAreAbsentAndRowsOfThemBlank() {
        Opened opened = Opened.text(folder, "Item,Qty,Net\n , \u00a0,\t\nGin,\u2007,1\n,,\n");
        assertThat(opened.lines()).containsExactly("1|Item|Qty|Net", "2", "3|Gin||1", "4");
        assertThat(opened.rows().get(1).isBlank()).isTrue();
    }

    @Test
    void readingStopsWhenToldAndBeginsAnew() {
        Opened opened = Opened.text(folder, "Item,Qty\nGin,2\nRum,3\n");
        int[] count = new int[1];
        opened.sheet().read(row -> ++count[0] < 2);
        assertThat(count[0]).isEqualTo(2);
        assertThat(opened.rows()).hasSize(3);
        assertThat(opened.rows()).isEqualTo(opened.rows());
    }
}
