package heeltap.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextLayoutTest {
    @TempDir
    Path folder;

    private Opened open(String text) {
        return Opened.text(folder, text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {"comma ,", "semicolon ;", "bar |", "tab T"})
    void delimitersAreFound(String name, String sign) {
        String d = sign.equals("T") ? "\t" : sign;
        Opened opened = open("Item_Qty_Price\nGin Fizz_2_9.50\nRum; old_1_8.00\nA|B_1_8.00\n".replace("_", d));
        assertThat(opened.delimiter()).isEqualTo(name);
        assertThat(opened.lines()).startsWith("1|Item|Qty|Price", "2|Gin Fizz|2|9.50");
    }

    @Test
    void decimalCommasDoNotSplitASemicolonFile() {
        Opened opened = open("Item;Qty;Price\nGin;2;5,50\nRum;1;3,20\nMezcal;4;7,00\n");
        assertThat(opened.delimiter()).isEqualTo("semicolon");
        assertThat(opened.lines()).contains("2|Gin|2|5,50");
    }

    @Test
    void decimalCommasInEachFieldAndNoHeading() {
        assertThat(open("Gin;2,00;5,50\nRum;1,00;3,20\n").delimiter()).isEqualTo("semicolon");
        assertThat(open("Gin\t2,00\t5,50\nRum\t1,00\t3,20\n").delimiter()).isEqualTo("tab");
        assertThat(open("Gin|2,00|5,50\nRum|1,00|3,20\n").delimiter()).isEqualTo("bar");
    }

    @Test
    void raggedSemicolonRowsDoNotLoseAgainstDecimalCommas() {
        StringBuilder text = new StringBuilder("Sales, Bar One, October\nItem;Qty;Price\n");
        for (int i = 0; i < 20; i++) {
            text.append(i % 5 == 0 ? "Gin;2;5,50;\n" : "Gin;2;5,50\n");
        }
        assertThat(open(text.toString()).delimiter()).isEqualTo("semicolon");
    }

    @Test
    void barsInsideTheFieldsOfACommaFile() {
        Opened opened = open("Path,Item,Qty\nDrinks|Sour,Fizz,1\nDrinks|Sour,Daisy,2\nDrinks|Long,Mule,3\n");
        assertThat(opened.delimiter()).isEqualTo("comma");
    }

    @Test
    void barsInTheHeadingOfACommaFile() {
        assertThat(open("Group|Item,Qty,Net\nLong|Mule,3,2.00\nSour|Fizz,1,3.00\n")
                        .delimiter())
                .isEqualTo("comma");
        assertThat(open("Long, sweet|Mule|3\nSour, dry|Fizz|1\n").delimiter()).isEqualTo("bar");
    }

    @Test
    void textsWithCommasInASemicolonFile() {
        Opened opened = open("Item;Price\nGin, dry;5,50\nRum, old;3,20\nMezcal, smoky;4,00\n");
        assertThat(opened.lines()).contains("2|Gin, dry|5,50");
        assertThat(open("Gin, dry;5,50\nRum, old;3,20\n").delimiter()).isEqualTo("semicolon");
    }

    @Test
    void sectionsAndTotalsDoNotMatter() {
        Opened opened = open("""
                Report;;
                Cocktails
                Item;Qty;Net
                Gin;1;2,00
                Rum;2;3,00
                Total;;5,00

                Beer
                Item;Qty;Net
                Lager;4;5,00
                Ale;1;2,50
                Total;;7,50
                """);
        assertThat(opened.delimiter()).isEqualTo("semicolon");
        assertThat(opened.lines()).contains("2|Cocktails", "6|Total||5,00", "8|Beer");
    }

    @Test
    void titleLinesAboveTheHeading() {
        Opened opened = open("""
                Sales report; Bar, the; all
                From 1 to 31

                Filter: none; all
                Item,Qty,Net
                Gin,2,5.00
                Rum,3,6.00
                Sour,1,4.00
                """);
        assertThat(opened.delimiter()).isEqualTo("comma");
        assertThat(opened.lines()).contains("2|From 1 to 31", "3", "5|Item|Qty|Net", "8|Sour|1|4.00");
    }

    @Test
    void theSeparatorLineIsHonouredAndNoRow() {
        Opened opened = open("sep=;\nItem;Qty\nGin, dry;2\n");
        assertThat(opened.delimiter()).isEqualTo("semicolon");
        assertThat(opened.lines()).containsExactly("2|Item|Qty", "3|Gin, dry|2");
        assertThat(open("\"SEP=^\"\r\nItem^Qty\r\nGin^2").lines()).containsExactly("2|Item|Qty", "3|Gin|2");
    }

    @Test
    void spaceAlignedColumnsKeepTheirPlaces() {
        Opened opened = open("""
                Bar report October

                Item            Qty     Price
                Old Fashioned     2     12,50
                Gin               1      9,00
                Special                  7,00
                Rum Punch        11     10,00
                """);
        assertThat(opened.delimiter()).isEqualTo("spaces");
        assertThat(opened.lines())
                .containsExactly(
                        "1|Bar report October",
                        "2",
                        "3|Item|Qty|Price",
                        "4|Old Fashioned|2|12,50",
                        "5|Gin|1|9,00",
                        "6|Special||7,00",
                        "7|Rum Punch|11|10,00");
    }

    @Test
    void paddedCommaFilesAreNotSpaceAligned() {
        Opened opened = open("Item       ,Qty  ,Net\nGin        ,5    ,1\nRum        ,6    ,2\n");
        assertThat(opened.delimiter()).isEqualTo("comma");
    }

    @Test
    void oneColumnIsNotSplitAtAnOccasionalComma() {
        Opened opened = open("Item\nGin\nRum\nGin, dry\nVodka\nMezcal\nTequila\n");
        assertThat(opened.delimiter()).isEqualTo("none");
        assertThat(opened.lines()).contains("4|Gin, dry");
    }

    @Test
    void aHeadingOnlyIsASheet() {
        Opened opened = open("Item,Qty,Price");
        assertThat(opened.delimiter()).isEqualTo("comma");
        assertThat(opened.lines()).containsExactly("1|Item|Qty|Price");
    }

    @Test
    void aLongQuietBeginningDoesNotHideALaterBackslash() {
        String text = "Item,Qty\n" + "Plain gin and tonic,1\n".repeat(20_000) + "\"The \\\"Best\\\", Sour\",2\n";
        Opened opened = open(text);
        assertThat(opened.lines().get(20_001)).isEqualTo("20002|The \"Best\", Sour|2");
        assertThat(opened.oddRows()).isEmpty();
    }
}
