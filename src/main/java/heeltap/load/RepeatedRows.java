package heeltap.load;

import java.util.Arrays;

/**
 * Remembers rows of the sheets read so far by a 64-bit hash of what identifies them (FNV-1a, from memory), eight bytes a
 * row: exact rows would cost a hundred.
 */
final class RepeatedRows {
    private static final long OFFSET = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private long[] table = new long[1 << 10];
    private int size;

    static long hash(long seed, String text) {
        long hash = seed == 0 ? OFFSET : seed;
        for (int i = 0; i < text.length(); i++) {
            hash = (hash ^ text.charAt(i)) * PRIME;
        }
        return spread((hash ^ 0x1f) * PRIME);
    }

    static long hash(long seed, long value) {
        return spread((seed ^ value) * PRIME);
    }

    private static long spread(long hash) {
        long mixed = (hash ^ (hash >>> 32)) * 0x9E3779B97F4A7C15L;
        long result = mixed ^ (mixed >>> 29);
        return result == 0 ? 1 : result;
    }

    boolean contains(long hash) {
        for (int i = slot(hash, table.length); table[i] != 0; i = (i + 1) & (table.length - 1)) {
            if (table[i] == hash) {
                return true;
            }
        }
        return false;
    }

    void add(long hash) {
        if (size * 2 >= table.length) {
            long[] old = table;
            table = new long[old.length * 2];
            Arrays.stream(old).filter(h -> h != 0).forEach(h -> put(table, h));
        }
        size += put(table, hash) ? 1 : 0;
    }

    void addAll(RepeatedRows other) {
        Arrays.stream(other.table).filter(h -> h != 0).forEach(this::add);
    }

    private static boolean put(long[] table, long hash) {
        int i = slot(hash, table.length);
        while (table[i] != 0) {
            if (table[i] == hash) {
                return false;
            }
            i = (i + 1) & (table.length - 1);
        }
        table[i] = hash;
        return true;
    }

    private static int slot(long hash, int length) {
        return (int) (hash >>> 20) & (length - 1);
    }
}
