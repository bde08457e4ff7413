package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static heeltap.load.MonthFixture.control;
import static heeltap.load.MonthFixture.problems;
import static heeltap.load.MonthFixture.sales;
import static heeltap.load.MonthFixture.setAside;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.record.Month;
import heeltap.source.WithProblems;
import org.junit.jupiter.api.Test;

/** What rows of one ticket have to do with each other. */
class TicketsTest {
    private static final String[] SALES = {
        "Ticket|Date|Item|Qty|Gross",
        "1|2026-10-03|Negroni|2|24.00",
        "1|2026-10-03|Cola|1|6.00",
        "2|2026-10-04|Negroni|1|12.00"
    };

    @Test
    void returnsOfAnotherSheetAreTakenOffByTicketAndItem() {
        Month month = bar().sheet("sales.xlsx", "Returns", "Ticket|Item|Qty", "1|Negroni|1", "2|Cola|1", "1|Negroni|2")
                .sheet("sales.xlsx", "Sales", SALES)
                .load()
                .value();

        assertThat(sales(month))
                .containsExactly(
                        "Cola 2026-10-03 SALE 1r 1u 5",
                        "Negroni 2026-10-03 SALE 1r 2u 20",
                        "Negroni 2026-10-03 REFUND 1r 1u 10",
                        "Negroni 2026-10-04 SALE 1r 1u 10");
        assertThat(setAside(month))
                .containsExactly(
                        "3: No sale of this ticket and item was read, so nothing can be taken off (column A, Ticket). 1 null",
                        "4: More is returned than was sold on the ticket (column C, Qty). 2 null");
        assertThat(month.files()).extracting(f -> f.place().sheet()).containsExactly("Returns", "Sales");
    }

    @Test
    void aRefundThatTheSalesHoldIsNotTakenTwice() {
        Month month = bar().file("sales-returns.csv", "Ticket|Item|Qty|Gross", "1|Negroni|1|12.00")
                .file("sales.csv", "Ticket|Item|Qty|Gross", "1|Negroni|1|12.00", "1|Negroni|-1|-12.00")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Negroni null SALE 1r 1u 10", "Negroni null REFUND 1r 1u 10");
        assertThat(setAside(month)).containsExactly("2: The sales hold this refund already (column A, Ticket). 1 12");
    }

    @Test
    void aDiscountOnATicketIsSharedOverItsRowsByValue() {
        Month month = bar().file(
                        "sales.csv",
                        "Ticket|Item|Qty|Gross",
                        "1|Negroni|2|24.00",
                        "1|Cola|1|6.00",
                        "1|Discount|1|-6.00",
                        "2|Negroni|1|12.00",
                        "3|Discount||-5.00")
                .load()
                .value();

        assertThat(sales(month)).containsExactly("Cola null SALE 1r 1u 4", "Negroni null SALE 2r 3u 26");
        assertThat(control(month.files().get(0))).isEqualTo("rows 5 = 4 + 0 + 1, quantity 5, money 31 = 36 + 0 + -5");
        assertThat(setAside(month))
                .containsExactly("6: The ticket has no sales that could bear this discount. null -5");
    }

    @Test
    void daysThatTwoExportsShareAreFoundWithoutTickets() {
        WithProblems<Month> loaded = bar().file(
                        "sales-1.csv",
                        "Date|Item|Qty|Net",
                        "2026-10-03|Negroni|2|20",
                        "2026-10-03|Cola|1|5",
                        "2026-10-03|Spritz|1|9",
                        "2026-10-02|Spritz|1|9")
                .file(
                        "sales-2.csv",
                        "Date|Item|Qty|Net",
                        "2026-10-03|Spritz|1|9",
                        "2026-10-03|Negroni|2|20",
                        "2026-10-03|Cola|1|5",
                        "2026-10-04|Spritz|1|9")
                .load();

        assertThat(control(loaded.value().files().get(1)))
                .isEqualTo("rows 4 = 1 + 0 + 3, quantity 5, money 43 = 9 + 0 + 34");
        assertThat(problems(loaded))
                .anyMatch(p -> p.contains("Some days of this sheet stand in 2026-10/sales-1.csv too"));
    }
}
