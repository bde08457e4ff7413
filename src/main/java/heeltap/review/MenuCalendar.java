package heeltap.review;

import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.DatedPrice;
import heeltap.record.Drink;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** When a drink was on the menu, and at what price as the guest reads it. */
final class MenuCalendar {
    private final Map<String, NavigableMap<LocalDate, Money>> datedPrices = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    MenuCalendar(Book book, NameBook names) {
        for (DatedPrice price : book.prices()) {
            names.findItem(price.drink())
                    .filter(item -> item.kind() == Match.Kind.DRINK)
                    .ifPresentOrElse(
                            item -> datedPrices
                                    .computeIfAbsent(item.name(), name -> new TreeMap<>())
                                    .put(price.from(), price.price()),
                            () -> problems.add(Problem.fault(
                                    ProblemKind.NAME_UNKNOWN,
                                    price.place(),
                                    price.drink(),
                                    "The price belongs to no drink of the book.",
                                    "Spell the drink as on the sheet Drinks.")));
        }
    }

    /** Prices that belong to no drink. */
    List<Problem> problems() {
        return problems;
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
