package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import java.util.List;

/**
 * What of an invoice's money is left once recoverable tax is out. Where the prices hold no tax all of it is; else
 *
 * <ul>
 *   <li>nothing printed: every sum holds tax at the settings' rate, {@code tax = p x r / (100 + r)} (HM Revenue & Customs,
 *       calculating VAT);
 *   <li>a tax printed on a line is that line's; what the invoice prints beyond is spread by value over the other lines and
 *       the charges, so that the tax taken out is the tax printed, neither more nor less.
 * </ul>
 *
 * @param lines what is left of one unit of money, a line each
 * @param charges the same of delivery and of discounts on the whole invoice
 */
public record InvoiceTax(List<Exact> lines, Exact charges) {
    /**
     * For one invoice.
     *
     * @param ratePercent the settings' rate, for an invoice that prints no tax
     */
    public static InvoiceTax of(Invoice invoice, Exact ratePercent) {
        if (!invoice.pricesIncludeTax()) {
            return same(invoice, Exact.ONE);
        }
        Money printed = invoice.tax();
        if (printed == null) {
            return same(invoice, Exact.ONE.dividedBy(Exact.ONE.plus(ratePercent.percent())));
        }
        Money gross = invoice.delivery().minus(invoice.discount());
        Money restGross = gross;
        Money restTax = printed;
        for (InvoiceLine line : invoice.lines()) {
            gross = gross.plus(line.goods());
            if (isTaxed(line)) {
                restTax = restTax.minus(taxOf(line));
            } else {
                restGross = restGross.plus(line.goods());
            }
        }
        if (!restTax.isZero() && (restGross.isZero() || !isShare(restTax.dividedBy(restGross)))) {
            // the lines' taxes do not fit the invoice's: its own rate for all
            return same(
                    invoice, gross.isZero() ? Exact.ONE : gross.minus(printed).dividedBy(gross));
        }
        Exact rest = restTax.isZero() ? Exact.ONE : restGross.minus(restTax).dividedBy(restGross);
        return new InvoiceTax(
                invoice.lines().stream()
                        .map(line ->
                                isTaxed(line) ? line.goods().minus(taxOf(line)).dividedBy(line.goods()) : rest)
                        .toList(),
                rest);
    }

    private static InvoiceTax same(Invoice invoice, Exact share) {
        return new InvoiceTax(invoice.lines().stream().map(line -> share).toList(), share);
    }

    private static boolean isTaxed(InvoiceLine line) {
        return line.tax() != null && !line.goods().isZero();
    }

    private static Money taxOf(InvoiceLine line) {
        return line.tax() == null ? Money.ZERO : line.tax();
    }

    /** Tax is a part of the money that holds it. */
    private static boolean isShare(Exact share) {
        return !share.isNegative() && share.isLessThan(Exact.ONE);
    }
}
