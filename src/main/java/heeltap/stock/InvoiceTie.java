package heeltap.stock;

import heeltap.cost.InvoiceTax;
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
        InvoiceTax untaxed = InvoiceTax.of(invoice, taxPercent);
        Money gross = invoice.delivery().minus(invoice.discount());
        Money goods = Money.ZERO;
        Money discount = invoice.discount().times(untaxed.charges());
        for (int i = 0; i < invoice.lines().size(); i++) {
            InvoiceLine line = invoice.lines().get(i);
            Exact share = untaxed.lines().get(i);
            gross = gross.plus(line.goods());
            goods = goods.plus(line.goods().plus(line.discount()).times(share));
            discount = discount.plus(line.discount().times(share));
        }
        Money delivery = invoice.delivery().times(untaxed.charges());
        Money net = goods.minus(discount).plus(delivery);
        Money printedTax = invoice.tax();
        Money tax = printedTax != null
                ? printedTax
                : invoice.pricesIncludeTax()
                        ? gross.minus(net)
                        : net.withTax(taxPercent).minus(net);
        Money total = net.plus(invoice.deposit()).plus(tax);
        BigDecimal rounded = total.rounded(currency);
        Optional<Money> difference = Optional.ofNullable(invoice.printedTotal())
                .map(printed -> Money.of(rounded).minus(printed));
        return new InvoiceTie(invoice, goods, discount, delivery, invoice.deposit(), tax, total, difference);
    }

    /** Whether the paper's own total agrees, or there is none to compare with. */
    public boolean holds() {
        return difference.map(Money::isZero).orElse(true);
    }
}
