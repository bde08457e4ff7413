package heeltap.review;

import heeltap.document.CellValue;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Ingredient;
import heeltap.record.SaleTotal;
import heeltap.review.StockTables.StockMoney;
import heeltap.review.StockTables.Sums;
import heeltap.stock.InvoiceTie;
import heeltap.stock.Journal;
import heeltap.stock.Movement;
import heeltap.stock.Reconciliation;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Sums of the review that must agree, each computed two ways. */
final class Controls {
    private Controls() {}

    static List<Control> of(ReviewFigures review, Words words) {
        List<Control> controls = new ArrayList<>();
        sales(review, controls);
        stock(review, words, controls);
        invoices(review, controls);
        purchases(review, controls);
        traces(review, controls);
        journal(review, controls);
        changes(review, words, controls);
        return controls;
    }

    /** The till's net money by row against the drinks' net sales; only where every row carries money. */
    private static void sales(ReviewFigures review, List<Control> controls) {
        List<SaleTotal> rows = review.now().written().sales();
        if (rows.stream().anyMatch(row -> row.net() == null)) {
            return;
        }
        Money till = Money.ZERO;
        for (SaleTotal row : rows) {
            Money net = Objects.requireNonNull(row.net());
            switch (row.kind()) {
                case SALE -> till = till.plus(net);
                case REFUND -> till = till.minus(net);
                case VOID, COMPLIMENTARY -> {
                    // no net sales
                }
            }
        }
        controls.add(Control.of(
                "net sales of the till = net sales of the drinks",
                month(review),
                till,
                review.now().netSales()));
        Currency currency = review.currency();
        Money groups = StockGroups.netSales(review.book(), review.now(), currency).values().stream()
                .reduce(Money.ZERO, Money::plus);
        controls.add(Control.of(
                "net sales of the groups = net sales of the drinks",
                month(review),
                Money.of(review.now().netSales().rounded(currency)),
                groups));
    }

    private static void stock(ReviewFigures review, Words words, List<Control> controls) {
        Sums all = new Sums();
        Exact left = Exact.ZERO;
        for (Ingredient ingredient : review.book().ingredients()) {
            var line = Optional.ofNullable(review.now().stock().get(ingredient.name()))
                    .orElseThrow();
            if (line.valuation().isPresent()) {
                all.add(StockMoney.of(line, review.currency()));
                left = left.plus(line.actualUse()
                        .orElse(Exact.ZERO)
                        .minus(line.movement().theoreticalUse())
                        .minus(line.movement().recordedLosses())
                        .minus(line.unexplained().orElse(Exact.ZERO)));
            }
        }
        StockMoney sums = all.money();
        if (sums.actual().isEmpty()) {
            return;
        }
        Money in = sums.opening()
                .orElse(Money.ZERO)
                .plus(sums.purchases())
                .plus(sums.transfers().orElse(Money.ZERO));
        Money out = sums.actual().orElse(Money.ZERO).plus(sums.closing().orElse(Money.ZERO));
        controls.add(Control.of(
                "opening + purchases + transfers = cost of goods + closing",
                words.term("scope", "counted ingredients"),
                in,
                out));
        controls.add(Control.ofNumbers(
                "actual use = theoretical use + recorded losses + unexplained",
                words.term("scope", "counted ingredients"),
                Exact.ZERO,
                left));
    }

    private static void invoices(ReviewFigures review, List<Control> controls) {
        Currency currency = review.currency();
        for (InvoiceTie tie : review.now().ties()) {
            Money printed = tie.invoice().printedTotal();
            if (printed != null) {
                controls.add(Control.of(
                        "printed total = total of the lines",
                        (tie.invoice().supplier() + " " + tie.invoice().number()).strip(),
                        printed,
                        Money.of(tie.total().rounded(currency))));
            }
        }
    }

    private static void journal(ReviewFigures review, List<Control> controls) {
        Money debit = review.journal().stream().map(Journal.Entry::debit).reduce(Money.ZERO, Money::plus);
        Money credit = review.journal().stream().map(Journal.Entry::credit).reduce(Money.ZERO, Money::plus);
        controls.add(Control.of("debit = credit", month(review), debit, credit));
        Money invoices = review.now().ties().stream().map(InvoiceTie::total).reduce(Money.ZERO, Money::plus);
        Money purchases = review.journal().stream()
                .filter(entry -> entry.account() == Journal.Account.PURCHASES)
                .map(entry -> entry.credit().minus(entry.debit()))
                .reduce(Money.ZERO, Money::plus);
        controls.add(Control.of(
                "purchases of the journal = totals of the invoices",
                month(review),
                round(invoices, review.currency()),
                purchases));
    }

