package heeltap.review;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Ingredient;
import heeltap.record.SaleTotal;
import heeltap.review.StockTables.StockMoney;
import heeltap.review.StockTables.Sums;
import heeltap.stock.InvoiceTie;
import heeltap.stock.Journal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Sums of the review that must agree, each computed two ways. */
final class Controls {
    private Controls() {}

    static List<Control> of(ReviewFigures review, Words words) {
        List<Control> controls = new ArrayList<>();
        sales(review, controls);
        stock(review, words, controls);
        invoices(review, controls);
        journal(review, controls);
        changes(review, controls);
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
                "opening + purchases + transfers = cost of goods + closing", words.say("controls.counted"), in, out));
        controls.add(Control.ofNumbers(
                "actual use = theoretical use + recorded losses + unexplained",
                words.say("controls.counted"),
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
        // each ingredient is rounded by itself: a cent for each is no difference
        Money slack = Money.of("0.01").times(Exact.of(review.now().stock().size() + 1L));
        Money difference = purchases.minus(invoices);
        controls.add(Control.of(
                "purchases of the journal = totals of the invoices",
                month(review),
                invoices,
                difference.abs().compareTo(slack) <= 0 ? invoices : purchases));
    }

    private static void changes(ReviewFigures review, List<Control> controls) {
        Currency currency = review.currency();
        for (LedgerTables.Chain chain : review.chains()) {
            Money steps = LedgerTables.printed(chain, currency).stream().reduce(Money.ZERO, Money::plus);
            controls.add(Control.of(
                    "steps = difference of " + chain.measure(),
                    month(review),
                    Money.of(chain.to().rounded(currency))
                            .minus(Money.of(chain.from().rounded(currency))),
                    steps));
        }
    }

    private static String month(ReviewFigures review) {
        return review.now().month().toString();
    }
}
