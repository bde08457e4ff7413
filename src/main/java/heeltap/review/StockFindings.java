package heeltap.review;

import heeltap.document.Finding;
import heeltap.match.Match;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.SetAside;
import heeltap.record.Setting;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.stock.Reconciliation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What counts, purchases and prices have to say, each in one sentence with its money. */
final class StockFindings {
    private final ReviewFigures review;
    private final Words words;
    private final List<Finding> findings = new ArrayList<>();

    private StockFindings(ReviewFigures review, Words words) {
        this.review = review;
        this.words = words;
    }

    /** In no order of weight. */
    static List<Finding> of(ReviewFigures review, Words words) {
        StockFindings list = new StockFindings(review, words);
        list.priceMoves();
        list.oddInvoices();
        list.slowStock();
        list.givenTwice();
        list.leftOut();
        list.badCounts();
        list.countsSetAside();
        list.invoicesSetAside();
        return list.findings;
    }

    private void add(String section, @Nullable Money amount, String key, Object... printed) {
        findings.add(new Finding(words.say(key, printed), amount, section));
    }

    private void priceMoves() {
        for (PriceMove move : PriceMove.of(review.book(), review.months())) {
            add(
                    Layout.COSTS,
                    move.monthly().abs(),
                    move.percent().isPositive() ? "finding.dearer" : "finding.cheaper",
                    move.ingredient().name(),
                    words.percent(move.percent().abs()),
                    words.money(move.monthly().abs()),
                    move.hits(words),
                    move.purchase().place().toString());
        }
    }

    private void oddInvoices() {
        for (InvoiceFindings invoice : InvoiceFindings.of(review)) {
            Money total = invoice.tie().total();
            String number = invoice.tie().invoice().number();
            String supplier = invoice.tie().invoice().supplier();
            String place = invoice.tie().invoice().place().toString();
            invoice.first()
                    .ifPresent(first -> add(
                            Layout.INVOICES,
                            total.abs(),
                            "finding.invoice-twice",
                            number,
                            supplier,
                            first.toString(),
                            place,
                            words.money(total)));
            invoice.alike()
                    .ifPresent(other -> add(
                            Layout.INVOICES,
                            total.abs(),
                            "finding.invoice-alike",
                            number,
                            supplier,
                            place,
                            other.supplier(),
                            words.money(total)));
            if (invoice.spread()) {
                add(
                        Layout.INVOICES,
                        total.abs(),
                        "finding.invoice-spread",
                        number,
                        supplier,
                        place,
                        words.money(total),
                        invoice.spreadOver(words));
            }
            if (invoice.outside() || invoice.undated()) {
                add(
                        Layout.INVOICES,
                        total.abs(),
                        invoice.outside() ? "finding.invoice-outside" : "finding.invoice-undated",
                        number,
                        supplier,
                        place,
                        words.money(total),
                        Optional.ofNullable(invoice.tie().invoice().date())
                                .map(words::date)
                                .orElse(""));
            }
        }
    }

    /** Goods that lie too long, all in one sentence with the dearest of them. */
    private void slowStock() {
        List<StockAdvice> slow = review.advice().values().stream()
                .filter(StockAdvice::isSlow)
                .filter(line -> line.closingValue().isPositive())
                .sorted(Comparator.comparing(StockAdvice::closingValue, Comparator.reverseOrder()))
                .toList();
        if (slow.isEmpty()) {
            return;
        }
        Money held = slow.stream().map(StockAdvice::closingValue).reduce(Money.ZERO, Money::plus);
        add(
                Layout.STOCK_ITEMS,
                held,
                slow.size() == 1 ? "finding.slow-one" : "finding.slow",
                String.valueOf(slow.size()),
                words.money(held),
                words.count(review.book().settings().get(Setting.SLOW_STOCK_DAYS)),
                slow.get(0).ingredient().name(),
                words.money(slow.get(0).closingValue()));
    }

