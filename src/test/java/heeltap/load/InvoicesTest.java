package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static heeltap.load.MonthFixture.control;
import static heeltap.load.MonthFixture.setAside;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import heeltap.record.Month;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is made of the rows of invoices. */
class InvoicesTest {
    private static List<String> invoices(Month month) {
        return month.invoices().stream().map(InvoicesTest::text).toList();
    }

    private static String text(Invoice invoice) {
        return invoice.supplier() + " " + invoice.number() + " " + invoice.date()
                + (invoice.creditNote() ? " credit" : "") + " discount " + invoice.discount() + " delivery "
                + invoice.delivery() + " deposit " + invoice.deposit() + " tax " + invoice.tax() + " total "
                + invoice.printedTotal();
    }

    private static List<String> lines(Invoice invoice) {
        return invoice.lines().stream().map(InvoicesTest::text).toList();
    }

    private static String text(InvoiceLine line) {
        return line.product() + " " + line.quantity() + " x "
                + (line.pack() == null ? "?" : line.pack().total()) + " = " + line.goods() + " discount "
                + line.discount();
    }

    @Test
    void readsAFlatSheetWhereValuesOfTheInvoiceRepeat() {
        Month month = bar().file(
                        "invoices.csv",
                        "Supplier|Invoice|Date|Product|Pack|Quantity|Unit price|Delivery|Invoice total",
                        "North|A1|2026-10-05|Gin|6 x 70cl|2|90.00|10.00|250.00",
                        "North|A1|2026-10-05|Rum|6 x 70cl|1|60.00|10.00|250.00",
                        "South|B7|2026-10-09|Lime||40|0.25||")
                .load()
                .value();

        assertThat(invoices(month))
                .containsExactly(
                        "North A1 2026-10-05 discount 0 delivery 10 deposit 0 tax null total 250",
                        "South B7 2026-10-09 discount 0 delivery 0 deposit 0 tax null total null");
        assertThat(lines(month.invoices().get(0)))
                .containsExactly("Gin 2 x 4200 ml = 180 discount 0", "Rum 1 x 4200 ml = 60 discount 0");
        assertThat(control(month.files().get(0))).isEqualTo("rows 3 = 3 + 0 + 0, quantity 43, money 250 = 250 + 0 + 0");
    }

    @Test
    void readsAPageWithHeaderAboveAndChargesBelow() {
        Month month = bar().sheet(
                        "invoices.xlsx",
                        "Page",
                        "Supplier: North Wines",
                        "Invoice no:|A1||Date:|05.10.2026",
                        "",
                        "Product|Pack|Qty|Price|Total",
                        "Gin|6 x 70cl|2|90.00|180.00",
                        "White Port|6 x 70cl|1|60.00|60.00",
                        "Subtotal||||240.00",
                        "Discount 5%||||-12.00",
                        "Delivery||||10.00",
                        "Keg deposit||||30.00",
                        "VAT 20%||||47.60",
                        "Total||||315.60")
                .load()
                .value();

        assertThat(invoices(month))
                .containsExactly("North Wines A1 2026-10-05 discount 12 delivery 10 deposit 30 tax 47.6 total 315.6");
        assertThat(month.invoices().get(0).lines()).hasSize(2);
        assertThat(control(month.files().get(0))).isEqualTo("rows 8 = 5 + 3 + 0, quantity 3, money 268 = 268 + 0 + 0");
    }

    @Test
    void readsSeveralInvoicesInOneSheet() {
        Month month = bar().file(
                        "invoices.csv",
                        "Supplier: North",
                        "Invoice no: A1|||Date: 5 October 2026",
                        "Product|Qty|Price|Total",
                        "Gin|2|90.00|180.00",
                        "Total|||180.00",
                        "Invoice no: A2|||Date: 6 October 2026",
                        "Product|Qty|Price|Total",
                        "Rum|1|60.00|60.00",
                        "Delivery|||5.00",
                        "Total|||65.00")
                .load()
                .value();

        assertThat(invoices(month))
                .containsExactly(
                        "North A1 2026-10-05 discount 0 delivery 0 deposit 0 tax null total 180",
                        "North A2 2026-10-06 discount 0 delivery 5 deposit 0 tax null total 65");
    }

    @Test
    void aCreditNoteIsNegativeWhateverItsSigns() {
        for (String sign : List.of("", "-")) {
            Month month = bar().file(
                            "invoices.csv",
                            "Supplier|Invoice|Date|Type|Product|Qty|Line total",
                            "North|C1|2026-10-05|Credit note|Gin|" + sign + "1|" + sign + "15.00")
                    .load()
                    .value();

            assertThat(month.invoices().get(0).creditNote()).isTrue();
            assertThat(lines(month.invoices().get(0))).containsExactly("Gin -1 x ? = -15 discount 0");
        }
    }

    @Test
    void aDiscountIsTakenOffUnlessTheLineTotalHasIt() {
        Month month = bar().file(
                        "invoices.csv",
                        "Invoice|Product|Qty|Price|Discount|Total",
                        "A1|Gin|2|90.00|18.00|162.00",
                        "A1|Rum|1|60.00|6.00|60.00",
                        "A1|Lime|10|1.00|10%|9.00")
                .load()
                .value();

        assertThat(lines(month.invoices().get(0)))
                .containsExactly(
                        "Gin 2 x ? = 162 discount 18", "Rum 1 x ? = 54 discount 6", "Lime 10 x ? = 9 discount 1");
    }

