package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.SaleKind;
import heeltap.record.SaleTotal;
import heeltap.source.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The used rows of one till name and code, added up by day and kind: 32 days by 4 kinds at most. */
final class SaleSums {
    private static final int DAYS = 32;
    private static final SaleKind[] KINDS = SaleKind.values();

    private final String item;
    private final String code;
    private final @Nullable Sum[] sums = new @Nullable Sum[DAYS * KINDS.length];

    SaleSums(String item, String code) {
        this.item = item;
        this.code = code;
    }

    /**
     * Adds a row.
     *
     * @param day null where the file has no dates
     * @param net money without tax, or with tax where {@code taxPercent} is there; null for no money
     * @param taxPercent still in {@code net}; null for none
     * @param tax amount that the till took off already; null where it says nothing
     */
    void add(
            @Nullable LocalDate day,
            SaleKind kind,
            BigDecimal quantity,
            @Nullable BigDecimal net,
            @Nullable BigDecimal taxPercent,
            @Nullable BigDecimal tax,
            int row) {
        Sum sum = sum(day, kind);
        sum.rows++;
        sum.quantity = sum.quantity.add(quantity);
        sum.firstRow = Math.min(sum.firstRow, row);
        if (net != null && taxPercent == null && tax == null) {
            sum.taxUnknown = true;
        } else if (tax != null) {
            sum.tax = sum.tax.add(tax);
        }
        if (net != null && taxPercent == null) {
            sum.net = sum.net == null ? net : sum.net.add(net);
        } else if (net != null) {
            sum.taxed.merge(taxPercent, net, BigDecimal::add);
        }
    }

    /** Adds money without tax to rows already added. */
    void adjust(@Nullable LocalDate day, SaleKind kind, Money net) {
        Sum sum = sum(day, kind);
        sum.exact = sum.exact == null ? net : sum.exact.plus(net);
    }

    @SuppressWarnings("EnumOrdinal")
    private Sum sum(@Nullable LocalDate day, SaleKind kind) {
        int index = kind.ordinal() * DAYS + (day == null ? 0 : day.getDayOfMonth());
        Sum sum = sums[index];
        if (sum == null) {
            sum = new Sum();
            sums[index] = sum;
        }
        return sum;
    }

    List<SaleTotal> totals(Place sheet, YearMonth month) {
        List<SaleTotal> totals = new ArrayList<>();
        for (int i = 0; i < sums.length; i++) {
            Sum sum = sums[i];
            if (sum != null) {
                int day = i % DAYS;
                totals.add(new SaleTotal(
                        item,
                        code,
                        day == 0 ? null : month.atDay(day),
                        KINDS[i / DAYS],
                        sum.rows,
                        Exact.of(sum.quantity),
                        sum.money(),
                        sum.paid(),
                        sheet.withRow(sum.firstRow)));
            }
        }
        return totals;
    }

    /** Rows of one day and kind; money with tax is kept by rate until the end, so that the quotient is exact. */
    private static final class Sum {
        private int rows;
        private int firstRow = Integer.MAX_VALUE;
        private BigDecimal quantity = BigDecimal.ZERO;
        private @Nullable BigDecimal net;
        private @Nullable Money exact;
        private final Map<BigDecimal, BigDecimal> taxed = new HashMap<>(2);
        private BigDecimal tax = BigDecimal.ZERO;
        private boolean taxUnknown;

        @Nullable Money money() {
            if (net == null && exact == null && taxed.isEmpty()) {
                return null;
            }
            return exact == null ? read() : read().plus(exact);
        }

        /** With the tax that the till tells; null where it does not tell it of every row. */
        @Nullable Money paid() {
            Money money = money();
            Money read = read();
            if (money == null || taxUnknown || read.isZero()) {
                return null;
            }
            Money withTax = net == null ? Money.of(tax) : Money.of(net.add(tax));
            for (BigDecimal paid : taxed.values()) {
                withTax = withTax.plus(Money.of(paid));
            }
            return money.times(withTax.dividedBy(read));
        }

        /** As the rows have it, without tax. */
        private Money read() {
            Money sum = net == null ? Money.ZERO : Money.of(net);
            for (Map.Entry<BigDecimal, BigDecimal> entry : taxed.entrySet()) {
                sum = sum.plus(Money.of(entry.getValue()).withoutTax(Exact.of(entry.getKey())));
            }
            return sum;
        }
    }
}
