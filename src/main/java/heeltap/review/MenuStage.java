package heeltap.review;

import heeltap.cost.DrinkCost;
import heeltap.menu.ClassCertainty;
import heeltap.menu.ClassedDrink;
import heeltap.menu.GroupCertainty;
import heeltap.menu.MenuAnalysis;
import heeltap.menu.MenuGroup;
import heeltap.menu.MenuItem;
import heeltap.menu.MenuRules;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Setting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Classes the month's drinks. */
final class MenuStage {
    private final Book book;
    private final MonthFigures month;
    private final MenuCalendar calendar;
    private final Words words;
    private final MenuRules rules;
    private final Categories categories;

    private MenuStage(Book book, MonthFigures month, MenuCalendar calendar, Words words) {
        this.book = book;
        this.month = month;
        this.calendar = calendar;
        this.words = words;
        this.rules = rules(book);
        this.categories = new Categories(book);
    }

    static MenuRules rules(Book book) {
        return new MenuRules(
                book.settings().get(Setting.POPULARITY_RULE_PERCENT),
                book.settings().get(Setting.VARIABLE_COST_PERCENT),
                book.settings().get(Setting.LABOUR_COST_PER_HOUR).isPositive());
    }

    /** A row for each drink that was on the menu, sold or given in the month, in the book's order. */
    static List<DrinkRow> of(Book book, MonthFigures month, MenuCalendar calendar, Words words) {
        return new MenuStage(book, month, calendar, words).rows();
    }

    private List<DrinkRow> rows() {
        List<Candidate> candidates = new ArrayList<>();
        for (Drink drink : book.drinks()) {
            Candidate candidate = candidate(drink);
            boolean inSales = !candidate.sales().pouredByDay().isEmpty()
                    || !candidate.sales().sold().isZero()
                    || !candidate.sales().netSales().isZero();
            if (candidate.days() > 0 || inSales) {
                candidates.add(candidate);
            }
        }
        List<MenuGroup> groups =
                MenuAnalysis.analyse(candidates.stream().map(Candidate::item).toList(), rules);
        Map<String, MenuGroup> menus = new HashMap<>();
        Map<String, ClassedDrink> classed = new HashMap<>();
        Map<String, Exact> certainty = new HashMap<>();
        for (MenuGroup group : groups) {
            for (ClassedDrink drink : group.drinks()) {
                menus.put(drink.item().drink(), group);
                classed.put(drink.item().drink(), drink);
            }
            for (GroupCertainty.DrinkCertainty drink :
                    ClassCertainty.of(group, rules).drinks()) {
                drink.percent().ifPresent(percent -> certainty.put(drink.drink(), percent));
            }
        }
        return candidates.stream()
                .map(candidate -> row(
                        candidate,
                        Optional.ofNullable(classed.get(candidate.drink().name()))
                                .orElseThrow(),
                        Optional.ofNullable(menus.get(candidate.drink().name())).orElseThrow(),
                        Optional.ofNullable(certainty.get(candidate.drink().name()))))
                .toList();
    }

    private record Candidate(
            Drink drink,
            String group,
            DrinkSales sales,
            DrinkCost cost,
            Optional<Money> menuPrice,
            int days,
            boolean analysed,
            MenuItem item) {}

    private Candidate candidate(Drink drink) {
        DrinkSales sales = Optional.ofNullable(month.sales().get(drink.name())).orElseThrow();
        DrinkCost cost = month.costs().drinkOn(drink.name(), month.lastDay());
        Optional<Money> menuPrice = calendar.priceOn(drink, month.lastDay());
        int days = MenuCalendar.daysOnMenu(drink, month.month());
        String group = categories.group(drink);
        boolean analysed = categories.isAnalysed(drink);
        Optional<Money> netMenuPrice = menuPrice.map(price -> SalesJoin.netOf(price, book));
        MenuItem item = new MenuItem(
                drink.name(),
                group,
                sales.sold(),
                sales.netSales(),
                sales.complimentary(),
                netMenuPrice,
                // a drink without a menu price counts in n only
                menuPrice.isPresent() && sales.moneyKnown() ? cost.cost() : Optional.empty(),
                cost.labour(),
                days,
                analysed,
                soldByDay(drink, sales));
        return new Candidate(drink, group, sales, cost, menuPrice, days, analysed, item);
    }

    /** An entry for each day on the menu, zero where none was sold; empty where the till gives no dates. */
    private SortedMap<LocalDate, Exact> soldByDay(Drink drink, DrinkSales sales) {
        SortedMap<LocalDate, Exact> days = new TreeMap<>();
        if (sales.soldByDay().isEmpty() && !month.sales().values().stream().allMatch(DrinkSales::isDated)) {
            return days;
        }
        for (int day = 1; day <= month.month().lengthOfMonth(); day++) {
            LocalDate date = month.month().atDay(day);
            if (MenuCalendar.isListedOn(drink, date)) {
                days.put(date, sales.soldByDay().getOrDefault(date, Exact.ZERO));
            }
        }
        return days;
    }

    private DrinkRow row(Candidate candidate, ClassedDrink classed, MenuGroup menu, Optional<Exact> certainty) {
        boolean included = candidate.analysed()
                && candidate.days() > 0
                && candidate.menuPrice().isPresent()
                && candidate.cost().cost().isPresent();
        return new DrinkRow(
                candidate.drink(),
                candidate.group(),
                candidate.sales(),
                candidate.cost(),
                candidate.menuPrice(),
                candidate.days(),
                MenuCalendar.isListedOn(candidate.drink(), month.lastDay()),
                included,
                note(candidate),
                classed,
                menu,
                included ? certainty : Optional.empty());
    }

    private String note(Candidate candidate) {
        List<String> notes = new ArrayList<>();
        if (candidate.menuPrice().isEmpty()) {
            notes.add(words.say("note.no-price"));
        }
        if (candidate.cost().cost().isEmpty()) {
            notes.add(candidate.cost().reason());
        }
        if (!candidate.analysed()) {
            notes.add(words.say("note.not-analysed"));
        }
        if (soldOffMenu(candidate)) {
            notes.add(words.say("note.off-menu"));
        }
        if (candidate.sales().pricedByMenu()) {
            notes.add(words.say("note.priced-by-menu"));
        }
        if (floorUnknown(candidate)) {
            notes.add(words.say("note.floor-unknown"));
        }
        if (candidate.drink().holdPrice()) {
            notes.add(words.say("note.held"));
        }
        candidate.cost().notices().forEach(notice -> notes.add(notice.reason()));
        if (!candidate.cost().unknownComposition().isEmpty()) {
            notes.add(words.say(
                    "note.unknown-contents", String.join(", ", candidate.cost().unknownComposition())));
        }
        return String.join(" ", notes);
    }

    /** Whether the law sets a lowest price and nobody knows how much alcohol is in the drink. */
    private boolean floorUnknown(Candidate candidate) {
        return book.settings().get(Setting.LOWEST_PRICE_PER_GRAM).isPositive()
                && !PriceStage.isAlcoholKnown(candidate.cost());
    }

    private static boolean soldOffMenu(Candidate candidate) {
        return candidate.sales().soldByDay().entrySet().stream()
                .anyMatch(day -> !day.getValue().isZero() && !MenuCalendar.isListedOn(candidate.drink(), day.getKey()));
    }
}
