package heeltap.load;

import heeltap.record.SaleKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What tells the rows of one sheet of sales from those of another: ticket, time and item where there are tickets, the
 * rows of a whole ticket where one of the sheets has no times; else all rows of a day together.
 */
final class RowIdentity {
    private static final int DAYS = 32;
    /** So few equal rows in a day may be chance where no time of day is printed. */
    private static final int FEW = 3;

    private final RepeatedRows tickets = new RepeatedRows();
    private final long[] digests = new long[DAYS];
    private final int[] counts = new int[DAYS];
    private final TicketSums sums = new TicketSums();
    private final ItemKeys keys;
    private boolean hasTickets;

    RowIdentity(ItemKeys keys) {
        this.keys = keys;
    }

    /**
     * Notes the row, and says whether an earlier sheet has it.
     *
     * @param wholes tickets that an earlier sheet has with all of their rows
     */
    boolean isRepeated(Fields fields, SaleRow sale, RepeatedRows earlier, boolean[] repeatedDays, RepeatedRows wholes) {
        String ticket = ItemKeys.ticket(fields);
        long item = RepeatedRows.hash(0, keys.key(fields));
        long hash = item;
        if (sale.moment != null) {
            hash = RepeatedRows.hash(hash, sale.moment.date().toEpochDay());
            hash = RepeatedRows.hash(
                    hash, sale.moment.time() == null ? -1 : sale.moment.time().toSecondOfDay());
        }
        hash = RepeatedRows.hash(hash, ticket);
        hash = sale.kind == SaleKind.REFUND ? RepeatedRows.hash(hash, sale.kind.name()) : hash;
        int day = index(sale.day);
        digests[day] += full(hash, sale);
        counts[day]++;
        if (ticket.isEmpty()) {
            return repeatedDays[day];
        }
        hasTickets = true;
        tickets.add(hash);
        long whole = RepeatedRows.hash(RepeatedRows.hash(0, ticket), day);
        sums.add(whole, full(item, sale));
        return earlier.contains(hash) || wholes.contains(whole);
    }

    private static long full(long seed, SaleRow sale) {
        long hash = RepeatedRows.hash(RepeatedRows.hash(seed, plain(sale.quantity)), plain(sale.money));
        return RepeatedRows.hash(hash, sale.kind.name());
    }

    TicketSums sums() {
        return sums;
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
