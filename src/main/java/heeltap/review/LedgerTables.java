package heeltap.review;

import heeltap.cost.Purchase;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.AccountName;
import heeltap.record.Book;
import heeltap.record.Folding;
import heeltap.record.Ingredient;
import heeltap.record.Loss;
import heeltap.review.StockTables.StockMoney;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.stock.InvoiceTie;
import heeltap.stock.Journal;
import heeltap.stock.MonthSide;
import heeltap.stock.Reconciliation;
import heeltap.stock.Step;
import heeltap.stock.Variances;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The journal, and what changed since the month before. */
final class LedgerTables {
    private LedgerTables() {}

    static List<Journal.Entry> entries(Book book, MonthFigures month, Currency currency) {
        Money stockChange = Money.ZERO;
        Money unexplained = Money.ZERO;
        Money given = Money.ZERO;
        Money transfers = Money.ZERO;
        Map<String, Money> costOfGoods = new LinkedHashMap<>();
        for (Ingredient ingredient : book.ingredients()) {
            Reconciliation line =
                    Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow();
            Money giftCost = line.unitValue()
                    .map(unit -> unit.times(givenAway(ingredient.name(), month)))
                    .orElse(Money.ZERO);
            StockMoney printed = StockMoney.of(line, currency);
            if (printed.actual().isPresent()) {
                stockChange = stockChange
                        .plus(printed.closing().orElse(Money.ZERO))
                        .minus(printed.opening().orElse(Money.ZERO));
                transfers = transfers.plus(printed.transfers().orElse(Money.ZERO));
                Money lost = printed.unexplained().orElse(Money.ZERO);
                unexplained = unexplained.plus(lost);
                given = given.plus(giftCost);
                costOfGoods.merge(
                        ingredient.group(), printed.actual().get().minus(lost).minus(giftCost), Money::plus);
            } else {
                // Nobody counted it: what was bought is taken as used.
                costOfGoods.merge(ingredient.group(), printed.purchases(), Money::plus);
            }
        }
        // Lines that were set aside, by their name or their pack, are in no stock: they are used as they are bought.
        Money others = cost(month, line -> !line.ignored() && (line.ingredient() == null || line.isSetAside()));
        costOfGoods.merge(StockGroups.NONE, others, Money::plus);
        return Journal.of(
                new Journal.MonthMoney(
                        stockChange,
                        costOfGoods,
                        cost(month, Purchase::ignored),
                        unexplained,
                        given,
                        transfers,
                        sum(month, InvoiceTie::deposit),
                        sum(month, InvoiceTie::tax),
                        sum(month, InvoiceTie::total),
                        3 * month.stock().size()),
                currency);
    }

    private static Money cost(MonthFigures month, Predicate<Purchase> lines) {
        return month.purchases().purchases().stream()
                .filter(lines)
                .map(Purchase::cost)
                .reduce(Money.ZERO, Money::plus);
    }

    /** Complimentary serves, and what was written down as staff or complimentary. */
    private static Exact givenAway(String ingredient, MonthFigures month) {
        Map<Loss.Reason, Exact> recorded = month.lost().recorded().getOrDefault(ingredient, Map.of());
        return month.use()
                .given()
                .getOrDefault(ingredient, Exact.ZERO)
                .plus(recorded.getOrDefault(Loss.Reason.STAFF, Exact.ZERO))
                .plus(recorded.getOrDefault(Loss.Reason.COMPLIMENTARY, Exact.ZERO));
    }

    private static Money sum(MonthFigures month, java.util.function.Function<InvoiceTie, Money> part) {
        return month.ties().stream().map(part).reduce(Money.ZERO, Money::plus);
    }

    static Table journal(List<Journal.Entry> entries, Book book, MonthFigures month, Words words) {
        Filling table = Shapes.JOURNAL
                .fill(words.texts())
                .totalFormula("debit", "SUM({debit:all})")
                .totalFormula("credit", "SUM({credit:all})");
        Money debit = Money.ZERO;
        Money credit = Money.ZERO;
        for (Journal.Entry entry : entries) {
            debit = debit.plus(entry.debit());
            credit = credit.plus(entry.credit());
            table.add(new Cells()
                    .set("account", accountName(entry, book, words))
                    .set("debit", positive(entry.debit()))
                    .set("credit", positive(entry.credit()))
                    .set("memo", CellValue.of(words.say(memo(entry), words.month(month.month()), entry.group()))));
        }
        return table.total(new Cells()
                        .set("account", CellValue.of(words.say("word.total")))
                        .set("debit", CellValue.of(debit))
                        .set("credit", CellValue.of(credit)))
                .done();
    }

    private static String memo(Journal.Entry entry) {
        String key = "memo." + entry.account().name().toLowerCase(Locale.ROOT);
        return entry.group().equals(StockGroups.NONE) ? key + "_none" : key;
    }

    private static CellValue positive(Money money) {
        return money.isZero() ? CellValue.BLANK : CellValue.of(money);
    }

    /** The bar's own name of the account, else ours; cost of goods bears its group. */
    private static CellValue accountName(Journal.Entry entry, Book book, Words words) {
        String group = entry.group().isEmpty() ? "" : " " + entry.group();
        String standard = entry.account().standardName();
        CellValue.Term ours = words.term("account", standard);
        return named(standard + group, book)
                .or(() -> named(standard, book).map(name -> name + group))
                .map(CellValue::of)
                .orElseGet(() -> new CellValue.Term(standard + group, ours.said() + group));
    }

