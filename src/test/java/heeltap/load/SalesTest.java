package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static heeltap.load.MonthFixture.control;
import static heeltap.load.MonthFixture.problems;
import static heeltap.load.MonthFixture.sales;
import static heeltap.load.MonthFixture.setAside;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.record.Month;
import heeltap.record.Setting;
import heeltap.source.WithProblems;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is made of the rows of sales exports. */
class SalesTest {
    @Test
    void addsUpByItemDayAndKind() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Date|Item|Qty|Gross",
                        "2026-10-03|Negroni|1|12.00",
                        "2026-10-03|Negroni|2|24.00",
                        "2026-10-04|Negroni|1|12.00",
                        "2026-10-04|Daiquiri|1|0.00")
                .load();

        assertThat(sales(loaded.value()))
                .containsExactly(
                        "Daiquiri 2026-10-04 COMPLIMENTARY 1r 1u 0",
                        "Negroni 2026-10-03 SALE 2r 3u 30",
                        "Negroni 2026-10-04 SALE 1r 1u 10");
        assertThat(control(loaded.value().files().get(0)))
                .isEqualTo("rows 4 = 4 + 0 + 0, quantity 5, money 48 = 48 + 0 + 0");
        assertThat(loaded.problems()).isEmpty();
    }

    @Test
    void findsTheHeadingBelowTitlesAndTellsTotalsSectionsAndRepeatedHeadings() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Item sales",
                        "From 1 October to 31 October",
                        "",
                        "Item|Qty|Gross",
                        "Cocktails",
                        "Negroni|3|36.00",
                        "Daiquiri|2|20.00",
                        "Total Cocktails|5|56.00",
                        "Item|Qty|Gross",
                        "Beer",
                        "House Lager|4|20.00",
                        "Subtotal|4|20.00",
                        "",
                        "Total|9|76.00")
                .load();

        assertThat(sales(loaded.value()))
                .containsExactly(
                        "Daiquiri null SALE 1r 2u 16.6666666667",
                        "House Lager null SALE 1r 4u 16.6666666667",
                        "Negroni null SALE 1r 3u 30");
        assertThat(control(loaded.value().files().get(0)))
                .isEqualTo("rows 9 = 3 + 6 + 0, quantity 9, money 76 = 76 + 0 + 0");
        assertThat(loaded.value().files().get(0).headingRow()).isEqualTo(4);
        assertThat(loaded.value().files().get(0).printedTotal()).hasToString("76");
        assertThat(loaded.problems()).isEmpty();
    }

    @Test
    void tellsATotalThatDiffers() {
        WithProblems<Month> loaded = bar().file("sales.csv", "Item|Qty|Gross", "Negroni|3|36.00", "Total|4|48.00")
                .load();

        assertThat(problems(loaded))
                .containsExactly(
                        "TOTAL_DIFFERS 2026-10/sales.csv, row 3, column B (Qty): \"4\": The total printed here is neither the sum of the rows above it nor that of the whole sheet, which is 3. Check whether rows are missing from the file, or export it again.");
        assertThat(loaded.value().files().get(0).printedTotal()).hasToString("48");
    }

    @Test
    void aDrinkThatIsCalledTotalIsNoTotal() {
        Month month = bar().file("sales.csv", "Item|Qty|Gross", "Total Eclipse|3|36.00", "Negroni|3|36.00")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 3u 30", "Total Eclipse null SALE 1r 3u 30");
    }

    @Test
    void setsAsideWhatCannotBeReadOrBelongsElsewhere() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Date|Item|Qty|Gross",
                        "2026-10-03|Negroni|x2|24.00",
                        "2026-10-03|Negroni|2|twelve",
                        "soon|Negroni|2|24.00",
                        "2026-11-03|Negroni|2|24.00",
                        "2026-10-03|Nergoni|2|24.00",
                        "2026-10-03||2|24.00",
                        "2026-10-03|Negroni||24.00",
                        "2026-10-03|Cover charge|2|5.00",
                        "2026-10-03|Negroni|1|12.00")
                .load();

        assertThat(setAside(loaded.value()))
                .containsExactly(
                        "2: The quantity cannot be read (column C, Qty). null 24",
                        "3: The gross cannot be read (column D, Gross). 2 null",
                        "4: The date cannot be read (column A, Date). 2 24",
                        "5: The row belongs to another month than 2026-10 (column A, Date). 2 24",
                        "6: The name is not known (column B, Item). 2 24",
                        "7: The row names no item. 2 24",
                        "8: The quantity is missing (column C, Qty). null 24");
        assertThat(control(loaded.value().files().get(0)))
                .isEqualTo("rows 9 = 1 + 1 + 7, quantity 13, money 161 = 12 + 5 + 144");
        assertThat(loaded.value().setAside().get(4).nearest()).containsExactly("Negroni");
        assertThat(loaded.value().setAside().get(4).text()).isEqualTo("Nergoni");
    }

    @Test
    void takesTheDayFromTheHourItStarts() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Date|Item|Qty|Gross",
                        "2026-10-03 01:30|Negroni|1|12.00",
                        "2026-11-01 04:59|Negroni|1|12.00",
                        "2026-11-01 05:00|Negroni|1|12.00",
                        "2026-10-01 01:30|Negroni|1|12.00")
                .load();

        assertThat(sales(loaded.value()))
                .containsExactly("Negroni 2026-10-02 SALE 1r 1u 10", "Negroni 2026-10-31 SALE 1r 1u 10");
        assertThat(setAside(loaded.value())).hasSize(2);
    }

    @Test
    void aDateWithoutATimeIsNotMoved() {
        Month midnight = bar().file("sales.csv", "Date|Item|Qty|Gross", "2026-10-03 00:00:00|Negroni|1|12.00")
                .load()
                .value();

        assertThat(sales(midnight)).containsExactly("Negroni 2026-10-03 SALE 1r 1u 10");
    }

    @Test
    void takesDateAndTimeFromTwoColumns() {
        Month month = bar().file(
                        "sales.csv",
                        "Date|Time|Item|Qty|Gross",
                        "03.10.2026|1:30 AM|Negroni|1|12.00",
                        "13.10.2026|11:30 PM|Negroni|1|12.00")
                .load()
                .value();

        assertThat(sales(month))
                .containsExactly("Negroni 2026-10-02 SALE 1r 1u 10", "Negroni 2026-10-13 SALE 1r 1u 10");
        assertThat(month.files().get(0).dates()).isEqualTo("day-month");
    }

    @Test
    void refundsAreTakenBackWhateverTheirSign() {
        Month month = bar().file(
                        "sales.csv",
                        "Item|Qty|Gross|Type",
                        "Negroni|3|36.00|Sale",
                        "Negroni|-1|-12.00|Refund",
                        "Negroni|1|12.00|Refund",
                        "Negroni|-1|-12.00|")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 3u 30", "Negroni null REFUND 3r 3u 30");
        assertThat(control(month.files().get(0))).startsWith("rows 4 = 4 + 0 + 0, quantity 2, money 24 = 24");
    }

    @Test
    void aVoidAndTheRowItCancelsAreOut() {
        WithProblems<Month> loaded = bar().file(
                        "sales.csv",
                        "Ticket|Item|Qty|Gross|Type",
                        "1|Negroni|1|12.00|Sale",
                        "1|Negroni|1|12.00|Sale",
                        "1|Negroni|-1|-12.00|Void",
                        "2|Negroni|1|12.00|Sale")
                .load();

        assertThat(sales(loaded.value())).containsExactly("Negroni null SALE 2r 2u 20");
        assertThat(control(loaded.value().files().get(0)))
                .isEqualTo("rows 4 = 2 + 2 + 0, quantity 2, money 24 = 24 + 0 + 0");
        assertThat(loaded.problems()).isEmpty();
    }

    @Test
    void aVoidPrintedPositiveCancelsOrMarksByTheEvidenceOfAll() {
        WithProblems<Month> cancelling = bar().file(
                        "sales.csv",
                        "Ticket|Item|Qty|Gross|Type",
                        "1|Negroni|1|12.00|Sale",
                        "1|Negroni|1|12.00|Void",
                        "2|Daiquiri|1|10.00|Sale")
                .load();
        WithProblems<Month> marking = bar().file(
                        "sales.csv",
                        "Ticket|Item|Qty|Gross|Type",
                        "1|Negroni|1|12.00|Sale",
                        "1|Negroni|1|12.00|Void",
                        "2|Daiquiri|1|10.00|Void")
                .load();

        assertThat(sales(cancelling.value())).containsExactly("Daiquiri null SALE 1r 1u 8.33333333333");
        assertThat(sales(marking.value())).containsExactly("Negroni null SALE 1r 1u 10");
        assertThat(problems(cancelling).get(0)).contains("each was taken to cancel another row");
        assertThat(problems(marking).get(0)).contains("each was taken to be the cancelled row itself");
    }

    @Test
    void readsMarksOfVoid() {
        Month month = bar().file("sales.csv", "Item|Qty|Gross|Voided", "Negroni|1|12.00|No", "Negroni|1|12.00|Yes")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 1u 10");
        assertThat(control(month.files().get(0))).contains("money 24 = 12 + 12 + 0");
    }

    @Test
    void moneyIsGrossLessDiscountElseNetElseQuantityTimesPrice() {
        assertThat(net("Item|Qty|Price|Gross|Discount|Net", "Negroni|2|12.00|24.00|-4.00|16.00"))
                .isEqualTo("SALE 1r 2u 16 money 20");
        assertThat(net("Item|Qty|Price|Gross|Discount", "Negroni|2|12.00|24.00|4.00"))
                .isEqualTo("SALE 1r 2u 16.6666666667 money 20");
        assertThat(net("Item|Qty|Net", "Negroni|2|20.00")).isEqualTo("SALE 1r 2u 20 money 20");
        assertThat(net("Item|Qty|Price", "Negroni|2|12.00")).isEqualTo("SALE 1r 2u 20 money 24");
        assertThat(net("Item|Qty|Gross|Tax", "Negroni|2|24.00|2.18")).isEqualTo("SALE 1r 2u 21.82 money 24");
        assertThat(net("Item|Qty|Gross|Tax", "Negroni|2|24.00|")).isEqualTo("SALE 1r 2u 20 money 24");
        assertThat(net("Item|Qty|Gross|Tax rate", "Negroni|2|22.00|10%")).isEqualTo("SALE 1r 2u 20 money 22");
        assertThat(net("Item|Qty|Gross|Discount", "Negroni|2|24.00|50%")).isEqualTo("SALE 1r 2u 10 money 12");
        assertThat(net("Item|Qty", "Negroni|2")).isEqualTo("SALE 1r 2u null money null");
        assertThat(net("Item|Gross", "Negroni|12.00")).isEqualTo("SALE 1r 1u 10 money 12");
        assertThat(net("Item|Qty|Gross|Discount", "Negroni|1|12.00|12.00")).isEqualTo("COMPLIMENTARY 1r 1u 0 money 0");
        assertThat(net("Item|Qty|Gross|Type", "Negroni|1|0.00|Sale")).isEqualTo("SALE 1r 1u 0 money 0");
        assertThat(net("Item|Qty|Gross|Type", "Negroni|1|12.00|Staff")).isEqualTo("COMPLIMENTARY 1r 1u 10 money 12");
    }

    @Test
    void pricesWithoutTaxStay() {
        Month month = bar().set(Setting.MENU_PRICES_INCLUDE_TAX, false)
                .file("sales.csv", "Item|Qty|Gross|Tax", "Negroni|2|24.00|4.80")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 2u 24");
    }

    private static String net(String heading, String row) {
        Month month = bar().file("sales.csv", heading, row).load().value();
        return sales(month).get(0).replace("Negroni null ", "") + " money "
                + month.files().get(0).money();
    }

    @Test
    void aPriceListNamesAndPricesCodes() {
        WithProblems<Month> loaded = bar().file("sales.csv", "PLU|Qty", "7|2", "8|1")
                .file("prices.csv", "PLU|Name|Price", "7|Negroni|12.00", "8|Spritz|9.00")
                .load();

        assertThat(sales(loaded.value()))
                .containsExactly("Negroni#7 null SALE 1r 2u 20", "Spritz#8 null SALE 1r 1u 7.5");
        assertThat(loaded.value().files()).extracting(f -> f.kind()).containsExactly("prices", "sales");
        assertThat(loaded.problems()).isEmpty();
    }

    @Test
    void identicalRowsOfOneTicketAreUsedAndThoseOfAnotherFileSetAside() {
        WithProblems<Month> loaded = bar().file(
                        "sales-1.csv",
                        "Ticket|Date|Item|Qty|Gross",
                        "1|2026-10-03 20:00|Negroni|1|12.00",
                        "1|2026-10-03 20:00|Negroni|1|12.00")
                .file(
                        "sales-2.csv",
                        "Ticket|Date|Item|Qty|Gross",
                        "1|2026-10-03 20:00|Negroni|1|12.00",
                        "2|2026-10-03 20:00|Negroni|1|12.00")
                .load();

        assertThat(sales(loaded.value()))
                .containsExactly("Negroni 2026-10-03 SALE 2r 2u 20", "Negroni 2026-10-03 SALE 1r 1u 10");
        assertThat(setAside(loaded.value()))
                .containsExactly("2: The row repeats one of another file of this month. 1 12");
    }

    @Test
    void theSameFileTwiceIsFoundWithoutTickets() {
        WithProblems<Month> loaded = bar().file("sales-1.csv", "Item|Qty|Gross", "Negroni|1|12.00", "Spritz|1|9.00")
                .file("sales-2.csv", "Item|Qty|Gross", "Spritz|1|9", "Negroni|1|12")
                .load();

        assertThat(sales(loaded.value())).hasSize(2);
        assertThat(control(loaded.value().files().get(1))).startsWith("rows 2 = 0 + 0 + 2");
        assertThat(problems(loaded)).anyMatch(p -> p.startsWith("FILE_TWICE 2026-10/sales-2.csv"));
    }

    @Test
    void aFileThatCannotBeUnderstoodIsRefusedAsAWhole() {
        Month month = bar().file("sales.csv", "Waiter|Table", "Anna|4").load().value();

        assertThat(month.sales()).isEmpty();
        assertThat(month.files().get(0).kind()).isEqualTo("refused");
        assertThat(setAside(month))
                .containsExactly(
                        "0: The file was refused: No row names the columns of sales: missing item or code. null null");
    }

    @Test
    void aFileOfAnotherNameIsListedAsNotRead() {
        Month month = bar().file("notes.csv", "Item|Qty|Gross", "Negroni|1|12.00")
                .load()
                .value();

        assertThat(month.sales()).isEmpty();
        assertThat(month.files()).extracting(f -> f.kind()).isEqualTo(List.of("not read"));
    }

    @Test
    void columnsMapWhatTheProgramDoesNotRecognise() {
        Month month = bar().column("sales", "item", "Was", "", "")
                .column("sales", "quantity", "Wieviel", "", "")
                .file("sales.csv", "Was|Wieviel|Brutto", "Negroni|2|24,00")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 2u 20");
        assertThat(month.files().get(0).decimals()).isEqualTo("comma");
    }

    @Test
    void aTotalWithoutALabelIsToldByItsSumsAndARowWithoutANameIsNot() {
        Month total = bar().file("sales.csv", "Item|Qty|Gross", "Negroni|1|12.00", "Cola|1|6.00", "|2|18.00")
                .load()
                .value();
        Month nameless = bar().file("sales.csv", "Item|Qty|Gross", "Negroni|1|12.00", "|1|12.00")
                .load()
                .value();

        assertThat(control(total.files().get(0))).isEqualTo("rows 3 = 2 + 1 + 0, quantity 2, money 18 = 18 + 0 + 0");
        assertThat(control(nameless.files().get(0)))
                .isEqualTo("rows 2 = 1 + 0 + 1, quantity 2, money 24 = 12 + 0 + 12");
    }

    @Test
    void aHeadingInColumnsThatNoColumnHasIsSaid() {
        WithProblems<Month> loaded = bar().column("sales", "quantity", "Pieces sold", "", "")
                .file("sales.csv", "Item|Qty|Gross", "Negroni|1|12.00")
                .load();

        assertThat(problems(loaded).get(0)).startsWith("COLUMN_MISSING").contains("maps this heading to quantity");
    }

    @Test
    void aDiscountLargerThanItsMoneyIsSetAside() {
        Month month = bar().file("sales.csv", "Item|Qty|Gross|Discount", "Negroni|1|0.00|12.00")
                .load()
                .value();

        assertThat(setAside(month))
                .containsExactly(
                        "2: The discount is larger than the money it is taken off (column D, Discount). 1 null");
    }
}
