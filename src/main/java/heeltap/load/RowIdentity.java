package heeltap.load;

import heeltap.record.SaleKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What tells the rows of one sheet of sales from those of another: ticket, time and item where there are tickets; else
 * all rows of a day together.
 */
final class RowIdentity {
    private static final int DAYS = 32;
    /** So few equal rows in a day may be chance where no time of day is printed. */
    private static final int FEW = 3;

    private final RepeatedRows tickets = new RepeatedRows();
    private final long[] digests = new long[DAYS];
    private final int[] counts = new int[DAYS];
    private boolean hasTickets;

    /** Notes the row, and says whether an earlier sheet has it. */
    boolean isRepeated(Fields fields, SaleRow sale, RepeatedRows earlier, boolean[] repeatedDays) {
        String ticket = fields.text(Field.TICKET);
        long hash = RepeatedRows.hash(
                RepeatedRows.hash(0, TextFold.fold(fields.text(Field.ITEM))), fields.text(Field.CODE));
        if (sale.moment != null) {
            hash = RepeatedRows.hash(hash, sale.moment.date().toEpochDay());
            hash = RepeatedRows.hash(
                    hash, sale.moment.time() == null ? -1 : sale.moment.time().toSecondOfDay());
        }
        hash = RepeatedRows.hash(hash, ticket);
        hash = sale.kind == SaleKind.REFUND ? RepeatedRows.hash(hash, sale.kind.name()) : hash;
        int day = index(sale.day);
        digests[day] += RepeatedRows.hash(
                RepeatedRows.hash(RepeatedRows.hash(hash, plain(sale.quantity)), plain(sale.money)), sale.kind.name());
        counts[day]++;
        if (ticket.isEmpty()) {
            return repeatedDays[day];
        }
        hasTickets = true;
        tickets.add(hash);
        return earlier.contains(hash);
    }

    private static int index(@Nullable LocalDate day) {
        return day == null ? 0 : day.getDayOfMonth();
    }

    private static long plain(@Nullable BigDecimal value) {
        return value == null ? 0 : value.stripTrailingZeros().hashCode();
    }

    RepeatedRows tickets() {
        return tickets;
    }

    /** Whether the sheets hold the same rows throughout. */
    boolean equalsAll(RowIdentity other) {
        return java.util.Arrays.equals(digests, other.digests)
                && java.util.Arrays.equals(counts, other.counts)
                && java.util.Arrays.stream(counts).sum() > 0;
    }

    /** Marks the days whose rows an earlier sheet without tickets holds all. */
    boolean markRepeated(RowIdentity earlier, boolean clock, boolean[] days) {
        boolean all = equalsAll(earlier);
        boolean any = false;
        for (int day = 0; day < DAYS; day++) {
            boolean equal =
                    counts[day] > 0 && counts[day] == earlier.counts[day] && digests[day] == earlier.digests[day];
            boolean sure = all || (day > 0 && (clock || counts[day] >= FEW));
            if (!hasTickets && equal && sure) {
                days[day] = true;
                any = true;
            }
        }
        return any;
    }

    static boolean[] noDays() {
        return new boolean[DAYS];
    }
}
