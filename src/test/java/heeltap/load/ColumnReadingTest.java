package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static heeltap.load.MonthFixture.problems;
import static heeltap.load.MonthFixture.sales;
import static heeltap.load.MonthFixture.setAside;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.record.Month;
import heeltap.source.Cell;
import heeltap.source.MemorySheet;
import heeltap.source.Row;
import heeltap.source.WithProblems;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Decimals and dates are decided by whole columns. */
class ColumnReadingTest {
    @Test
    void oneCellThatProvesTheStyleDecidesTheColumn() {
        Month month = bar().file("sales.csv", "Item|Qty|Net", "Negroni|1|1.234", "Negroni|1|12,50")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 2r 2u 1246.5");
        assertThat(month.files().get(0).decimals()).isEqualTo("comma");
    }

    @Test
    void anotherColumnOfTheFileDecidesAndIsSaid() {
        WithProblems<Month> loaded =
                bar().file("sales.csv", "Item|Qty|Net", "Negroni|1.000|12,50").load();

        assertThat(sales(loaded.value())).containsExactly("Negroni null SALE 1r 1000u 12.5");
        assertThat(problems(loaded))
                .containsExactly(
                        "VALUE_AMBIGUOUS 2026-10/sales.csv, column B (Qty): \"1.000\": Numbers of this column can be read with a decimal point or a decimal comma; read with a decimal comma, as the file's other columns are written: 1 such cells add up to 1000, with a decimal point to 1.000. If this is not right, set Decimals for this file in the sheet Columns of the book.");
    }

    @Test
    void theLanguageDecidesWhatTheFileLeavesOpenAndTheSettingBeforeAll() {
        String[] lines = {"Item|Qty|Net", "Negroni|1|1.234"};

        assertThat(sales(bar().language("en").file("sales.csv", lines).load().value()))
                .containsExactly("Negroni null SALE 1r 1u 1.234");
        assertThat(sales(bar().language("de").file("sales.csv", lines).load().value()))
                .containsExactly("Negroni null SALE 1r 1u 1234");
        WithProblems<Month> set = bar().language("de")
                .column("sales", "", "", "", "point")
                .file("sales.csv", lines)
                .load();
        assertThat(sales(set.value())).containsExactly("Negroni null SALE 1r 1u 1.234");
        assertThat(set.problems()).isEmpty();
    }

    @Test
    void aColumnThatMixesBothStylesIsNotGuessed() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Item|Qty|Net",
                        "Negroni|1|12,50",
                        "Negroni|1|12.50",
                        "Negroni|1|1.234",
                        "Negroni|1|8")
                .load();

        assertThat(sales(loaded.value())).containsExactly("Negroni null SALE 1r 1u 8");
        assertThat(setAside(loaded.value())).hasSize(3);
        assertThat(problems(loaded).get(0)).contains("decimal points and with decimal commas");
    }

    @Test
    void storedNumbersAndDatesOfAWorkbookAreTaken() {
        Row heading = new Row(
                1, List.of(Cell.text(0, "Date"), Cell.text(1, "Item"), Cell.text(2, "Qty"), Cell.text(3, "Net")));
        Row row = new Row(
                2,
                List.of(
                        new Cell(0, "04.10.26", null, LocalDateTime.of(2026, 10, 4, 2, 0)),
                        Cell.text(1, "Negroni"),
                        new Cell(2, "1,000", BigDecimal.ONE, null),
                        new Cell(3, "12,5 €", new BigDecimal("12.5"), null)));
        Month month = bar().add(MemorySheet.ofRows("2026-10/sales.xlsx", "Data", List.of(heading, row)))
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni 2026-10-03 SALE 1r 1u 12.5");
        assertThat(month.files().get(0).decimals()).isEqualTo("stored");
        assertThat(month.files().get(0).dates()).isEqualTo("stored");
    }

    @Test
    void aDayAboveTwelveDecidesTheOrder() {
        Month month = bar().file("sales.csv", "Date|Item|Qty|Net", "10/03/2026|Negroni|1|12", "10/13/2026|Negroni|1|12")
                .load()
                .value();

        assertThat(sales(month))
                .containsExactly("Negroni 2026-10-03 SALE 1r 1u 12", "Negroni 2026-10-13 SALE 1r 1u 12");
        assertThat(month.files().get(0).dates()).isEqualTo("month-day");
    }

    @Test
    void theMonthDecidesWhatTheColumnLeavesOpenAndIsSaid() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv", "Date|Item|Qty|Net", "03/10/2026|Negroni|1|12", "04/10/2026|Negroni|1|12")
                .load();

        assertThat(sales(loaded.value())).hasSize(2);
        assertThat(problems(loaded))
                .containsExactly(
                        "VALUE_AMBIGUOUS 2026-10/sales.csv, column A (Date): \"03/10/2026\": The dates of this column can be read in more than one order; read as day-month, which puts 2 of 2 in 2026-10; month-day would put 0 there. If this is not right, set Dates for this file in the sheet Columns of the book.");
    }

    @Test
    void datesOfTwoFormsAreToldApart() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Date|Item|Qty|Net",
                        "2026-10-03|Negroni|1|12",
                        "13.10.2026|Negroni|1|12",
                        "3 octobre 2026|Negroni|1|12",
                        "46299|Negroni|1|12")
                .load();

        assertThat(sales(loaded.value()))
                .containsExactly(
                        "Negroni 2026-10-03 SALE 2r 2u 24",
                        "Negroni 2026-10-04 SALE 1r 1u 12",
                        "Negroni 2026-10-13 SALE 1r 1u 12");
        assertThat(problems(loaded).get(0)).contains("written in 4 forms");
    }

    @Test
    void datesInTwoOrdersAreReadOnlyWhereThereIsOneReading() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Date|Item|Qty|Net",
                        "13/10/2026|Negroni|1|12",
                        "10/14/2026|Negroni|1|12",
                        "10/10/2026|Negroni|1|12",
                        "03/10/2026|Negroni|1|12")
                .load();

        assertThat(sales(loaded.value())).hasSize(3);
        assertThat(setAside(loaded.value())).containsExactly("5: The date cannot be read (column A, Date). 1 12");
    }
}
