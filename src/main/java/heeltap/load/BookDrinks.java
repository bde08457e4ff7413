package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.record.Drink;
import heeltap.record.Method;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** The sheet Drinks. */
final class BookDrinks {
    private BookDrinks() {}

    static List<Drink> read(BookSheet sheet) {
        BookNames names = new BookNames();
        List<Drink> drinks = sheet.read(row -> {
            String name = row.text(BookTables.DRINK);
            return row.isLeftOut() || !names.take(row, BookTables.DRINK, name) ? null : drink(row, name);
        });
        if (drinks.isEmpty() && !sheet.isRefused()) {
            sheet.add(Problem.fault(
                    ProblemKind.VALUE_MISSING,
                    sheet.place(),
                    "",
                    "The sheet Drinks has no drink.",
                    "Add a row for each drink of the menu."));
        }
        return drinks;
    }

    private static Drink drink(BookRow row, String name) {
        LocalDate from = row.date(BookTables.ON_FROM);
        LocalDate until = row.date(BookTables.ON_UNTIL);
        if (from != null && until != null && until.isBefore(from)) {
            row.fault(
                    ProblemKind.VALUE_INVALID,
                    BookTables.ON_UNTIL,
                    "The last day on the menu is before the first, " + from + ".",
                    "Correct one of the two");
            until = null;
        }
        String method = row.choice(BookTables.METHOD);
        return new Drink(
                name,
                row.money(BookTables.PRICE),
                row.text(BookTables.CATEGORY),
                row.text(BookTables.CODE),
                method == null ? Method.NONE : Method.valueOf(method.toUpperCase(Locale.ROOT)),
                row.number(BookTables.WATER),
                row.number(BookTables.SERVE_ML),
                row.number(BookTables.MINUTES, Exact.ZERO),
                from,
                until,
                Boolean.TRUE.equals(row.yesNo(BookTables.HOLD)),
                row.money(BookTables.FIXED_COST),
                row.yesNo(BookTables.DRINK_ANALYSIS),
                row.place());
    }
}