    private static Optional<String> named(String account, Book book) {
        return book.accounts().stream()
                .filter(row -> Folding.fold(row.account()).equals(Folding.fold(account)))
                .map(AccountName::name)
                .findFirst();
    }

    /**
     * One chain of steps from one month's figure to another's.
     *
     * @param fromMonth the earlier month
     * @param from as printed elsewhere, in whole cents; so too {@code to}
     * @param steps unrounded
     * @param printed each step in whole cents; they add up to the difference
     */
    record Chain(String measure, YearMonth fromMonth, Money from, Money to, List<Step> steps, List<Money> printed) {}

    /** Net sales, cost of goods and margin explained, from the earlier month to the later. */
    static List<Chain> chains(MonthFigures before, MonthFigures now, ChangeSides sides, Currency currency) {
        MonthSide a = sides.of(before);
        MonthSide b = sides.of(now);
        Money costBefore = sides.printedCostOfGoods(before, currency);
        Money costNow = sides.printedCostOfGoods(now, currency);
        Money salesBefore = Money.of(before.netSales().rounded(currency));
        Money salesNow = Money.of(now.netSales().rounded(currency));
        List<Step> sales = Variances.netSales(a, b);
        List<Step> cost = Variances.costOfGoods(a, b);
        List<Money> printedSales =
                printed(sales, salesNow.minus(salesBefore), now.netSales().minus(before.netSales()), currency);
        List<Money> printedCost = printed(
                cost, costNow.minus(costBefore), sides.costOfGoods(now).minus(sides.costOfGoods(before)), currency);
        List<Step> margin = new ArrayList<>();
        List<Money> printedMargin = new ArrayList<>();
        for (Step.Effect effect : Step.Effect.values()) {
            Optional<Step> both = Stream.concat(sales.stream(), cost.stream().map(Step::negated))
                    .filter(step -> step.effect() == effect)
                    .reduce(Step::plus);
            if (both.isPresent()) {
                margin.add(both.get());
                // one effect reads the same in every chain
                printedMargin.add(of(effect, sales, printedSales).minus(of(effect, cost, printedCost)));
            }
        }
        YearMonth from = before.month();
        return List.of(
                new Chain("net sales", from, salesBefore, salesNow, sales, printedSales),
                new Chain("cost of goods", from, costBefore, costNow, cost, printedCost),
                new Chain(
                        "margin", from, salesBefore.minus(costBefore), salesNow.minus(costNow), margin, printedMargin));
    }

    private static Money of(Step.Effect effect, List<Step> steps, List<Money> printed) {
        Money sum = Money.ZERO;
        for (int i = 0; i < steps.size(); i++) {
            sum = steps.get(i).effect() == effect ? sum.plus(printed.get(i)) : sum;
        }
        return sum;
    }

    /** The printed steps add up to the printed difference to the cent: the largest step takes what rounding leaves. */
    static Table changes(MonthFigures now, List<Chain> chains, Words words) {
        Filling table = Shapes.CHANGES.fill(words.texts());
        for (Chain chain : chains) {
            for (int i = 0; i < chain.steps().size(); i++) {
                Step step = chain.steps().get(i);
                Cells cells = new Cells()
                        .set("measure", words.term("changes", chain.measure()))
                        .set("from", month(chain.fromMonth(), words))
                        .set("to", month(now.month(), words))
                        .set("effect", CellValue.of(effect(step, words)))
                        .set("amount", CellValue.of(chain.printed().get(i)));
                part(cells, "largest_drink", step.largestDrink());
                part(cells, "largest_ingredient", step.largestIngredient());
                table.add(cells);
            }
        }
        return table.done();
    }

    static String effect(Step step, Words words) {
        return words.say("effect." + step.effect().name().toLowerCase(Locale.ROOT));
    }

    private static CellValue month(YearMonth month, Words words) {
        return new CellValue.Term(month.toString(), words.month(month));
    }

    private static void part(Cells cells, String key, Optional<Step.Part> part) {
        part.ifPresent(largest ->
                cells.set(key, CellValue.of(largest.name())).set(key + "_amount", CellValue.of(largest.amount())));
    }

    /**
     * The steps in whole cents; the largest takes what rounding leaves of the printed difference. A gap between the steps
     * and the unrounded difference is left open, so that the check shows it.
     */
    private static List<Money> printed(List<Step> steps, Money difference, Money unrounded, Currency currency) {
        List<Money> printed = new ArrayList<>();
        Money sum = Money.ZERO;
        Money exact = Money.ZERO;
        int largest = 0;
        for (Step step : steps) {
            Money rounded = Money.of(step.amount().rounded(currency));
            if (!printed.isEmpty()
                    && rounded.abs().compareTo(printed.get(largest).abs()) > 0) {
                largest = printed.size();
            }
            printed.add(rounded);
            sum = sum.plus(rounded);
            exact = exact.plus(step.amount());
        }
        if (exact.equals(unrounded)) {
            printed.set(largest, printed.get(largest).plus(difference.minus(sum)));
        }
        return List.copyOf(printed);
    }
}
