package heeltap.load;

import heeltap.quantity.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * The sums printed in an electronic invoice, by their terms in EN 16931-1; null where one is not printed. Their rules,
 * named BR-CO-10 to BR-CO-16 in the standard (BR-CO-13 and the line rule PEPPOL-EN16931-R120 by the Peppol BIS Billing
 * 3 listing, the other numbers from memory):
 *
 * <pre>
 * BT-106 = sum of BT-131        BT-107, BT-108 = sums of BT-92, BT-99
 * BT-109 = BT-106 - BT-107 + BT-108
 * BT-110 = sum of BT-117        BT-112 = BT-109 + BT-110        BT-115 = BT-112 - BT-113 + BT-114
 * BT-131 = BT-146 / BT-149 x BT-129 + sum of BT-141 - sum of BT-136, within 0.02
 * </pre>
 *
 * @param taxes the tax of each rate (BT-117)
 */
record EInvoiceSums(
        @Nullable BigDecimal lines,
        @Nullable BigDecimal allowances,
        @Nullable BigDecimal charges,
        @Nullable BigDecimal withoutTax,
        @Nullable BigDecimal tax,
        @Nullable BigDecimal withTax,
        @Nullable BigDecimal paid,
        @Nullable BigDecimal rounding,
        @Nullable BigDecimal due,
        List<BigDecimal> taxes) {
    private static final BigDecimal SLACK = new BigDecimal("0.02");
    private static final int CENTS = 2;

    /**
     * The price of a line.
     *
     * @param net BT-146, of {@code base} units (BT-149); null where none is printed
     */
    record Price(@Nullable BigDecimal net, BigDecimal base) {
        static Price of(Element line, String net, String base) {
            return new Price(
                    XmlPath.number(line, net).orElse(null),
                    XmlPath.number(line, base).filter(b -> b.signum() > 0).orElse(BigDecimal.ONE));
        }
    }

    static EInvoiceSums ubl(Element root, String currency) {
        String sums = "LegalMonetaryTotal/";
        return new EInvoiceSums(
                find(root, sums + "LineExtensionAmount"),
                find(root, sums + "AllowanceTotalAmount"),
                find(root, sums + "ChargeTotalAmount"),
                find(root, sums + "TaxExclusiveAmount"),
                XmlPath.amount(root, "TaxTotal/TaxAmount", currency),
                find(root, sums + "TaxInclusiveAmount"),
                find(root, sums + "PrepaidAmount"),
                find(root, sums + "PayableRoundingAmount"),
                find(root, sums + "PayableAmount"),
                XmlPath.numbers(root, "TaxTotal/TaxSubtotal/TaxAmount"));
    }

    static EInvoiceSums cii(Element root, String currency) {
        String settlement = "SupplyChainTradeTransaction/ApplicableHeaderTradeSettlement/";
        String sums = settlement + "SpecifiedTradeSettlementHeaderMonetarySummation/";
        return new EInvoiceSums(
                find(root, sums + "LineTotalAmount"),
                find(root, sums + "AllowanceTotalAmount"),
                find(root, sums + "ChargeTotalAmount"),
                find(root, sums + "TaxBasisTotalAmount"),
                XmlPath.amount(root, sums + "TaxTotalAmount", currency),
                find(root, sums + "GrandTotalAmount"),
                find(root, sums + "TotalPrepaidAmount"),
                find(root, sums + "RoundingAmount"),
                find(root, sums + "DuePayableAmount"),
                XmlPath.numbers(root, settlement + "ApplicableTradeTax/CalculatedAmount"));
    }

    private static @Nullable BigDecimal find(Element root, String path) {
        return XmlPath.number(root, path).orElse(null);
    }

    /** What does not hold, a sentence each; empty where all holds. */
    static List<String> faults(EInvoices.EInvoice invoice) {
        List<String> faults = new ArrayList<>();
        BigDecimal nets = BigDecimal.ZERO;
        for (int i = 0; i < invoice.lines().size(); i++) {
            EInvoices.Line line = invoice.lines().get(i);
            BigDecimal net = line.net().add(line.deposit());
            nets = nets.add(net);
            BigDecimal computed = computed(line);
            if (computed != null && computed.subtract(net).abs().compareTo(SLACK) > 0) {
                faults.add("The net amount of line " + (i + 1) + " (BT-131) is printed as " + net.toPlainString()
                        + ", but is " + computed.toPlainString()
                        + " by its price, quantity, allowances and charges.");
            }
        }
        invoice.sums().check(faults, nets, invoice.charges());
        return faults;
    }

    private static @Nullable BigDecimal computed(EInvoices.Line line) {
        BigDecimal price = line.price().net();
        return price == null
                ? null
                : Exact.of(price.multiply(line.quantity()))
                        .dividedBy(Exact.of(line.price().base()))
                        .round(CENTS, RoundingMode.HALF_UP)
                        .add(line.charge())
                        .subtract(line.allowance());
    }

    private void check(List<String> faults, BigDecimal nets, List<EInvoices.Charge> charged) {
        check(faults, "sum of its lines (BT-106)", lines, nets, "");
        check(faults, "sum of allowances (BT-107)", allowances, sum(charged, false), "");
        check(faults, "sum of charges (BT-108)", charges, sum(charged, true), "");
        if (lines != null) {
            BigDecimal net = lines.subtract(orZero(allowances)).add(orZero(charges));
            check(faults, "total without tax (BT-109)", withoutTax, net, " by the sums above it");
        }
        BigDecimal rates = taxes.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (tax != null && !taxes.isEmpty() && tax.compareTo(rates) != 0) {
            faults.add("The tax (BT-110) is printed as " + tax.toPlainString() + ", but its rates add up to "
                    + rates.toPlainString() + ".");
        }
        if (withoutTax != null) {
            check(faults, "total with tax (BT-112)", withTax, withoutTax.add(orZero(tax)), " by the sums above it");
        }
        if (withTax != null) {
            BigDecimal rest = withTax.subtract(orZero(paid)).add(orZero(rounding));
            check(faults, "amount due (BT-115)", due, rest, " by the sums above it");
        }
    }

    private static BigDecimal sum(List<EInvoices.Charge> charges, boolean charge) {
        return charges.stream()
                .filter(each -> each.isCharge() == charge)
                .map(EInvoices.Charge::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static void check(
            List<String> faults, String what, @Nullable BigDecimal printed, BigDecimal computed, String how) {
        if (printed != null && printed.compareTo(computed) != 0) {
            faults.add("The " + what + " is printed as " + printed.toPlainString() + ", but is "
                    + computed.toPlainString() + how + ".");
        }
    }

    private static BigDecimal orZero(@Nullable BigDecimal value) {
        return value == null ? BigDecimal.ZERO : value;
    }
}
