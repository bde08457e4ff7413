package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Money;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class JournalTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    private static Money thirds(int number) {
        return Money.of(String.valueOf(number)).dividedBy(heeltap.quantity.Exact.of(3));
    }

    /** In thirds, so that every entry is rounded; what the invoices come to is what they are spread over. */
    @Property
    void debitsEqualCreditsToTheCent(
            @ForAll short stock, @ForAll short spirits, @ForAll short fresh, @ForAll short lost, @ForAll short tax) {
        Map<String, Money> groups = new TreeMap<>(Map.of("Spirits", thirds(spirits), "Fresh", thirds(fresh)));
        Money invoices = thirds(stock + spirits + fresh + lost + lost + 7 + tax);
        List<Journal.Entry> entries = Journal.of(
                new Journal.MonthMoney(
                        thirds(stock),
                        groups,
                        Money.ZERO,
                        thirds(lost),
                        Money.ZERO,
                        thirds(-lost),
                        thirds(7),
                        thirds(tax),
                        invoices,
                        0),
                EUR);
        Money debit = entries.stream().map(Journal.Entry::debit).reduce(Money.ZERO, Money::plus);
        Money credit = entries.stream().map(Journal.Entry::credit).reduce(Money.ZERO, Money::plus);
        assertThat(debit).isEqualTo(credit);
        assertThat(entries)
                .allMatch(entry -> entry.debit().isZero() != entry.credit().isZero());
        assertThat(purchases(entries)).isEqualTo(Money.of(invoices.rounded(EUR)));
    }

    private static Money purchases(List<Journal.Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.account() == Journal.Account.PURCHASES)
                .map(entry -> entry.credit().minus(entry.debit()))
                .reduce(Money.ZERO, Money::plus);
    }

    /** What cannot come of rounding stays to be seen: 10 of goods against invoices of 11. */
    @Test
    void hidesNoDifference() {
        List<Journal.Entry> entries = Journal.of(
                new Journal.MonthMoney(
                        Money.ZERO,
                        Map.of("Spirits", Money.of("10")),
                        Money.ZERO,
                        Money.ZERO,
                        Money.ZERO,
                        Money.ZERO,
                        Money.ZERO,
                        Money.ZERO,
                        Money.of("11"),
                        3),
                EUR);
        assertThat(purchases(entries)).isEqualTo(Money.of("10"));
    }
}