    /**
     * The same serve given away at the till and written down as a loss, of staff or complimentary: it would be taken from
     * stock twice. Of each day as many as both say; an entry without a day is held against the whole month.
     */
    private void givenTwice() {
        Map<String, List<CountedRow>> byDrink = new TreeMap<>();
        Set<Place> seen = new HashSet<>();
        review.now().counts().stream()
                .filter(row -> row.itemKind() == Match.Kind.DRINK && CountedRow.GIFTS.contains(row.kind()))
                .filter(row -> seen.add(row.place()))
                .forEach(row -> byDrink.computeIfAbsent(row.item(), name -> new ArrayList<>())
                        .add(row));
        byDrink.forEach((drink, rows) -> {
            DrinkSales sales =
                    Optional.ofNullable(review.now().sales().get(drink)).orElseThrow();
            Exact twice = givenTwice(rows, sales);
            if (twice.isPositive()) {
                Money cost = review.now()
                        .costs()
                        .drinkOn(drink, review.now().lastDay())
                        .cost()
                        .orElse(Money.ZERO)
                        .times(twice);
                List<String> places = rows.stream()
                        .filter(row -> givenTwice(List.of(row), sales).isPositive())
                        .map(row -> row.place().toString())
                        .toList();
                add(
                        Layout.STOCK_ITEMS,
                        cost,
                        "finding.given-twice",
                        drink,
                        String.join("; ", places),
                        words.money(cost),
                        words.count(twice));
            }
        });
    }

    private static Exact givenTwice(List<CountedRow> rows, DrinkSales sales) {
        Exact written = Exact.ZERO;
        Map<LocalDate, Exact> byDay = new TreeMap<>();
        for (CountedRow row : rows) {
            if (row.day() == null) {
                written = written.plus(row.number());
            } else {
                byDay.merge(row.day(), row.number(), Exact::plus);
            }
        }
        Exact twice = Exact.ZERO;
        for (Map.Entry<LocalDate, Exact> day : byDay.entrySet()) {
            twice = twice.plus(day.getValue().min(sales.givenByDay().getOrDefault(day.getKey(), Exact.ZERO)));
        }
        return twice.plus(written.min(sales.complimentary().minus(twice)));
    }

    /** Counted and uncounted goods in one group: the group's actual figures are of the counted ones alone. */
    private void leftOut() {
        List<Reconciliation> lines = StockGroups.leftOut(review.now());
        if (lines.isEmpty()) {
            return;
        }
        Money cost = lines.stream()
                .map(line -> line.theoreticalCost().orElse(Money.ZERO))
                .reduce(Money.ZERO, Money::plus);
        add(
                Layout.STOCK,
                cost,
                lines.size() == 1 ? "finding.left-out-one" : "finding.left-out",
                String.valueOf(lines.size()),
                lines.stream().map(line -> line.movement().ingredient()).collect(Collectors.joining("; ")),
                words.money(cost));
    }

    /** A count that cannot be: its ingredient shows no actual use, or one that nobody should believe. */
    private void badCounts() {
        for (Problem problem : review.now().countProblems()) {
            add(
                    Layout.STOCK_ITEMS,
                    null,
                    "finding.bad-count",
                    problem.reason(),
                    problem.place().toString(),
                    problem.remedy());
        }
    }

    /** Rows of invoices that were set aside for another reason than their name: their goods are in no figure. */
    private void invoicesSetAside() {
        List<SetAside> rows = setAside("invoices").stream()
                .filter(row -> row.nearest().isEmpty())
                .toList();
        if (!rows.isEmpty()) {
            Money money = rows.stream()
                    .flatMap(row -> Optional.ofNullable(row.money()).stream())
                    .reduce(Money.ZERO, Money::plus);
            add(
                    Layout.SET_ASIDE,
                    money.abs(),
                    rows.size() == 1 ? "finding.invoice-aside" : "finding.invoices-aside",
                    String.valueOf(rows.size()),
                    words.money(money),
                    rows.get(0).place().toString(),
                    rows.get(0).reason());
        }
    }

    private List<SetAside> setAside(String kind) {
        return review.now().written().setAside().stream()
                .filter(row -> review.files().stream()
                        .anyMatch(file -> file.kind().startsWith(kind)
                                && file.place().file().equals(row.place().file())
                                && file.place().sheet().equals(row.place().sheet())))
                .sorted(Comparator.comparing(SetAside::place))
                .toList();
    }

    /** Rows of counts that were set aside leave their goods uncounted. */
    private void countsSetAside() {
        List<SetAside> rows = setAside("stock").stream()
                // these are told as counts that cannot be
                .filter(row -> !review.now().late().contains(row))
                .toList();
        if (!rows.isEmpty()) {
            SetAside first = rows.get(0);
            add(
                    Layout.STOCK_ITEMS,
                    null,
                    rows.size() == 1 ? "finding.count-aside" : "finding.counts-aside",
                    String.valueOf(rows.size()),
                    first.place().toString(),
                    first.text(),
                    first.reason());
        }
    }
}
