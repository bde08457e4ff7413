package heeltap.review;

import heeltap.quantity.Exact;
import heeltap.record.Book;
import heeltap.record.Drink;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the drinks on the coming month's menu would need at this month's units a day on the menu, by the specs of its first
 * day.
 */
final class ComingMonth {
    private ComingMonth() {}

    /** Ingredients as bought, by name. */
    static Map<String, Exact> ingredients(Book book, MonthFigures now) {
        Map<String, Exact> sums = new TreeMap<>();
        units(book, now)
                .forEach((drink, units) ->
                        Use.add(sums, now.costs().drinkOn(drink, first(now)).use(), units));
        return sums;
    }

    /** Preparations in their measure, by name; use inside other preparations included. */
    static Map<String, Exact> preparations(Book book, MonthFigures now) {
        Map<String, Exact> sums = new TreeMap<>();
        units(book, now)
                .forEach((drink, units) ->
                        Use.add(sums, now.costs().drinkOn(drink, first(now)).preparations(), units));
        return sums;
    }

    private static LocalDate first(MonthFigures now) {
        return now.month().plusMonths(1).atDay(1);
    }

    /** Units of each drink. */
    private static Map<String, Exact> units(Book book, MonthFigures now) {
        YearMonth next = now.month().plusMonths(1);
        Map<String, Drink> drinks = new HashMap<>();
        book.drinks().forEach(drink -> drinks.put(drink.name(), drink));
        Map<String, Exact> units = new TreeMap<>();
        for (DrinkSales sales : now.sales().values()) {
            Drink drink = Optional.ofNullable(drinks.get(sales.drink())).orElseThrow();
            Exact poured = sales.pouredByDay().values().stream().reduce(Exact.ZERO, Exact::plus);
            int listed = MenuCalendar.daysOnMenu(drink, now.month());
            // sold though not listed: as if listed all month
            int days = listed == 0 ? now.month().lengthOfMonth() : listed;
            units.put(
                    drink.name(),
                    poured.times(Exact.of(MenuCalendar.daysOnMenu(drink, next))).dividedBy(Exact.of(days)));
        }
        return units;
    }
}
