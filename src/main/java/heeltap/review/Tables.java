package heeltap.review;

import heeltap.document.Table;
import heeltap.record.Book;
import heeltap.record.FileAccount;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;

/** Every table of the contract and beyond it, filled. */
record Tables(
        Table drinks,
        Table prices,
        Table priceGroups,
        Table priceRange,
        Table ingredients,
        Table preparations,
        Table preparationLines,
        Table stock,
        Table stockGroups,
        Table invoices,
        Table invoiceLines,
        Table changes,
        Table journal,
        Table setAside,
        Table namesToAdd,
        Table files,
        Table controls,
        Table orders,
        Table purchases,
        Table deposits,
        Table drinkLines,
        Table useByDrink,
        Table counts,
        Table preparationSheets,
        Table losses,
        Table demand,
        Table lastReview,
        Table cheaperWays) {

    static Tables of(ReviewFigures review, Words words) {
        Book book = review.book();
        MonthFigures now = review.now();
        Currency currency = review.currency();
        return new Tables(
                DrinkTable.of(review.rows(), book.settings(), words),
                PriceTables.prices(review.prices(), words),
                PriceTables.groups(review.prices(), review.currency(), words),
                PriceTables.range(review.ranges(), words),
                CostTables.ingredients(book, now, words),
                CostTables.preparations(book, now, words),
                CostTables.preparationLines(book, now, words),
                StockTables.stock(book, now, review.advice(), currency, words),
                StockGroups.table(book, now, currency, words),
                InvoiceTables.invoices(InvoiceFindings.of(review), words),
                InvoiceTables.lines(now, words),
                LedgerTables.changes(now, review.chains(), words),
                LedgerTables.journal(review.journal(), book, now, words),
                FileTables.setAside(review.setAside(), words.texts()),
                FileTables.namesToAdd(review.setAside(), review.files(), words.texts()),
                FileTables.files(review.files(), review.problems(), words.texts()),
                FileTables.controls(controls(review, words), words.texts()),
                PurchaseTables.orders(review.advice(), currency, words),
                PurchaseTables.purchases(book, now, currency, words),
                PurchaseTables.deposits(review.months(), words),
                TraceTables.drinkLines(book, now, words),
                TraceTables.useByDrink(book, now, words),
                TraceTables.counts(book, now, words),
                PreparationSheets.table(book, now, words),
                TraceTables.losses(book, now, currency, words),
                PriceTables.demand(review.prices(), review.months(), words),
                PriceTables.lastReview(review.prices(), words),
                CheaperTable.of(review.ways(), words));
    }

    /** In the order of the contract, then those beyond it. */
    List<Table> all() {
        return List.of(
                drinks,
                prices,
                priceGroups,
                priceRange,
                ingredients,
                preparations,
                preparationLines,
                stock,
                stockGroups,
                invoices,
                invoiceLines,
                changes,
                journal,
                setAside,
                namesToAdd,
                files,
                controls,
                orders,
                purchases,
                deposits,
                drinkLines,
                useByDrink,
                counts,
                preparationSheets,
                losses,
                demand,
                lastReview,
                cheaperWays);
    }

    static List<Control> controls(ReviewFigures review, Words words) {
        List<Control> controls = new ArrayList<>();
        review.files().stream()
                .filter(file -> file.rows() > 0)
                .sorted(Comparator.comparing(FileAccount::place))
                .forEach(file -> controls.addAll(FileTables.controlsOf(file, review.problems())));
        controls.addAll(Controls.of(review, words));
        return controls;
    }
}
