package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Money;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class JournalTest {
    private static Money thirds(int number) {
        return Money.of(String.valueOf(number)).dividedBy(heeltap.quantity.Exact.of(3));
    }

    @Property
    void debitsEqualCreditsToTheCent(
            @ForAll int stock, @ForAll int spirits, @ForAll int fresh, @ForAll short lost, @ForAll short tax) {
        Map<String, Money> groups = new TreeMap<>(Map.of("Spirits", thirds(spirits), "Fresh", thirds(fresh)));
        List<Journal.Entry> entries = Journal.of(
                new Journal.MonthMoney(
                        thirds(stock), groups, thirds(lost), Money.ZERO, thirds(-lost), thirds(7), thirds(tax)),
                Currency.getInstance("EUR"));
        Money debit = entries.stream().map(Journal.Entry::debit).reduce(Money.ZERO, Money::plus);
        Money credit = entries.stream().map(Journal.Entry::credit).reduce(Money.ZERO, Money::plus);
        assertThat(debit).isEqualTo(credit);
        assertThat(entries)
                .allMatch(entry -> entry.debit().isZero() != entry.credit().isZero());
    }
}
