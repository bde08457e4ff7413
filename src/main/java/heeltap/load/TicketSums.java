package heeltap.load;

import org.jspecify.annotations.Nullable;

/** A digest of all rows of each ticket, sixteen bytes a ticket in an open table, so that whole tickets can be compared. */
final class TicketSums {
    private static final int FEW = 2;

    private long[] keys = new long[1 << 8];
    private long[] sums = new long[1 << 8];
    private int size;

    void add(long ticket, long row) {
        if (size * 2 >= keys.length) {
            grow();
        }
        int at = at(ticket);
        size += keys[at] == 0 ? 1 : 0;
        keys[at] = ticket;
        sums[at] += row;
    }

    private void grow() {
        long[] oldKeys = keys;
        long[] oldSums = sums;
        keys = new long[oldKeys.length * 2];
        sums = new long[oldKeys.length * 2];
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] != 0) {
                int at = at(oldKeys[i]);
                keys[at] = oldKeys[i];
                sums[at] = oldSums[i];
            }
        }
    }

    private int at(long ticket) {
        int at = (int) (ticket >>> 20) & (keys.length - 1);
        while (keys[at] != 0 && keys[at] != ticket) {
            at = (at + 1) & (keys.length - 1);
        }
        return at;
    }

    /** The tickets that both have with the same rows; null where too many of those in both differ to be the same. */
    @Nullable RepeatedRows equal(TicketSums other) {
        RepeatedRows equal = new RepeatedRows();
        int both = 0;
        int alike = 0;
        for (int i = 0; i < keys.length; i++) {
            int at = other.at(keys[i]);
            if (keys[i] != 0 && other.keys[at] == keys[i]) {
                both++;
                if (other.sums[at] == sums[i]) {
                    alike++;
                    equal.add(keys[i]);
                }
            }
        }
        return alike >= FEW && alike * 5L >= both * 4L ? equal : null;
    }
}
