package heeltap.load;

import static heeltap.load.MonthFixture.bar;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.FileAccount;
import heeltap.record.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What must hold for any export. */
class SalesPropertiesTest {
    private static final String HEADING = "Ticket|Date|Item|Qty|Gross|Discount|Type";

    @Provide
    Arbitrary<List<String>> rows() {
        Arbitrary<String> row = Combinators.combine(
                        Arbitraries.integers().between(1, 31),
                        Arbitraries.integers().between(0, 23),
                        Arbitraries.of("Negroni", "Daiquiri", "Cola", "Cover charge", "Nergoni"),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.integers().between(0, 5000),
                        Arbitraries.of("Sale", "Refund", "Comp", "Void", ""))
                .as((day, hour, item, quantity, cents, kind) -> String.format(
                        Locale.ROOT,
                        "T%d|2026-10-%02d %02d:15|%s|%d|%d.%02d|0.00|%s",
                        day * 100 + hour,
                        day,
                        hour,
                        item,
                        quantity,
                        cents / 100,
                        cents % 100,
                        kind));
        return row.list().ofMinSize(1).ofMaxSize(40);
    }

    private static Month load(String name, List<String> rows) {
        List<String> lines = new ArrayList<>(List.of(HEADING));
        lines.addAll(rows);
        return bar().file(name, lines.toArray(String[]::new)).load().value();
    }

    /** Quantity and money by item, day and kind, whatever sheet they stand in. */
    private static Map<String, String> totals(Month month) {
        Map<String, Exact> quantities = new TreeMap<>();
        Map<String, Money> moneys = new TreeMap<>();
        month.sales().forEach(total -> {
            String key = total.item() + " " + total.day() + " " + total.kind();
            quantities.merge(key, total.quantity(), Exact::plus);
            Money net = total.net();
            moneys.merge(key, net == null ? Money.ZERO : net, Money::plus);
        });
        Map<String, String> text = new TreeMap<>();
        quantities.forEach((key, value) -> text.put(key, value + " " + moneys.get(key)));
        return text;
    }

    @Property(tries = 60)
    void theOrderOfRowsDoesNotMatter(@ForAll("rows") List<String> rows, @ForAll long seed) {
        List<String> shuffled = new ArrayList<>(rows);
        Collections.shuffle(shuffled, new Random(seed));

        assertThat(totals(load("sales.csv", shuffled))).isEqualTo(totals(load("sales.csv", rows)));
    }

    @Property(tries = 60)
    void splittingAFileBetweenTicketsChangesNothing(@ForAll("rows") List<String> rows) {
        List<String> voids = rows.stream().filter(row -> row.endsWith("Void")).toList();
        List<String> sorted =
                rows.stream().filter(row -> !voids.contains(row)).sorted().toList();
        int cut = sorted.size() / 2;
        while (cut > 0 && cut < sorted.size() && ticket(sorted.get(cut)).equals(ticket(sorted.get(cut - 1)))) {
            cut++;
        }
        List<String> first = new ArrayList<>(List.of(HEADING));
        first.addAll(sorted.subList(0, cut));
        List<String> second = new ArrayList<>(List.of(HEADING));
        second.addAll(sorted.subList(cut, sorted.size()));
        Month split = bar().file("sales-1.csv", first.toArray(String[]::new))
                .file("sales-2.csv", second.toArray(String[]::new))
                .load()
                .value();

        assertThat(totals(split)).isEqualTo(totals(load("sales.csv", sorted)));
    }

    private static String ticket(String row) {
        return row.substring(0, row.indexOf('|'));
    }

    /** A damaged cell never changes a figure in silence: its row is as before, or set aside by number. */
    @Property(tries = 120)
    void damageIsExactOrNamed(
            @ForAll("rows") List<String> rows,
            @ForAll("damage") String damage,
            @ForAll("columns") int column,
            @ForAll("positions") int position) {
        List<String> clean = rows.stream().filter(row -> !row.endsWith("Void")).toList();
        if (clean.isEmpty()) {
            return;
        }
        int hit = position % clean.size();
        String[] cells = clean.get(hit).split("\\|", -1);
        cells[column] = damage;
        List<String> damaged = new ArrayList<>(clean);
        damaged.set(hit, String.join("|", cells));
        List<String> without = new ArrayList<>(clean);
        without.remove(hit);
        Month month = load("sales.csv", damaged);

        boolean named = month.setAside().stream().anyMatch(row -> row.place().row() == hit + 2);
        assertThat(totals(month))
                .isEqualTo(named ? totals(load("sales.csv", without)) : totals(load("sales.csv", clean)));
        holds(month.files().get(0));
    }

    @Provide
    Arbitrary<String> damage() {
        return Arbitraries.of("#REF!", "??", "x1", "1.2.3", "--", "12..5", "n/a");
    }

    /** Date, quantity and gross. */
    @Provide
    Arbitrary<Integer> columns() {
        return Arbitraries.of(1, 3, 4);
    }

    @Provide
    Arbitrary<Integer> positions() {
        return Arbitraries.integers().between(0, 1000);
    }

    private static void holds(FileAccount account) {
        assertThat(account.rows()).isEqualTo(account.used() + account.ignored() + account.setAside());
        Money used = account.usedMoney();
        Money ignored = account.ignoredMoney();
        Money aside = account.setAsideMoney();
        assertThat(used).isNotNull();
        assertThat(ignored).isNotNull();
        assertThat(aside).isNotNull();
        if (used != null && ignored != null && aside != null) {
            assertThat(used.plus(ignored).plus(aside)).isEqualTo(account.money());
        }
    }

    @Property(tries = 10)
    void theLocaleOfTheMachineDoesNotMatter(@ForAll("rows") List<String> rows) {
        Locale before = Locale.getDefault();
        Map<String, String> expected = totals(load("sales.csv", rows));
        try {
            for (String tag : List.of("tr-TR", "de-DE", "ar-EG")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(totals(load("sales.csv", rows))).isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
