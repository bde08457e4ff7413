package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import heeltap.source.Place;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InvoiceTieTest {
    private static final Currency EUR = Currency.getInstance("EUR");
    private static final Place PLACE = Place.of("2026-10/invoices.csv").withRow(2);

    private static InvoiceLine line(String goods, String discount) {
        return new InvoiceLine(
                "Gin", null, "6x70cl", Exact.ONE, Money.of(goods), Money.of(discount), Money.ZERO, null, PLACE);
    }

    private static Invoice invoice(
            boolean taxInside, @Nullable String tax, @Nullable String total, InvoiceLine... lines) {
        return new Invoice(
                "Kontor",
                "17",
                null,
                false,
                taxInside,
                List.of(lines),
                Money.of("5"),
                Money.of("10"),
                Money.of("2.40"),
                Money.ZERO,
                tax == null ? null : Money.of(tax),
                total == null ? null : Money.of(total),
                PLACE,
                List.of());
    }

    @Test
    void addsGoodsDiscountDeliveryDepositAndTax() {
        InvoiceTie tie =
                InvoiceTie.of(invoice(false, "20.90", "133.30", line("90", "10"), line("15", "0")), Exact.of(19), EUR);
        assertThat(tie.goods()).isEqualTo(Money.of("115"));
        assertThat(tie.discount()).isEqualTo(Money.of("15"));
        assertThat(tie.total()).isEqualTo(Money.of("133.30"));
        assertThat(tie.holds()).isTrue();
    }

    @Test
    void saysByHowMuchThePaperDiffers() {
        InvoiceTie tie = InvoiceTie.of(invoice(false, "20.90", "132.30", line("105", "0")), Exact.of(19), EUR);
        assertThat(tie.difference()).contains(Money.of("1"));
        assertThat(tie.holds()).isFalse();
    }

    @Test
    void takesTaxOutOfLinesThatHoldIt() {
        // 115 - 5 + 10 = 120 with 20 % tax inside holds 20 (HM Revenue & Customs, worked example 11a)
        InvoiceTie tie = InvoiceTie.of(invoice(true, null, "122.40", line("115", "0")), Exact.of(20), EUR);
        assertThat(tie.tax()).isEqualTo(Money.of("20"));
        assertThat(tie.goods().minus(tie.discount()).plus(tie.delivery())).isEqualTo(Money.of("100"));
        assertThat(tie.difference()).contains(Money.ZERO);
    }

    private static InvoiceLine taxed(String goods, @Nullable String tax) {
        return new InvoiceLine(
                "Gin",
                null,
                "",
                Exact.ONE,
                Money.of(goods),
                Money.ZERO,
                Money.ZERO,
                tax == null ? null : Money.of(tax),
                PLACE);
    }

    /**
     * 120 with 20 of tax and 53.50 with 3.50, 5 off, 10 of delivery: 178.50. Printed 24: the 0.50 beyond the lines lies in
     * the charges of 5, so that they are 9/10 without tax; printed 23.50: none lies there. Constructed.
     */
    @ParameterizedTest
    @CsvSource({"24,150,4.5,9", "23.50,150,5,10"})
    void takesOutTheTaxThatIsPrinted(String tax, String goods, String discount, String delivery) {
        InvoiceTie tie = InvoiceTie.of(
                invoice(true, tax, "180.90", taxed("120", "20"), taxed("53.50", "3.50")), Exact.of(19), EUR);
        assertThat(tie.goods()).isEqualTo(Money.of(goods));
        assertThat(tie.discount()).isEqualTo(Money.of(discount));
        assertThat(tie.delivery()).isEqualTo(Money.of(delivery));
        assertThat(tie.tax()).isEqualTo(Money.of(tax));
        assertThat(tie.difference()).contains(Money.ZERO);
    }

    /** 3.50 less than the lines say: no part of 5 of charges, so 20 of 178.50 is taken out everywhere. */
    @Test
    void aTaxThatFitsNoChargesIsSharedByValue() {
        InvoiceTie tie = InvoiceTie.of(
                invoice(true, "20", "180.90", taxed("120", "20"), taxed("53.50", "3.50")), Exact.of(19), EUR);
        assertThat(tie.delivery())
                .isEqualTo(Money.of("10").times(Exact.of("158.5").dividedBy(Exact.of("178.5"))));
        assertThat(tie.total()).isEqualTo(Money.of("180.90"));
    }
}
