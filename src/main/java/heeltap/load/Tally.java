package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.FileAccount;
import heeltap.source.SheetFacts;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The control totals of one sheet: what came in, and what became of it. The two are added up apart, so that a row
 * forgotten on the way cannot go unseen.
 */
final class Tally {
    /** What can become of a row. */
    enum Fate {
        USED,
        IGNORED,
        SET_ASIDE
    }

    private final int[] counts = new int[Fate.values().length];
    private final BigDecimal[] quantities = zeros();
    private final BigDecimal[] moneys = zeros();
    private int rows;
    private BigDecimal quantity = BigDecimal.ZERO;
    private BigDecimal money = BigDecimal.ZERO;

    private static BigDecimal[] zeros() {
        BigDecimal[] zeros = new BigDecimal[Fate.values().length];
        java.util.Arrays.fill(zeros, BigDecimal.ZERO);
        return zeros;
    }

    /** A row that is not blank. */
    void row() {
        rows++;
    }

    /** What the row says, as printed; null for nothing or unreadable. */
    void in(@Nullable BigDecimal rowQuantity, @Nullable BigDecimal rowMoney) {
        quantity = rowQuantity == null ? quantity : quantity.add(rowQuantity);
        money = rowMoney == null ? money : money.add(rowMoney);
    }

    /** What became of it. */
    @SuppressWarnings("EnumOrdinal")
    void fate(Fate fate, @Nullable BigDecimal rowQuantity, @Nullable BigDecimal rowMoney) {
        int i = fate.ordinal();
        counts[i]++;
        quantities[i] = rowQuantity == null ? quantities[i] : quantities[i].add(rowQuantity);
        moneys[i] = rowMoney == null ? moneys[i] : moneys[i].add(rowMoney);
    }

    int rows() {
        return rows;
    }

    BigDecimal money() {
        return money;
    }

    /**
     * @param hasMoney whether the kind of file has money at all; so too quantity
     * @throws IllegalStateException if the rows in are not the rows out: a fault of the program
     */
    FileAccount account(
            SheetFacts facts,
            String kind,
            int headingRow,
            String dates,
            String decimals,
            boolean hasQuantity,
            boolean hasMoney,
            @Nullable BigDecimal printedTotal) {
        check(facts);
        return new FileAccount(
                facts.place(),
                kind,
                facts.encoding(),
                facts.delimiter(),
                headingRow,
                dates,
                decimals,
                rows,
                counts[0],
                counts[1],
                counts[2],
                hasQuantity ? Exact.of(quantity) : null,
                hasMoney ? Money.of(money) : null,
                hasQuantity ? Exact.of(quantities[0]) : null,
                hasMoney ? Money.of(moneys[0]) : null,
                hasMoney ? Money.of(moneys[1]) : null,
                hasMoney ? Money.of(moneys[2]) : null,
                printedTotal == null ? null : Money.of(printedTotal));
    }

    private void check(SheetFacts facts) {
        int fates = counts[0] + counts[1] + counts[2];
        BigDecimal quantityOut = quantities[0].add(quantities[1]).add(quantities[2]);
        BigDecimal moneyOut = moneys[0].add(moneys[1]).add(moneys[2]);
        if (rows != fates || quantity.compareTo(quantityOut) != 0 || money.compareTo(moneyOut) != 0) {
            throw new IllegalStateException("control totals broken in " + facts.place() + ": rows " + rows + " and "
                    + fates + ", quantity " + quantity + " and " + quantityOut + ", money " + money + " and "
                    + moneyOut);
        }
    }

    /** The account of a file or sheet from which nothing was read. */
    static FileAccount unread(SheetFacts facts, String kind) {
        return new Tally().account(facts, kind, 0, "", "", false, false, null);
    }
}
