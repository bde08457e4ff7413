package heeltap.review;

import heeltap.cost.Purchase;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.record.Setting;
import heeltap.stock.Reconciliation;
import heeltap.stock.Reorder;
import heeltap.stock.StockTurn;
import heeltap.stock.Valuation;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an ingredient's stock says of the month to come.
 *
 * @param line its month
 * @param turnover cost of goods over average stock; empty where it was not counted or not priced
 * @param daysInStock average stock over the cost of goods a day
 * @param slow whether what was counted lasts longer than the settings' days; empty where it was not counted
 * @param expectedUse of the coming month, as bought
 * @param lastPurchase the latest line that brought some; empty where none is known
 * @param unitCost of the last purchase, else what costs the month's drinks; empty where nothing prices it
 * @param pack what a pack holds, in the ingredient's measure; empty unknown
 * @param order empty without Par or without a closing count
 */
record StockAdvice(
        Ingredient ingredient,
        Reconciliation line,
        Optional<Exact> turnover,
        Optional<Exact> daysInStock,
        Optional<Boolean> slow,
        Exact expectedUse,
        Optional<Purchase> lastPurchase,
        Optional<Money> unitCost,
        Optional<Exact> pack,
        Optional<Reorder> order) {

    /**
     * One for each ingredient of the book, in its order.
     *
     * @param months all months present, in order of time; the last is the one reviewed
     */
    static Map<String, StockAdvice> of(Book book, List<MonthFigures> months) {
        MonthFigures now = months.get(months.size() - 1);
        Map<String, Purchase> last = lastPurchases(months);
        Map<String, Exact> expected = ComingMonth.ingredients(book, now);
        Exact slowDays = book.settings().get(Setting.SLOW_STOCK_DAYS);
        Map<String, StockAdvice> advice = new LinkedHashMap<>();
        for (Ingredient ingredient : book.ingredients()) {
            String name = ingredient.name();
            Reconciliation line = Optional.ofNullable(now.stock().get(name)).orElseThrow();
            Optional<Purchase> purchase = Optional.ofNullable(last.get(name));
            Optional<Exact> pack = purchase.flatMap(StockAdvice::packOf).or(() -> listPack(ingredient));
            Exact use = expected.getOrDefault(name, Exact.ZERO)
                    .plus(beyondTheory(line, now.month()))
                    .max(Exact.ZERO);
            advice.put(
                    name,
                    new StockAdvice(
                            ingredient,
                            line,
                            line.valuation().flatMap(StockAdvice::turnover),
                            line.valuation()
                                    .flatMap(v -> StockTurn.daysInStock(
                                            v.costOfGoods(),
                                            v.openingValue(),
                                            v.closingValue(),
                                            now.month().lengthOfMonth())),
                            slow(line, slowDays),
                            use,
                            purchase,
                            purchase.flatMap(bought -> Optional.ofNullable(bought.unitCost()))
                                    .or(() -> Optional.ofNullable(
                                            now.prices().get(name).unitCost())),
                            pack,
                            Optional.ofNullable(ingredient.par())
                                    .flatMap(par -> line.movement()
                                            .closing()
                                            .map(closing -> Reorder.of(par, closing, use, pack)))));
        }
        return advice;
    }

    private static Optional<Exact> turnover(Valuation v) {
        return StockTurn.turnover(v.costOfGoods(), v.openingValue(), v.closingValue());
    }

    /** Stock of which nothing is used is slow, however little; of an impossible count nothing is said. */
    private static Optional<Boolean> slow(Reconciliation line, Exact slowDays) {
        return line.movement()
                .closing()
                .flatMap(closing -> line.actualUse()
                        .filter(used -> !used.isNegative())
                        .map(used -> closing.isPositive()
                                && line.daysOnHand()
                                        .map(days -> days.isGreaterThan(slowDays))
                                        .orElse(true)));
    }

    /**
     * Losses and missing goods of the month, by day, over the days of the next; without a count losses alone. A surplus is
     * an error of a count and lowers nothing.
     */
    private static Exact beyondTheory(Reconciliation line, YearMonth month) {
        Exact missing = line.unexplained().orElse(Exact.ZERO).max(Exact.ZERO);
        Exact beyond = line.movement().recordedLosses().plus(missing);
        return beyond.times(Exact.of(month.plusMonths(1).lengthOfMonth())).dividedBy(Exact.of(month.lengthOfMonth()));
    }

    private static Map<String, Purchase> lastPurchases(List<MonthFigures> months) {
        Map<String, Purchase> last = new HashMap<>();
        for (MonthFigures month : months) {
            month.purchases().purchases().stream()
                    .sorted(Purchase.BY_TIME)
                    .filter(Purchase::isPriced)
                    .forEach(purchase -> last.put(purchase.ingredient(), purchase));
        }
        return last;
    }

    private static Optional<Exact> packOf(Purchase purchase) {
        return purchase.baseQuantity() == null || !purchase.quantity().isPositive()
                ? Optional.empty()
                : Optional.of(purchase.baseQuantity().dividedBy(purchase.quantity()));
    }

    private static Optional<Exact> listPack(Ingredient ingredient) {
        return Optional.ofNullable(ingredient.listPack())
                .map(Pack::total)
                .filter(total -> total.measure() == ingredient.measure())
                .map(total -> total.value());
    }

    /** As the supplier writes it, else as the book does. */
    String packText() {
        return lastPurchase
                .map(InvoiceTables::packText)
                .filter(text -> !text.isEmpty())
                .or(() -> Optional.ofNullable(ingredient.listPack()).map(Pack::text))
                .orElse("");
    }

    /** What the counted stock is worth. */
    Money closingValue() {
        return line.valuation().map(Valuation::closingValue).orElse(Money.ZERO);
    }

    boolean isSlow() {
        return slow.orElse(false);
    }
}
