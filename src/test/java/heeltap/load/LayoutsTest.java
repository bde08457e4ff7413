package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static heeltap.load.MonthFixture.control;
import static heeltap.load.MonthFixture.problems;
import static heeltap.load.MonthFixture.sales;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.record.Month;
import heeltap.source.MemorySheet;
import heeltap.source.WithProblems;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the table stands in a sheet and what its columns are called. */
class LayoutsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Date|Item|Qty|Gross",
                "Date de vente|Libellé|Qté vendue|Montant TTC",
                "Datum|Artikelbezeichnung|Menge|Umsatz brutto (EUR)",
                "Fecha|Artículo|Uds.|Importe",
                "Data|Descrizione|Q.tà|Importo lordo",
                "Datum|Omschrijving|Aantal|Omzet incl. BTW",
                "Data|Descrição|Qtd.|Valor total €"
            })
    void headingsOfSevenLanguages(String heading) {
        Month month = bar().file("sales.csv", heading, "2026-10-03|Negroni|2|24.00")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni 2026-10-03 SALE 1r 2u 20");
    }

    @Test
    void headingsOfTwoRowsWithMergedCells() {
        Month month = bar().file(
                        "sales.csv",
                        "Item||Sales||",
                        "|Quantity|Gross|Net|Note",
                        "Negroni|2|24.00|20.00|",
                        "Cola|1|6.00|5.00|")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Cola null SALE 1r 1u 5", "Negroni null SALE 1r 2u 20");
        assertThat(month.files().get(0).headingRow()).isEqualTo(2);
    }

    @Test
    void headingsWhoseWordsStandInTwoRows() {
        Month month = bar().file("sales.csv", "Menu|Quantity|Gross", "item|sold|sales", "Negroni|2|24.00")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 2u 20");
    }

    @Test
    void anUnnamedFirstColumnHoldsTheNames() {
        Month month =
                bar().file("sales.csv", "|Qty|Gross", "Negroni|2|24.00").load().value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 2u 20");
    }

    @Test
    void anotherTableBelowIsNamedAsNotRead() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Item|Qty|Gross",
                        "Negroni|2|24.00",
                        "Total|2|24.00",
                        "",
                        "Date|Net sales",
                        "2026-10-03|20.00",
                        "Negroni|7")
                .load();

        assertThat(sales(loaded.value())).containsExactly("Negroni null SALE 1r 2u 20");
        assertThat(control(loaded.value().files().get(0)))
                .isEqualTo("rows 5 = 1 + 4 + 0, quantity 2, money 24 = 24 + 0 + 0");
        assertThat(problems(loaded)).anyMatch(p -> p.startsWith("SHEET_NOT_READ 2026-10/sales.csv, row 5"));
    }

    @Test
    void anotherTableAboveIsNamedAsNotRead() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv", "Day|Sales", "1|20.00", "2|30.00", "", "Item|Qty|Gross", "Negroni|2|24.00")
                .load();

        assertThat(sales(loaded.value())).containsExactly("Negroni null SALE 1r 2u 20");
        assertThat(problems(loaded)).anyMatch(p -> p.contains("Another table stands above the heading in row 5"));
    }

    @Test
    void aWideSheetIsRecognisedAndReadWhenMapped() {
        String[] lines = {"Date|Negroni|Spritz|Cola|Total", "2026-10-03|2||1|3", "2026-10-04|1|4||5", "Total|3|4|1|8"};
        WithProblems<Month> refused = bar().file("sales.csv", lines).load();
        Month read = bar().column("sales", "each column is an item", "Negroni", "", "")
                .file("sales.csv", lines)
                .load()
                .value();

        assertThat(refused.value().files().get(0).kind()).isEqualTo("refused");
        assertThat(problems(refused).get(0)).contains("one column an item (Negroni, Spritz, Cola …)");
        assertThat(sales(read))
                .containsExactly(
                        "Cola 2026-10-03 SALE 1r 1u null",
                        "Negroni 2026-10-03 SALE 1r 2u null",
                        "Negroni 2026-10-04 SALE 1r 1u null",
                        "Spritz 2026-10-04 SALE 1r 4u null");
    }

    @Test
    void sheetsWithoutTheTableAndHiddenOnesAreNamed() {
        WithProblems<Month> loaded = bar().sheet("sales.xlsx", "Notes", "Dear all|")
                .add(MemorySheet.of(
                                "2026-10/sales.xlsx", "Old", List.of(List.of("Item", "Qty"), List.of("Negroni", "9")))
                        .hidden())
                .sheet("sales.xlsx", "Data", "Item|Qty|Gross", "Negroni|2|24.00")
                .load();

        assertThat(loaded.value().files())
                .extracting(f -> f.place().sheet() + " " + f.kind())
                .containsExactly("Notes not read", "Old not read", "Data sales");
        assertThat(sales(loaded.value())).containsExactly("Negroni null SALE 1r 2u 20");
        assertThat(problems(loaded)).hasSize(2);
    }

    @Test
    void emptyFilesAndFilesOfAHeadingOnly() {
        Month month = bar().file("sales-1.csv", "")
                .file("sales-2.csv", "Item|Qty|Gross")
                .load()
                .value();

        assertThat(month.files()).extracting(f -> f.kind() + " " + f.rows()).containsExactly("refused 0", "sales 0");
        assertThat(month.setAside().get(0).reason()).isEqualTo("The file was refused: The file is empty.");
    }
}
