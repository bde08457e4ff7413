package heeltap.review;

import static heeltap.review.DrinkTable.money;
import static heeltap.review.DrinkTable.number;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.stock.Movement;
import heeltap.stock.Reconciliation;
import heeltap.stock.Reorder;
import heeltap.stock.Valuation;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;

/** The table of stock by ingredient. */
final class StockTables {
    private StockTables() {}

    static Table stock(Book book, MonthFigures month, Map<String, StockAdvice> advice, Currency currency, Words words) {
        Filling table = Shapes.STOCK
                .fill(words.texts())
                .formula(
                        "actual_use",
                        "IF(OR({opening}=\"\",{closing}=\"\"),\"\",{opening}+{purchases}+{transfers}-{closing})")
                .formula("unexplained", "IF({actual_use}=\"\",\"\",{actual_use}-{theoretical_use}-{recorded_losses})")
                .formula(
                        "unexplained_percent",
                        "IF(OR({unexplained}=\"\",{theoretical_use}=0),\"\",{unexplained}/{theoretical_use}*100)")
                .formula(
                        "days_on_hand",
                        "{closing}/({actual_use}/" + month.month().lengthOfMonth() + ")");
        for (String sum : new String[] {
            "opening_value",
            "purchases_value",
            "closing_value",
            "actual_cost",
            "theoretical_cost",
            "unexplained_cost",
            "transfers_value"
        }) {
            table.totalFormula(sum, "SUM({" + sum + ":all})");
        }
        Sums total = new Sums();
        for (Ingredient ingredient : book.ingredients()) {
            Reconciliation line =
                    Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow();
            StockMoney money = StockMoney.of(line, currency);
            total.add(money);
            Movement movement = line.movement();
            StockAdvice next =
                    Optional.ofNullable(advice.get(ingredient.name())).orElseThrow();
            table.add(
                    line.withinTolerance().orElse(true) ? Emphasis.PLAIN : Emphasis.MARKED,
                    money.set(new Cells()
                            .set("ingredient", CellValue.of(ingredient.name()))
                            .set("group", CellValue.of(ingredient.group()))
                            .set("measure", words.measure(ingredient.measure()))
                            .set("opening", number(movement.opening()))
                            .set("purchases", CellValue.of(line.purchases()))
                            .set("transfers", CellValue.of(movement.transfers()))
                            .set("closing", number(movement.closing()))
                            .set("actual_use", number(line.actualUse()))
                            .set("theoretical_use", CellValue.of(movement.theoreticalUse()))
                            .set("recorded_losses", CellValue.of(movement.recordedLosses()))
                            .set("unexplained", number(line.unexplained()))
                            .set("unexplained_percent", number(line.unexplainedPercent()))
                            .set("unit_value", money(line.unitValue()))
                            .set(
                                    "within_tolerance",
                                    line.withinTolerance().map(CellValue::of).orElse(CellValue.BLANK))
                            .set("days_on_hand", number(line.daysOnHand()))
                            .set("turnover", number(next.turnover()))
                            .set("days_in_stock", number(next.daysInStock()))
                            .set("slow", next.slow().map(CellValue::of).orElse(CellValue.BLANK))
                            .set("par", CellValue.of(ingredient.par()))
                            .set("expected_use", CellValue.of(next.expectedUse()))
                            .set("order_quantity", number(next.order().map(Reorder::quantity)))));
        }
        return table.total(total.money().set(new Cells().set("ingredient", CellValue.of(words.say("word.total")))))
                .done();
    }

    /**
     * The money columns of one line or group as printed: each rounded once, cost of goods as the remainder of the printed
     * figures, so that opening + purchases + transfers = cost of goods + closing to the cent.
     */
    record StockMoney(
            Optional<Money> opening,
            Money purchases,
            Optional<Money> closing,
            Optional<Money> actual,
            Optional<Money> theoretical,
            Optional<Money> unexplained,
            Optional<Money> transfers) {

        static StockMoney of(Reconciliation line, Currency currency) {
            Optional<Money> opening =
                    line.valuation().map(Valuation::openingValue).map(m -> round(m, currency));
            Optional<Money> closing =
                    line.valuation().map(Valuation::closingValue).map(m -> round(m, currency));
            Optional<Money> transfers =
                    line.valuation().map(Valuation::transfersValue).map(m -> round(m, currency));
            Money purchases = round(line.purchasesValue(), currency);
            Optional<Money> actual = opening.map(value ->
                    value.plus(purchases).plus(transfers.orElse(Money.ZERO)).minus(closing.orElse(Money.ZERO)));
            return new StockMoney(
                    opening,
                    purchases,
                    closing,
                    actual,
                    line.theoreticalCost().map(m -> round(m, currency)),
                    line.unexplainedCost().map(m -> round(m, currency)),
                    transfers);
        }

        private static Money round(Money money, Currency currency) {
            BigDecimal rounded = money.rounded(currency);
            return Money.of(rounded);
        }

        Cells set(Cells cells) {
            return cells.set("opening_value", DrinkTable.money(opening))
                    .set("purchases_value", CellValue.of(purchases))
                    .set("closing_value", DrinkTable.money(closing))
                    .set("actual_cost", DrinkTable.money(actual))
                    .set("theoretical_cost", DrinkTable.money(theoretical))
                    .set("unexplained_cost", DrinkTable.money(unexplained))
                    .set("transfers_value", DrinkTable.money(transfers));
        }
    }

    /** Sums of printed money, so that a total is the sum of the lines above it. */
    static final class Sums {
        private Money opening = Money.ZERO;
        private Money purchases = Money.ZERO;
        private Money closing = Money.ZERO;
        private Money actual = Money.ZERO;
        private Money theoretical = Money.ZERO;
        private Money unexplained = Money.ZERO;
        private Money transfers = Money.ZERO;
        private boolean counted;

        void add(StockMoney line) {
            counted = counted || line.actual().isPresent();
            opening = opening.plus(line.opening().orElse(Money.ZERO));
            purchases = purchases.plus(line.purchases());
            closing = closing.plus(line.closing().orElse(Money.ZERO));
            actual = actual.plus(line.actual().orElse(Money.ZERO));
            theoretical = theoretical.plus(line.theoretical().orElse(Money.ZERO));
            unexplained = unexplained.plus(line.unexplained().orElse(Money.ZERO));
            transfers = transfers.plus(line.transfers().orElse(Money.ZERO));
        }

        StockMoney money() {
            return new StockMoney(
                    some(opening),
                    purchases,
                    some(closing),
                    some(actual),
                    Optional.of(theoretical),
                    some(unexplained),
                    some(transfers));
        }

        private Optional<Money> some(Money money) {
            return counted ? Optional.of(money) : Optional.empty();
        }
    }

    /** Part over whole in percent; empty where the whole is not positive. */
    static Optional<Exact> percentOf(Money part, Money whole) {
        return whole.isPositive() ? Optional.of(part.dividedBy(whole).times(Exact.HUNDRED)) : Optional.empty();
    }
}
