package heeltap.review;

import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.DatedPrice;
import heeltap.record.Drink;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** When a drink was on the menu, and at what price as the guest reads it. */
final class MenuCalendar {
    private final Map<String, NavigableMap<LocalDate, Money>> datedPrices = new HashMap<>();

    /** Names in {@code prices} are the book's own spellings. */
    MenuCalendar(Book book) {
        for (DatedPrice price : book.prices()) {
            datedPrices.computeIfAbsent(price.drink(), name -> new TreeMap<>()).put(price.from(), price.price());
        }
    }

    /** The price of that day; empty where the book has none. */
    Optional<Money> priceOn(Drink drink, LocalDate day) {
        NavigableMap<LocalDate, Money> dated = datedPrices.get(drink.name());
        Map.Entry<LocalDate, Money> entry = dated == null ? null : dated.floorEntry(day);
        return entry != null ? Optional.of(entry.getValue()) : Optional.ofNullable(drink.price());
    }

    static boolean isListedOn(Drink drink, LocalDate day) {
        LocalDate from = drink.onMenuFrom();
        LocalDate until = drink.onMenuUntil();
        return (from == null || !day.isBefore(from)) && (until == null || !day.isAfter(until));
    }

    /** Calendar days of the month on which the drink was listed, both ends counted. */
    static int daysOnMenu(Drink drink, YearMonth month) {
        int days = 0;
        for (int day = 1; day <= month.lengthOfMonth(); day++) {
            if (isListedOn(drink, month.atDay(day))) {
                days++;
            }
        }
        return days;
    }
}
