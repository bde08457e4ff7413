package heeltap.cost;

import heeltap.mixture.Contents;
import heeltap.mixture.Mixtures;
import heeltap.quantity.Exact;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What the lines of an item come to together; lines without an amount add nothing.
 *
 * @param rows in the order of the sheet
 */
record RowSums(List<Row> rows) {
    /** Labour in what the lines use. */
    Exact minutes() {
        Exact minutes = Exact.ZERO;
        for (Row row : rows) {
            Exact taken = row.taken();
            if (row.supply() != null && taken != null) {
                minutes = minutes.plus(row.supply().minutes().times(taken));
            }
        }
        return minutes;
    }

    /** Ingredients as bought for all lines. */
    SortedMap<String, Exact> use() {
        SortedMap<String, Exact> use = new TreeMap<>();
        for (Row row : rows) {
            if (row.supply() != null) {
                addTimes(use, row.supply().use(), row.taken());
            }
        }
        return use;
    }

    /** Preparations through every level for all lines. */
    SortedMap<String, Exact> preparations() {
        SortedMap<String, Exact> use = new TreeMap<>();
        for (Row row : rows) {
            if (row.supply() != null) {
                addTimes(use, row.supply().preparations(), row.taken());
            }
        }
        return use;
    }

    private static void addTimes(Map<String, Exact> sum, Map<String, Exact> each, @Nullable Exact times) {
        if (times != null) {
            each.forEach((name, amount) -> sum.merge(name, amount.times(times), Exact::plus));
        }
    }

    /** All lines mixed, before anything is lost. */
    Contents contents() {
        return Mixtures.mix(rows.stream().map(Row::contents).toList());
    }

    /** g of things weighed of which nothing is known, which {@link #contents()} leaves out. */
    Exact unknownGrams() {
        return rows.stream()
                .filter(Row::fillsUnknown)
                .map(Row::value)
                .map(value -> value == null ? Exact.ZERO : value)
                .reduce(Exact.ZERO, Exact::plus);
    }

    SortedSet<String> allergens() {
        return gather(Supply::allergens);
    }

    SortedSet<String> unknown() {
        return gather(Supply::unknown);
    }

    SortedSet<String> published() {
        return gather(Supply::published);
    }

    private SortedSet<String> gather(Function<Supply, Set<String>> which) {
        SortedSet<String> all = new TreeSet<>();
        for (Row row : rows) {
            if (row.supply() != null) {
                all.addAll(which.apply(row.supply()));
            }
        }
        return all;
    }
}
