package heeltap.review;

import heeltap.cost.Costs;
import heeltap.cost.IngredientPrices;
import heeltap.cost.MonthPurchases;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Month;
import heeltap.record.SetAside;
import heeltap.source.Problem;
import heeltap.stock.InvoiceTie;
import heeltap.stock.Reconciliation;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;

/**
 * Everything computed of one month before drinks are classed and priced.
 *
 * @param written the month as read, rows that were found to fit nothing set aside
 * @param late those rows
 * @param sales one entry for each drink of the book, in its order
 * @param purchases the month's invoice lines with what the counts say of prices
 * @param prices the unit cost of every ingredient
 * @param costs of preparations and drinks, by day
 * @param use what everything sold and given should have used
 * @param lost recorded losses and transfers
 * @param ties the invoices, added up
 * @param stock one reconciliation for each ingredient of the book, in its order
 * @param counted whether the month has a closing count
 * @param counts every row of counts and losses, brought to ingredients
 * @param countProblems what is wrong with them
 * @param problems of this month, beyond those found while reading
 */
record MonthFigures(
        Month written,
        List<SetAside> late,
        Map<String, DrinkSales> sales,
        MonthPurchases purchases,
        IngredientPrices prices,
        Costs costs,
        Use use,
        CountStage.Lost lost,
        List<InvoiceTie> ties,
        Map<String, Reconciliation> stock,
        boolean counted,
        List<CountedRow> counts,
        List<Problem> countProblems,
        List<Problem> problems) {
    YearMonth month() {
        return written.month();
    }

    LocalDate lastDay() {
        return written.month().atEndOfMonth();
    }

    Money netSales() {
        return sales.values().stream().map(DrinkSales::netSales).reduce(Money.ZERO, Money::plus);
    }

    Exact sold() {
        return sales.values().stream().map(DrinkSales::sold).reduce(Exact.ZERO, Exact::plus);
    }
}
