package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Units;
import heeltap.record.AccountName;
import heeltap.record.BarMeasure;
import heeltap.record.Category;
import heeltap.record.ColumnRule;
import heeltap.record.DatedPrice;
import heeltap.record.Drink;
import heeltap.record.Folding;
import heeltap.record.NameRule;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The short sheets of the book. */
final class BookLists {
    private BookLists() {}

    static List<Category> categories(BookSheet sheet) {
        BookNames names = new BookNames();
        return sheet.read(row -> {
            String name = row.text(BookTables.CATEGORY_NAME);
            Exact target = row.number(BookTables.TARGET_COST);
            String within = row.text(BookTables.COMPARE_WITHIN);
            Boolean analysis = row.yesNo(BookTables.CATEGORY_ANALYSIS);
            Exact elasticity = row.number(BookTables.ELASTICITY);
            if (row.isLeftOut() || !names.take(row, BookTables.CATEGORY_NAME, name)) {
                return null;
            }
            return new Category(
                    name,
                    target,
                    within.isEmpty() ? name : within,
                    analysis == null || analysis,
                    elasticity,
                    row.place());
        });
    }

    static List<DatedPrice> prices(BookSheet sheet, List<Drink> drinks) {
        Map<String, Drink> known = new HashMap<>();
        drinks.forEach(drink -> known.put(Folding.fold(drink.name()), drink));
        Map<String, Place> days = new HashMap<>();
        return sheet.read(row -> price(row, known, days));
    }

    private static @Nullable DatedPrice price(BookRow row, Map<String, Drink> known, Map<String, Place> days) {
        String drink = row.text(BookTables.PRICE_DRINK);
        var from = row.date(BookTables.PRICE_FROM);
        if (from == null && row.cell(BookTables.PRICE_FROM).isEmpty()) {
            return null;
        }
        var price = row.money(BookTables.DATED_PRICE);
        if (row.isLeftOut() || from == null || price == null) {
            return null;
        }
        if (!known.containsKey(Folding.fold(drink))) {
            List<String> names =
                    known.values().stream().map(Drink::name).sorted().toList();
            String hint = BookText.nearest(drink, names)
                    .map(near -> " Is it \"" + near + "\"?")
                    .orElse("");
            row.leaveOut(Problem.fault(
                    ProblemKind.NAME_UNKNOWN,
                    row.place(BookTables.PRICE_DRINK),
                    drink,
                    "The sheet Drinks has no drink of this name." + hint,
                    "Correct the name; until then the row is left out."));
            return null;
        }
        Place earlier = days.putIfAbsent(Folding.fold(drink) + from, row.place());
        if (earlier != null) {
            row.leaveOut(Problem.fault(
                    ProblemKind.NAME_TWICE,
                    row.place(BookTables.PRICE_DRINK),
                    drink,
                    "Another price of it from " + from + " stands at " + earlier + ".",
                    "Keep one of the two rows; until then the first is used and this one is left out."));
        }
        return new DatedPrice(drink, from, price, row.place());
    }

    static List<NameRule> names(BookSheet sheet) {
        return sheet.read(row -> {
            String written = row.text(BookTables.AS_WRITTEN);
            String means = row.text(BookTables.MEANS);
            String where = row.choice(BookTables.IN);
            Exact times = row.number(BookTables.TIMES);
            if (row.isLeftOut() || where == null || times == null) {
                return null;
            }
            return new NameRule(
                    written, means, NameRule.Where.valueOf(where.toUpperCase(Locale.ROOT)), times, row.place());
        });
    }

    static List<ColumnRule> columns(BookSheet sheet) {
        return sheet.read(row -> {
            String file = row.text(BookTables.FILE);
            String field = row.text(BookTables.FIELD).toLowerCase(Locale.ROOT);
            String heading = row.text(BookTables.HEADING);
            String dates = Objects.requireNonNullElse(row.choice(BookTables.DATES), "");
            String decimals = Objects.requireNonNullElse(row.choice(BookTables.DECIMALS), "");
            checkField(row, field);
            if (!row.isLeftOut() && field.isEmpty() != heading.isEmpty()) {
                Column empty = field.isEmpty() ? BookTables.FIELD : BookTables.HEADING;
                row.leaveOut(Problem.fault(
                        ProblemKind.VALUE_MISSING,
                        row.place(empty),
                        "",
                        "A field and its heading belong together.",
                        "Fill in " + empty.heading() + "; until then the row is left out."));
            }
            return row.isLeftOut() ? null : new ColumnRule(file, field, heading, dates, decimals, row.place());
        });
    }

    private static void checkField(BookRow row, String field) {
        List<String> known = TemplateMonth.fields();
        if (field.isEmpty() || known.contains(field)) {
            return;
        }
        String hint = BookText.nearest(field, known)
                .map(near -> " Is it \"" + near + "\"?")
                .orElse("");
        row.fault(
                ProblemKind.VALUE_INVALID,
                BookTables.FIELD,
                "There is no field of this name." + hint,
                "Use one of: " + String.join(", ", known));
    }

    static List<BarMeasure> measures(BookSheet sheet) {
        BookNames names = new BookNames();
        return sheet.read(row -> {
            String unit = row.text(BookTables.MEASURE_UNIT);
            Exact ml = row.number(BookTables.MEASURE_ML);
            if (!unit.isEmpty() && !Units.standard().isSettable(unit)) {
                row.fault(
                        ProblemKind.VALUE_INVALID,
                        BookTables.MEASURE_UNIT,
                        "The size of this unit is fixed.",
                        "Remove the row");
            }
            if (row.cell(BookTables.MEASURE_ML).isEmpty()) {
                return null;
            }
            return row.isLeftOut() || ml == null || !names.take(row, BookTables.MEASURE_UNIT, unit)
                    ? null
                    : new BarMeasure(unit, ml, row.place());
        });
    }

    /** The standard units with the bar's own measures. */
    static Units units(List<BarMeasure> measures) {
        Units units = Units.standard();
        for (BarMeasure measure : measures) {
            units = units.with(measure.unit(), measure.ml());
        }
        return units;
    }

    static List<AccountName> accounts(BookSheet sheet) {
        BookNames names = new BookNames();
        return sheet.read(row -> {
            String account = row.text(BookTables.ACCOUNT);
            String name = row.text(BookTables.ACCOUNT_NAME);
            return row.isLeftOut() || !names.take(row, BookTables.ACCOUNT, account)
                    ? null
                    : new AccountName(account, name, row.place());
        });
    }
}
