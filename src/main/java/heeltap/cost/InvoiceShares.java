package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Invoice;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * What each line of an invoice cost: recoverable tax taken out, the invoice's discount and delivery shared over the lines
 * by value.
 *
 * @param goods without tax, after the share of discounts, a line each
 * @param delivery without tax, a line each
 * @param byValue false where no line has a value and the charges were shared alike
 */
record InvoiceShares(List<Money> goods, List<Money> delivery, boolean byValue) {
    static InvoiceShares of(Invoice invoice, Settings settings) {
        InvoiceTax tax = InvoiceTax.of(invoice, settings.get(Setting.INVOICE_TAX_PERCENT));
        List<Money> net = new ArrayList<>();
        for (int i = 0; i < invoice.lines().size(); i++) {
            net.add(invoice.lines().get(i).goods().times(tax.lines().get(i)));
        }
        List<Exact> shares = shares(invoice, net);
        Money discount = invoice.discount().times(tax.charges());
        Money delivery = invoice.delivery().times(tax.charges());
        List<Money> goods = new ArrayList<>();
        List<Money> deliveries = new ArrayList<>();
        for (int i = 0; i < net.size(); i++) {
            goods.add(net.get(i).minus(discount.times(shares.get(i))));
            deliveries.add(delivery.times(shares.get(i)));
        }
        boolean charged = !invoice.discount().isZero() || !invoice.delivery().isZero();
        return new InvoiceShares(goods, deliveries, !charged || hasValue(invoice, net));
    }

    private static Money sum(List<Money> parts) {
        return parts.stream().reduce(Money.ZERO, Money::plus);
    }

    /**
     * Each line's share of the charges; they add up to one. Goods sent back on an invoice, and free ones, bear none, so
     * that returns do not swell the shares of the rest.
     */
    private static List<Exact> shares(Invoice invoice, List<Money> net) {
        if (!hasValue(invoice, net)) {
            Exact alike = Exact.ONE.dividedBy(Exact.of(Math.max(1, net.size())));
            return net.stream().map(line -> alike).toList();
        }
        Money total = sum(net.stream().filter(line -> bears(invoice, line)).toList());
        return net.stream()
                .map(line -> bears(invoice, line) ? line.dividedBy(total) : Exact.ZERO)
                .toList();
    }

    private static boolean hasValue(Invoice invoice, List<Money> net) {
        return net.stream().anyMatch(line -> bears(invoice, line));
    }

    private static boolean bears(Invoice invoice, Money line) {
        return invoice.creditNote() ? line.isNegative() : line.isPositive();
    }
}
