package heeltap.review;

import static heeltap.review.DrinkTable.money;
import static heeltap.review.DrinkTable.number;

import heeltap.cost.Purchase;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.stock.InvoiceTie;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What was bought from whom, what is owed back on returnable goods, and what to order. */
final class PurchaseTables {
    /** Lines that the book says to leave aside. */
    static final String IGNORED = "(ignored)";

    private PurchaseTables() {}

    /** @param goods after discounts, without tax */
    private record Sum(int lines, Money goods, Money delivery) {
        static final Sum NONE = new Sum(0, Money.ZERO, Money.ZERO);

        Sum plus(int moreLines, Money moreGoods, Money moreDelivery) {
            return new Sum(lines + moreLines, goods.plus(moreGoods), delivery.plus(moreDelivery));
        }

        Money cost() {
            return goods.plus(delivery);
        }

        Sum rounded(Currency currency) {
            return new Sum(lines, Money.of(goods.rounded(currency)), Money.of(delivery.rounded(currency)));
        }
    }

    private record Key(String supplier, String group) {
        static final Comparator<Key> ORDER = Comparator.comparing(Key::supplier).thenComparing(Key::group);
    }

    /** By supplier and group of ingredients; what nothing claims is in the group {@code (none)}. */
    static Table purchases(Book book, MonthFigures month, Currency currency, Words words) {
        Map<String, String> groups = new HashMap<>();
        book.ingredients().forEach(ingredient -> groups.put(ingredient.name(), ingredient.group()));
        Map<Key, Sum> sums = new TreeMap<>(Key.ORDER);
        for (Purchase line : month.purchases().purchases()) {
            String group = line.ignored()
                    ? IGNORED
                    : line.ingredient() == null
                            ? StockGroups.NONE
                            : groups.getOrDefault(line.ingredient(), StockGroups.NONE);
            Key key = new Key(line.supplier(), group);
            sums.put(key, sums.getOrDefault(key, Sum.NONE).plus(1, line.goods(), line.delivery()));
        }
        sums.replaceAll((key, sum) -> sum.rounded(currency));
        Sum all = Sum.NONE;
        for (Sum sum : sums.values()) {
            all = all.plus(sum.lines(), sum.goods(), sum.delivery());
        }
        Filling table = Shapes.PURCHASES
                .fill(words.texts())
                .formula("cost", "{goods}+{delivery}")
                .formula("share_percent", "IF(SUM({cost:all})=0,\"\",{cost}/SUM({cost:all})*100)");
        for (String column : new String[] {"lines", "goods", "delivery", "cost"}) {
            table.totalFormula(column, "SUM({" + column + ":all})");
        }
        Money whole = all.cost();
        sums.forEach((key, sum) -> table.add(cells(sum)
                .set("supplier", CellValue.of(key.supplier()))
                .set("group", CellValue.of(key.group()))
                .set("share_percent", number(StockTables.percentOf(sum.cost(), whole)))));
        return table.total(cells(all).set("supplier", CellValue.of(words.say("word.total"))))
                .done();
    }

    private static Cells cells(Sum sum) {
        return new Cells()
                .set("lines", CellValue.of(sum.lines()))
                .set("goods", CellValue.of(sum.goods()))
                .set("delivery", CellValue.of(sum.delivery()))
                .set("cost", CellValue.of(sum.cost()));
    }

    /**
     * Returnable deposits of one supplier.
     *
     * @param opening paid less returned in the months before, as far as they are present
     * @param returned positive
     */
    record Deposit(Money opening, Money paid, Money returned) {
        static final Deposit NONE = new Deposit(Money.ZERO, Money.ZERO, Money.ZERO);

        Money balance() {
            return opening.plus(paid).minus(returned);
        }

        private Deposit plus(Deposit other) {
            return new Deposit(opening.plus(other.opening), paid.plus(other.paid), returned.plus(other.returned));
        }
    }

