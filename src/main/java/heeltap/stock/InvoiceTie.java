package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;

/**
 * One invoice added up: {@code total = goods - discount + delivery + deposit + tax}, against what the paper states. All
 * money without tax but {@code tax} and the totals; that of a credit note is negative.
 *
 * @param invoice as written
 * @param goods of all printed lines before any discount
 * @param discount the lines' own and the invoice's, positive
 * @param tax as printed, else at the settings' rate
 * @param total what is to pay
 * @param difference total, rounded to the currency's decimals, less the printed total; empty where none is printed
 */
public record InvoiceTie(
        Invoice invoice,
        Money goods,
        Money discount,
        Money delivery,
        Money deposit,
        Money tax,
        Money total,
        Optional<Money> difference) {

    /**
     * Adds an invoice up.
     *
     * @param taxPercent the settings' rate, for an invoice that prints no tax
     */
    public static InvoiceTie of(Invoice invoice, Exact taxPercent, Currency currency) {
        Money lines = Money.ZERO;
        Money lineDiscounts = Money.ZERO;
        for (InvoiceLine line : invoice.lines()) {
            lines = lines.plus(line.goods());
            lineDiscounts = lineDiscounts.plus(line.discount());
        }
        Money goods = lines.plus(lineDiscounts);
        Money discount = lineDiscounts.plus(invoice.discount());
        Money taxed = goods.minus(discount).plus(invoice.delivery());
        Money tax = Optional.ofNullable(invoice.tax()).orElseGet(() -> taxOn(taxed, invoice, taxPercent));
        // Where the lines hold the tax, what is left of one euro once the tax is out
        Exact net =
                invoice.pricesIncludeTax() && !taxed.isZero() ? taxed.minus(tax).dividedBy(taxed) : Exact.ONE;
        Money netGoods = goods.times(net);
        Money netDiscount = discount.times(net);
        Money netDelivery = invoice.delivery().times(net);
        Money total = netGoods.minus(netDiscount)
                .plus(netDelivery)
                .plus(invoice.deposit())
                .plus(tax);
        BigDecimal rounded = total.rounded(currency);
        Optional<Money> difference = Optional.ofNullable(invoice.printedTotal())
                .map(printed -> Money.of(rounded).minus(printed));
        return new InvoiceTie(invoice, netGoods, netDiscount, netDelivery, invoice.deposit(), tax, total, difference);
    }

    private static Money taxOn(Money taxed, Invoice invoice, Exact taxPercent) {
        return invoice.pricesIncludeTax()
                ? taxed.minus(taxed.withoutTax(taxPercent))
                : taxed.withTax(taxPercent).minus(taxed);
    }

    /** Whether the paper's own total agrees, or there is none to compare with. */
    public boolean holds() {
        return difference.map(Money::isZero).orElse(true);
    }
}
