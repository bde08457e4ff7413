package heeltap.load;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one sheet sold of each item, or of each item a day, to see whether a sheet without tickets and times only sums up
 * what another lists: a month's summary beside its lines.
 */
final class RepeatedSums {
    /** Fewer items may agree by chance where the money of their rows differs. */
    private static final int ENOUGH = 4;

    private final Map<String, Sum> byItem = new LinkedHashMap<>();
    private final Map<String, Sum> byDay = new LinkedHashMap<>();
    private boolean precise;

    private static final class Sum {
        private int rows;
        private BigDecimal quantity = BigDecimal.ZERO;
        private @Nullable BigDecimal money;
        private @Nullable BigDecimal net;

        void add(Sum other) {
            rows += other.rows;
            quantity = quantity.add(other.quantity);
            money = plus(money, other.money);
            net = plus(net, other.net);
        }

        private static @Nullable BigDecimal plus(@Nullable BigDecimal a, @Nullable BigDecimal b) {
            return a == null ? b : b == null ? a : a.add(b);
        }

        boolean hasMoneyOf(Sum other) {
            return money == null || other.money == null || same(money, other.money) || same(net, other.net);
        }

        private static boolean same(@Nullable BigDecimal a, @Nullable BigDecimal b) {
            return a != null && b != null && a.compareTo(b) == 0;
        }
    }

    /** @param precise whether its rows have tickets or times */
    void precise(boolean precise) {
        this.precise = precise;
    }

    /** Adds a row that counts; refunds take off. */
    void add(String item, SaleRow sale) {
        BigDecimal quantity = sale.quantity;
        if (item.isEmpty() || quantity == null || RowWords.isFolded("total", item)) {
            return;
        }
        boolean back = sale.kind == heeltap.record.SaleKind.REFUND;
        Sum row = new Sum();
        row.rows = 1;
        row.quantity = signed(quantity, back);
        row.money = sale.money == null ? null : signed(sale.money, back);
        row.net = sale.net == null ? null : signed(sale.net, back);
        byItem.computeIfAbsent(item, k -> new Sum()).add(row);
        if (sale.day != null) {
            byDay.computeIfAbsent(sale.day + " " + item, k -> new Sum()).add(row);
        }
    }

    private static BigDecimal signed(BigDecimal value, boolean back) {
        return back ? value.abs().negate() : value;
    }

    /** All of several sheets together. */
    static RepeatedSums together(List<RepeatedSums> sheets) {
        RepeatedSums all = new RepeatedSums();
        for (RepeatedSums sheet : sheets) {
            sheet.byItem.forEach((item, sum) ->
                    all.byItem.computeIfAbsent(item, k -> new Sum()).add(sum));
            sheet.byDay.forEach((item, sum) ->
                    all.byDay.computeIfAbsent(item, k -> new Sum()).add(sum));
            all.precise |= sheet.precise;
        }
        return all;
    }

    /** Whether this sheet only sums up the other. */
    boolean repeats(RepeatedSums other) {
        boolean dated = !byDay.isEmpty();
        if (precise || byItem.isEmpty() || (dated && other.byDay.isEmpty())) {
            return false;
        }
        return dated ? repeats(byDay, other.byDay, other.precise) : repeats(byItem, other.byItem, other.precise);
    }

    private static boolean repeats(Map<String, Sum> own, Map<String, Sum> others, boolean precise) {
        int equal = 0;
        int counted = 0;
        int rows = 0;
        int otherRows = 0;
        BigDecimal sold = BigDecimal.ZERO;
        for (Map.Entry<String, Sum> entry : own.entrySet()) {
            Sum sum = entry.getValue();
            Sum other = others.get(entry.getKey());
            rows += sum.rows;
            sold = sold.add(sum.quantity.abs());
            if (other != null && other.quantity.compareTo(sum.quantity) == 0) {
                otherRows += other.rows;
                counted++;
                equal += sum.hasMoneyOf(other) ? 1 : 0;
            }
        }
        int items = own.size();
        boolean finer = otherRows > rows || precise;
        boolean chance = items < ENOUGH && sold.compareTo(BigDecimal.TEN) < 0;
        boolean all = equal == items || (counted == items && items >= ENOUGH);
        boolean most = equal > ENOUGH && equal * 5L >= items * 4L;
        return finer && !chance && (all || most);
    }

    /** What of several sheets each repeats; a sheet that repeats one is no witness for another. */
    static <S> Map<S, String> find(Map<S, RepeatedSums> sheets, java.util.function.Function<S, String> name) {
        Map<S, String> found = new HashMap<>();
        for (Map.Entry<S, RepeatedSums> sheet : sheets.entrySet()) {
            List<Map.Entry<S, RepeatedSums>> others = sheets.entrySet().stream()
                    .filter(other -> other != sheet && !other.getKey().equals(sheet.getKey()))
                    .filter(other -> !found.containsKey(other.getKey()))
                    .toList();
            for (Map.Entry<S, RepeatedSums> other : others) {
                if (sheet.getValue().repeats(other.getValue())) {
                    found.putIfAbsent(sheet.getKey(), name.apply(other.getKey()));
                }
            }
            RepeatedSums all = together(others.stream().map(Map.Entry::getValue).toList());
            if (others.size() > 1
                    && !found.containsKey(sheet.getKey())
                    && sheet.getValue().repeats(all)) {
                found.put(
                        sheet.getKey(),
                        String.join(
                                ", ",
                                others.stream()
                                        .map(other -> name.apply(other.getKey()))
                                        .toList()));
            }
        }
        return found;
    }
}
