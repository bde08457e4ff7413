package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.SaleKind;
import heeltap.source.Row;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Rows that take a discount off a whole ticket: shared over the ticket's used rows by their money. */
final class TicketDiscounts {
    private final Map<String, Ticket> tickets = new LinkedHashMap<>();

    /** A ticket with a discount. */
    private static final class Ticket {
        private final List<Discount> discounts = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();
        private BigDecimal money = BigDecimal.ZERO;
    }

    /** A row of discount, kept until its ticket is read. */
    record Discount(Row row, @Nullable BigDecimal quantity, BigDecimal money) {}

    /** A used row of a ticket with a discount. */
    private record Part(SaleSums sums, @Nullable LocalDate day, SaleKind kind, Money net) {}

    /**
     * Whether a row that names nothing known takes money off its ticket. A word of discount with more behind it, as in
     * {@code Discount 10%}, does so where it has a rate or its money is negative.
     */
    static boolean isOne(String item, String ticket, @Nullable BigDecimal money) {
        return !ticket.isEmpty()
                && money != null
                && money.signum() != 0
                && mayBe(item)
                && (money.signum() < 0
                        || RowWords.is("ticket discount", item)
                        || item.chars().anyMatch(Character::isDigit));
    }

    /** Whether a name is that of a discount or begins with a word of discount. */
    static boolean mayBe(String item) {
        String folded = TextFold.fold(item);
        int space = folded.indexOf(' ');
        return RowWords.isFolded("ticket discount", folded)
                || (space > 0 && RowWords.isFolded("discount word", folded.substring(0, space)));
    }

    /** Notes that a ticket has a discount, before its rows are read. */
    void want(String ticket) {
        tickets.computeIfAbsent(ticket, t -> new Ticket());
    }

    /** Keeps a row of discount; false where its ticket was not noted. */
    boolean add(String ticket, Discount discount) {
        Ticket of = tickets.get(ticket);
        return of != null && of.discounts.add(discount);
    }

    /** Keeps a used row where its ticket has a discount. */
    void use(String ticket, SaleSums sums, SaleRow sale) {
        Ticket of = tickets.isEmpty() ? null : tickets.get(ticket);
        BigDecimal money = sale.money;
        BigDecimal net = sale.net;
        if (of != null && money != null && net != null && money.signum() > 0) {
            of.money = of.money.add(money);
            Money withoutTax = sale.rate == null ? Money.of(net) : Money.of(net).withoutTax(Exact.of(sale.rate));
            of.parts.add(new Part(sums, sale.day, sale.kind, withoutTax));
        }
    }

    /**
     * Takes the discounts off: {@code net × discount ÷ money of the ticket} from each row.
     *
     * @param done told of each discount and whether its ticket could bear it
     */
    void share(java.util.function.BiConsumer<Discount, Boolean> done) {
        for (Ticket of : tickets.values()) {
            BigDecimal discount = BigDecimal.ZERO;
            for (Discount each : of.discounts) {
                discount = discount.add(each.money.abs());
            }
            boolean shared = of.money.signum() > 0 && of.money.compareTo(discount) >= 0;
            if (shared) {
                Exact part = Exact.of(discount).dividedBy(Exact.of(of.money));
                of.parts.forEach(row ->
                        row.sums.adjust(row.day, row.kind, row.net.times(part).negated()));
            }
            of.discounts.forEach(each -> done.accept(each, shared));
        }
    }
}