    /** By supplier, those without any deposit left out. */
    static Map<String, Deposit> depositBalances(List<MonthFigures> months) {
        Map<String, Deposit> balances = new TreeMap<>();
        for (int i = 0; i < months.size(); i++) {
            boolean isNow = i == months.size() - 1;
            for (InvoiceTie tie : months.get(i).ties()) {
                Money returned = tie.invoice().depositReturned();
                Money paid = tie.deposit().plus(returned);
                if (!paid.isZero() || !returned.isZero()) {
                    balances.merge(
                            tie.invoice().supplier(),
                            isNow
                                    ? new Deposit(Money.ZERO, paid, returned)
                                    : new Deposit(tie.deposit(), Money.ZERO, Money.ZERO),
                            Deposit::plus);
                }
            }
        }
        return balances;
    }

    static Table deposits(List<MonthFigures> months, Words words) {
        Filling table = Shapes.DEPOSITS.fill(words.texts()).formula("balance", "{opening_balance}+{paid}-{returned}");
        for (String column : new String[] {"opening_balance", "paid", "returned", "balance"}) {
            table.totalFormula(column, "SUM({" + column + ":all})");
        }
        Deposit all = Deposit.NONE;
        for (Map.Entry<String, Deposit> supplier : depositBalances(months).entrySet()) {
            Deposit deposit = supplier.getValue();
            all = all.plus(deposit);
            table.add(cells(deposit).set("supplier", CellValue.of(supplier.getKey())));
        }
        return table.total(cells(all).set("supplier", CellValue.of(words.say("word.total"))))
                .done();
    }

    private static Cells cells(Deposit deposit) {
        return new Cells()
                .set("opening_balance", CellValue.of(deposit.opening()))
                .set("paid", CellValue.of(deposit.paid()))
                .set("returned", CellValue.of(deposit.returned()))
                .set("balance", CellValue.of(deposit.balance()));
    }

    /** What to order, in the book's order; what there is enough of is left out. */
    static Table orders(Map<String, StockAdvice> advice, Currency currency, Words words) {
        Filling table = Shapes.ORDERS
                .fill(words.texts())
                .formula("wanted", "MAX({par}+{expected_use}-{on_hand},0)")
                // rounded first, so that what binary numbers lose on the way orders no pack more
                .formula("packs", "ROUNDUP(ROUND({wanted}/{pack_holds},9),0)")
                .formula("order_quantity", "IF({packs}=\"\",{wanted},{packs}*{pack_holds})")
                .totalFormula("order_cost", "SUM({order_cost:all})");
        Money all = Money.ZERO;
        for (StockAdvice line : advice.values()) {
            if (line.order().filter(order -> order.wanted().isPositive()).isEmpty()) {
                continue;
            }
            var order = line.order().get();
            Optional<Money> cost = line.unitCost()
                    .map(unit -> Money.of(unit.times(order.quantity()).rounded(currency)));
            all = all.plus(cost.orElse(Money.ZERO));
            table.add(new Cells()
                    .set("ingredient", CellValue.of(line.ingredient().name()))
                    .set("group", CellValue.of(line.ingredient().group()))
                    .set("measure", words.measure(line.ingredient().measure()))
                    .set("par", CellValue.of(line.ingredient().par()))
                    .set("on_hand", number(line.line().movement().closing()))
                    .set("expected_use", CellValue.of(line.expectedUse()))
                    .set("wanted", CellValue.of(order.wanted()))
                    .set("pack", CellValue.of(line.packText()))
                    .set("pack_holds", number(line.pack()))
                    .set("packs", number(order.packs()))
                    .set("order_quantity", CellValue.of(order.quantity()))
                    .set(
                            "supplier",
                            CellValue.of(
                                    line.lastPurchase().map(Purchase::supplier).orElse("")))
                    .set("unit_cost", money(line.unitCost()))
                    .set("order_cost", money(cost)));
        }
        return table.total(new Cells()
                        .set("ingredient", CellValue.of(words.say("word.total")))
                        .set("order_cost", CellValue.of(all)))
                .done();
    }

    /** Goods and delivery of the lines that an ingredient claims and that say how much they brought. */
    static Money claimed(MonthFigures month) {
        return month.purchases().purchases().stream()
                .filter(line -> line.ingredient() != null && line.baseQuantity() != null)
                .map(Purchase::cost)
                .reduce(Money.ZERO, Money::plus);
    }

    /** The same of all lines. */
    static Money all(MonthFigures month) {
        return month.purchases().purchases().stream().map(Purchase::cost).reduce(Money.ZERO, Money::plus);
    }
}
