package heeltap.load;

import heeltap.record.SaleKind;
import heeltap.source.Place;
import heeltap.source.ProblemKind;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which rows are cancelled by rows of kind void. A void printed negative cancels the row of the same ticket, item,
 * quantity and money where that is printed too. One printed positive does so only if each positive void of the sheet has
 * such a row; else it marks the cancelled row itself. What cancels no row of its sheet may cancel one of another, as all
 * rows of a sheet of voids do.
 */
final class Voids {
    private final Layout layout;
    private final Map<Key, Count> counts = new HashMap<>();
    private final boolean ofVoids;
    private final VoidsElsewhere elsewhere;
    private boolean positiveCancels;

    /** What a void and the row it cancels have in common. */
    private record Key(
            String ticket,
            String item,
            String code,
            @Nullable Object day,
            BigDecimal quantity,
            BigDecimal money) {}

    /** Rows with one key. */
    private static final class Count {
        private int negative;
        private int positive;
        private int sales;
        private int left;
        private int open;
    }

    Voids(Layout layout, boolean ofVoids, VoidsElsewhere elsewhere) {
        this.layout = layout;
        this.ofVoids = ofVoids;
        this.elsewhere = elsewhere;
    }

    /** Called for each row, first to find the voids, then to count the rows they may cancel. */
    void see(Fields fields, SaleRow sale, boolean counting) {
        if (sale.flaw != null || sale.quantity == null) {
            return;
        }
        if (sale.kind == SaleKind.VOID && !counting) {
            Count count = counts.computeIfAbsent(key(fields, sale), k -> new Count());
            boolean back = sale.quantity.signum() < 0 || (sale.money != null && sale.money.signum() < 0);
            if (back) {
                count.negative++;
            } else if (!sale.isMarkedVoid() && layout.has(Field.TICKET)) {
                count.positive++;
            }
        } else if (counting && sale.kind != SaleKind.VOID && !counts.isEmpty()) {
            Count count = counts.get(key(fields, sale));
            if (count != null) {
                count.sales++;
            }
        }
    }

    /** Called for each row once all are counted: what cancels nothing here may cancel a row of another sheet. */
    void seeOpen(Fields fields, SaleRow sale, Place place) {
        if (sale.flaw != null || sale.quantity == null || sale.kind != SaleKind.VOID || !fields.has(Field.TICKET)) {
            return;
        }
        Count count = ofVoids ? null : counts.get(key(fields, sale));
        boolean back = sale.quantity.signum() < 0 || (sale.money != null && sale.money.signum() < 0);
        if (ofVoids || (back && count != null && count.open-- > 0)) {
            elsewhere.add(fields, sale, place);
        }
    }

    void decide(Layout sheet, ProblemLog log) {
        if (ofVoids) {
            counts.clear();
            return;
        }
        int positive = 0;
        positiveCancels = true;
        for (Count count : counts.values()) {
            positive += count.positive;
            positiveCancels &= count.sales - count.negative >= count.positive;
        }
        for (Count count : counts.values()) {
            count.open = Math.max(0, count.negative - count.sales);
            count.left = Math.min(count.sales, count.negative + (positiveCancels ? count.positive : 0));
        }
        if (positive > 0) {
            log.notice(
                    ProblemKind.VALUE_AMBIGUOUS,
                    sheet.column(Field.KIND),
                    "",
                    positive + " voids are printed without a minus sign; "
                            + (positiveCancels
                                    ? "each was taken to cancel another row of its ticket, and both are left out."
                                    : "each was taken to be the cancelled row itself and is left out."),
                    "If this is not right, export the sales without voids.");
        }
    }

    /** Whether the row is cancelled by a void; each void cancels one row. */
    boolean cancels(Fields fields, SaleRow sale) {
        if (sale.kind == SaleKind.VOID) {
            return false;
        }
        Count count = counts.isEmpty() ? null : counts.get(key(fields, sale));
        if (count == null || count.left == 0) {
            return elsewhere.cancels(fields, sale);
        }
        count.left--;
        return true;
    }

    private Key key(Fields fields, SaleRow sale) {
        return new Key(
                fields.text(Field.TICKET),
                fields.text(Field.ITEM),
                fields.text(Field.CODE),
                layout.has(Field.TICKET) ? null : sale.day,
                plain(sale.quantity),
                plain(sale.money));
    }

    private static BigDecimal plain(@Nullable BigDecimal value) {
        return value == null ? BigDecimal.ZERO : value.abs().stripTrailingZeros();
    }
}
