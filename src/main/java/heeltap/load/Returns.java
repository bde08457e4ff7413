package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.source.ProblemKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was sold on the tickets that a sheet of returns names, so that returns can be taken off by ticket and item. */
final class Returns {
    private final Map<String, Sold> sold = new HashMap<>();

    /** What a ticket holds of an item. */
    static final class Sold {
        private BigDecimal quantity = BigDecimal.ZERO;
        private Money net = Money.ZERO;
        private boolean priced;
        private BigDecimal returned = BigDecimal.ZERO;
        private boolean refunded;
        private @Nullable LocalDate day;

        boolean isSold() {
            return quantity.signum() > 0;
        }

        /** Whether the sales themselves hold the refund. */
        boolean isRefunded() {
            return refunded;
        }

        @Nullable LocalDate day() {
            return day;
        }

        /** Takes some of it back; false where that is more than was sold. */
        boolean takeBack(BigDecimal back) {
            if (returned.add(back).compareTo(quantity) > 0) {
                return false;
            }
            returned = returned.add(back);
            return true;
        }

        /** Its money without tax for so many; null where the sales have no money. */
        @Nullable Money net(BigDecimal back) {
            return priced ? net.times(Exact.of(back)).dividedBy(Exact.of(quantity)) : null;
        }
    }

    /** Takes so many back, or says why nothing can be taken off. */
    static SaleRow.@Nullable Flaw takeBack(@Nullable Sold sold, BigDecimal quantity) {
        if (sold == null || !sold.isSold()) {
            return flaw(
                    ProblemKind.VALUE_DOUBTFUL,
                    Field.TICKET,
                    "No sale of this ticket and item was read, so nothing can be taken off.");
        }
        if (sold.isRefunded()) {
            return flaw(ProblemKind.ROW_REPEATED, Field.TICKET, "The sales hold this refund already.");
        }
        return sold.takeBack(quantity)
                ? null
                : flaw(ProblemKind.VALUE_DOUBTFUL, Field.QUANTITY, "More is returned than was sold on the ticket.");
    }

    private static SaleRow.Flaw flaw(ProblemKind kind, Field field, String reason) {
        return new SaleRow.Flaw(kind, field, "", reason);
    }

    static String key(Fields fields) {
        String item = fields.text(Field.ITEM);
        return fields.text(Field.TICKET) + "\u0000" + TextFold.fold(item.isEmpty() ? fields.text(Field.CODE) : item);
    }

    void want(String key) {
        sold.computeIfAbsent(key, k -> new Sold());
    }

    boolean isEmpty() {
        return sold.isEmpty();
    }

    @Nullable Sold find(String key) {
        return sold.get(key);
    }

    /** Counts a row of sales. */
    void count(String key, boolean refund, BigDecimal quantity, @Nullable Money net, @Nullable LocalDate day) {
        Sold of = sold.get(key);
        if (of == null) {
            return;
        }
        if (refund) {
            of.refunded = true;
            return;
        }
        of.quantity = of.quantity.add(quantity);
        of.net = net == null ? of.net : of.net.plus(net);
        of.priced |= net != null;
        of.day = of.day == null ? day : of.day;
    }
}