    @Test
    void anUnknownProductIsALineAndSetAside() {
        Month month = bar().file("invoices.csv", "Invoice|Product|Qty|Price", "A1|Vermut|2|8.00", "A1|Gin|1|90.00")
                .load()
                .value();

        assertThat(month.invoices().get(0).lines()).hasSize(2);
        assertThat(setAside(month)).containsExactly("2: The product is not known (column B, Product). 2 16");
        assertThat(control(month.files().get(0))).contains("rows 2 = 1 + 0 + 1");
    }

    @Test
    void anotherCurrencyIsRefusedByName() {
        Month month = bar().file(
                        "invoices.csv", "Supplier|Invoice|Product|Qty|Price|Currency", "North|A1|Gin|1|90.00|USD")
                .load()
                .value();

        assertThat(month.invoices()).isEmpty();
        assertThat(setAside(month))
                .containsExactly("2: The invoice A1 of North is in USD, not in the bar's currency. 1 90");
    }

    @Test
    void anInvoiceOfAnotherMonthIsSetAside() {
        Month month = bar().file("invoices.csv", "Invoice|Date|Product|Qty|Price", "A1|2026-09-30|Gin|1|90.00")
                .load()
                .value();

        assertThat(month.invoices()).isEmpty();
        assertThat(setAside(month)).containsExactly("2: The invoice A1 is of 2026-09-30, not of 2026-10. 1 90");
    }

    @Test
    void theSameInvoiceInAnotherFileIsSetAside() {
        Month month = bar().file("invoices-1.csv", "Invoice|Product|Qty|Price", "A1|Gin|1|90.00", "A1|Rum|1|60.00")
                .file("invoices-2.csv", "Invoice|Product|Qty|Price", "A1|Gin|1|90.00")
                .load()
                .value();

        assertThat(month.invoices().get(0).lines()).hasSize(2);
        assertThat(setAside(month))
                .containsExactly("2: The row repeats invoice A1 of 2026-10/invoices-1.csv, row 2. 1 90");
    }

    @Test
    void aTotalOfAllInvoicesIsTheSheets() {
        Month month = bar().file(
                        "invoices.csv",
                        "Invoice|Product|Qty|Total",
                        "A1|Gin|1|90.00",
                        "A2|Rum|1|60.00",
                        "|Total||150.00")
                .load()
                .value();

        assertThat(month.files().get(0).printedTotal()).hasToString("150");
        assertThat(month.invoices().get(1).printedTotal()).isNull();
    }

    @Test
    void withoutNumbersTheDateTellsInvoicesApart() {
        Month month = bar().file(
                        "invoices.csv",
                        "Supplier|Date|Product|Qty|Price",
                        "North|2026-10-05|Gin|1|90.00",
                        "North||Rum|1|60.00",
                        "North|2026-10-09|Gin|1|91.00")
                .load()
                .value();

        assertThat(month.invoices())
                .extracting(i -> i.date() + " " + i.lines().size())
                .containsExactly("2026-10-05 2", "2026-10-09 1");
    }

    @Test
    void aCurrencyBesideTheMoneyCountsToo() {
        Month month = bar().file("invoices.csv", "Invoice|Product|Qty|Price", "A1|Gin|1|£90.00", "A2|Gin|1|90.00 EUR")
                .load()
                .value();

        assertThat(month.invoices()).extracting(Invoice::number).containsExactly("A2");
        assertThat(setAside(month)).containsExactly("2: The invoice A1 is in £, not in the bar's currency. 1 90");
    }

    @Test
    void whereNothingSaysWhetherADiscountIsTakenOffTheReaderIsTold() {
        assertThat(MonthFixture.problems(
                        bar().file("invoices.csv", "Invoice|Product|Qty|Discount|Total", "A1|Gin|2|18.00|162.00")
                                .load()))
                .anyMatch(p -> p.contains("were taken to be after them"));
    }

    @Test
    void aDiscountRepeatedOnEachRowCountsOnce() {
        Month month = bar().file(
                        "invoices.csv",
                        "Invoice|Product|Qty|Price|Discount",
                        "A1|Gin|2|90.00|12.00",
                        "A1|Rum|1|60.00|12.00")
                .load()
                .value();

        assertThat(month.invoices().get(0).discount()).hasToString("12");
        assertThat(lines(month.invoices().get(0)))
                .containsExactly("Gin 2 x ? = 180 discount 0", "Rum 1 x ? = 60 discount 0");
    }

    @Test
    void goodsSentBackAndFreeGoods() {
        Month month = bar().file(
                        "invoices.csv",
                        "Invoice|Product|Qty|Price|Total",
                        "A1|Gin|-1|90.00|-90.00",
                        "A1|Rum|1|0.00|0.00",
                        "A1|Gin|3|90.00|270.00")
                .load()
                .value();

        assertThat(lines(month.invoices().get(0)))
                .containsExactly(
                        "Gin -1 x ? = -90 discount 0", "Rum 1 x ? = 0 discount 0", "Gin 3 x ? = 270 discount 0");
        assertThat(month.invoices().get(0).creditNote()).isFalse();
    }
}