    /** What the invoices brought in against where it is shown to have gone. */
    private static void purchases(ReviewFigures review, List<Control> controls) {
        MonthFigures now = review.now();
        if (now.ties().isEmpty()) {
            return;
        }
        Currency currency = review.currency();
        controls.add(Control.of(
                "goods and delivery of the invoices = cost of their lines",
                month(review),
                round(sum(now, tie -> tie.goods().minus(tie.discount()).plus(tie.delivery())), currency),
                round(PurchaseTables.all(now), currency)));
        Money stocked = now.stock().values().stream()
                .map(Reconciliation::purchasesValue)
                .reduce(Money.ZERO, Money::plus);
        controls.add(Control.of(
                "cost of claimed lines = purchases of the stock",
                month(review),
                round(PurchaseTables.claimed(now), currency),
                round(stocked, currency)));
        Money balance = PurchaseTables.depositBalances(review.months()).values().stream()
                .map(deposit -> deposit.paid().minus(deposit.returned()))
                .reduce(Money.ZERO, Money::plus);
        controls.add(Control.of(
                "deposits of the invoices = change of the deposit balance",
                month(review),
                round(sum(now, InvoiceTie::deposit), currency),
                round(balance, currency)));
    }

    private static Money sum(MonthFigures month, Function<InvoiceTie, Money> part) {
        return month.ties().stream().map(part).reduce(Money.ZERO, Money::plus);
    }

    private static Money round(Money money, Currency currency) {
        return Money.of(money.rounded(currency));
    }

    /** Each ingredient's use by drink against its theoretical use, and its rows of counts against its stock. */
    private static void traces(ReviewFigures review, List<Control> controls) {
        Exact left = Exact.ZERO;
        Exact uncounted = Exact.ZERO;
        for (Ingredient ingredient : review.book().ingredients()) {
            String name = ingredient.name();
            Movement movement = Optional.ofNullable(review.now().stock().get(name))
                    .orElseThrow()
                    .movement();
            Exact byDrink = TraceTables.usersOf(name, review.now()).stream()
                    .map(Map.Entry::getValue)
                    .reduce(Exact.ZERO, Exact::plus);
            left = left.plus(movement.theoreticalUse().minus(byDrink).abs());
            Exact rows = review.now().counts().stream()
                    .filter(row -> row.used()
                            && row.ingredient().equals(name)
                            && row.kind().equals(CountedRow.CLOSING))
                    .flatMap(row -> row.base().stream())
                    .reduce(Exact.ZERO, Exact::plus);
            uncounted = uncounted.plus(
                    movement.closing().orElse(Exact.ZERO).minus(rows).abs());
        }
        controls.add(Control.ofNumbers("theoretical use = sum of the drinks' use", month(review), Exact.ZERO, left));
        controls.add(Control.ofNumbers("closing stock = sum of its counts", month(review), Exact.ZERO, uncounted));
    }

    private static void changes(ReviewFigures review, Words words, List<Control> controls) {
        for (LedgerTables.Chain chain : review.chains()) {
            MonthFigures before = review.months().stream()
                    .filter(month -> month.month().equals(chain.fromMonth()))
                    .findFirst()
                    .orElseThrow();
            Money steps = chain.printed().stream().reduce(Money.ZERO, Money::plus);
            controls.add(Control.of(
                    "steps = difference of " + chain.measure(),
                    new CellValue.Term(
                            chain.fromMonth() + " to " + month(review),
                            words.say("scope.months", chain.fromMonth(), month(review))),
                    printed(chain.measure(), review.now(), review).minus(printed(chain.measure(), before, review)),
                    steps));
        }
    }

    /** A month's figure as the tables print it. */
    private static Money printed(String measure, MonthFigures month, ReviewFigures review) {
        Money sales = StockGroups.netSales(review.book(), month, review.currency()).values().stream()
                .reduce(Money.ZERO, Money::plus);
        Money cost = new ChangeSides(review.book()).printedCostOfGoods(month, review.currency());
        return switch (measure) {
            case "net sales" -> sales;
            case "cost of goods" -> cost;
            default -> sales.minus(cost);
        };
    }

    private static String month(ReviewFigures review) {
        return review.now().month().toString();
    }
}
