package heeltap.review;

import heeltap.cost.DrinkCost;
import heeltap.menu.MarginClass;
import heeltap.pricing.DrinkMonth;
import heeltap.pricing.EarningDrink;
import heeltap.pricing.EarningPrices;
import heeltap.pricing.EarningRules;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.LastReview;
import heeltap.pricing.PriceGrid;
import heeltap.pricing.PricedDrink;
import heeltap.pricing.PricingRules;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Suggests prices for the drinks that are on the menu on the month's last day, from all months present. */
final class PriceStage {
    private final Book book;
    private final MenuCalendar calendar;
    private final Categories categories;
    private final EarningRules rules;
    /** Months with sales up to the one reviewed: one without would look as if no guest had come. */
    private final List<MonthFigures> months;

    private PriceStage(Book book, MenuCalendar calendar, List<MonthFigures> months) {
        this.book = book;
        this.calendar = calendar;
        this.categories = new Categories(book);
        this.rules = earning(book.settings());
        this.months = months;
    }

    /** @param months all present, in order; the last is the one reviewed, whose drinks are {@code rows} */
    static PriceAdvice of(Book book, MenuCalendar calendar, List<MonthFigures> months, List<DrinkRow> rows) {
        MonthFigures now = months.get(months.size() - 1);
        List<MonthFigures> selling = months.stream()
                .filter(month -> !month.written().sales().isEmpty())
                .toList();
        PriceStage stage = new PriceStage(book, calendar, selling);
        Map<String, MarginClass> classes = new HashMap<>();
        rows.stream()
                .filter(DrinkRow::isSure)
                .forEach(row -> row.classed().classes().marginClass().ifPresent(one -> classes.put(row.name(), one)));
        List<EarningDrink> drinks = stage.drinks(now, before(months, now.month()), classes);
        GroupPriors priors = GroupPriors.of(book, now, stage.categories);
        List<DrinkMonth> history = stage.history(now.month(), drinks);
        List<GroupSuggestion> groups = EarningPrices.suggest(drinks, history, priors::of, stage.rules);
        List<String> order =
                drinks.stream().map(drink -> drink.priced().drink()).toList();
        return PriceAdvice.of(groups, order, stage.lastReview(now, priors), priors);
    }

    private static Optional<MonthFigures> before(List<MonthFigures> months, YearMonth month) {
        return months.stream()
                .filter(other -> other.month().plusMonths(1).equals(month))
                .findFirst();
    }

    /** What last month's review would have said of the groups in which a price changed since, and what came of it. */
    private List<LastReview.Outcome> lastReview(MonthFigures now, GroupPriors priors) {
        Optional<MonthFigures> then = before(months, now.month());
        if (then.isEmpty() || now.written().sales().isEmpty()) {
            return List.of();
        }
        List<DrinkMonth> after = month(now);
        TreeSet<String> moved = new TreeSet<>();
        for (DrinkMonth row : after) {
            calendar.priceOn(drink(row.drink()), then.get().lastDay())
                    .filter(price -> !price.equals(row.price()))
                    .ifPresent(price -> moved.add(row.group()));
        }
        List<EarningDrink> drinks = drinks(then.get(), before(months, then.get().month()), Map.of()).stream()
                .filter(drink -> moved.contains(drink.priced().group()))
                .toList();
        List<GroupSuggestion> said =
                EarningPrices.suggest(drinks, history(then.get().month(), drinks), priors::of, rules);
        return LastReview.compare(said, then.get().month().lengthOfMonth(), after);
    }

    private Drink drink(String name) {
        return book.drinks().stream()
                .filter(drink -> drink.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Drinks listed on the month's last day, in the book's order. */
    private List<EarningDrink> drinks(
            MonthFigures month, Optional<MonthFigures> before, Map<String, MarginClass> classes) {
        List<EarningDrink> drinks = new ArrayList<>();
        for (Drink drink : book.drinks()) {
            if (MenuCalendar.isListedOn(drink, month.lastDay())) {
                drinks.add(new EarningDrink(
                        priced(drink, month),
                        before.flatMap(earlier -> earlier.costs()
                                .drinkOn(drink.name(), earlier.lastDay())
                                .cost()),
                        Optional.ofNullable(classes.get(drink.name())),
                        calendar.priceOn(drink, month.lastDay())
                                .flatMap(price -> SalesJoin.farPaid(price, sales(drink, month), book))));
            }
        }
        return drinks;
    }

    private static DrinkSales sales(Drink drink, MonthFigures month) {
        return Optional.ofNullable(month.sales().get(drink.name())).orElseThrow();
    }

    private PricedDrink priced(Drink drink, MonthFigures month) {
        DrinkCost cost = month.costs().drinkOn(drink.name(), month.lastDay());
        DrinkSales sales = sales(drink, month);
        Optional<Money> price = calendar.priceOn(drink, month.lastDay());
        Optional<Money> net = sales.sold().isPositive()
                ? Optional.of(sales.netSales().dividedBy(sales.sold()))
                : price.map(menu -> SalesJoin.netOf(menu, book));
        return new PricedDrink(
                drink.name(),
                categories.group(drink),
                price,
                net.filter(known -> sales.moneyKnown()),
                cost.cost(),
                cost.labour(),
                categories.targetPercent(drink),
                legalGrams(cost),
                drink.holdPrice());
    }

    /** Whether it is known how much alcohol a serve holds: dry goods that nobody described hold none (common practice). */
    static boolean isAlcoholKnown(DrinkCost cost) {
        return !cost.lines().isEmpty() && cost.contents().unknownMl() == 0 && Served.isWhole(cost);
    }

    /** Grams as the law counts them: ml of pure alcohol × 0.789 (rulings of the published price floors). */
    private static Optional<Exact> legalGrams(DrinkCost cost) {
        double ethanolMl = cost.glass().servedMl() * cost.glass().abvPercent() / 100;
        return Optional.of(Exact.ofPhysical(ethanolMl).times(Exact.of("0.789"))).filter(grams -> isAlcoholKnown(cost));
    }

    /** All months with sales up to one, without drinks whose price in the book cannot be what guests paid. */
    private List<DrinkMonth> history(YearMonth last, List<EarningDrink> drinks) {
        Set<String> far = drinks.stream()
                .filter(drink -> drink.farPrice().isPresent())
                .map(drink -> drink.priced().drink())
                .collect(Collectors.toSet());
        return months.stream()
                .filter(month -> !month.month().isAfter(last))
                .flatMap(month -> month(month).stream())
                .filter(row -> !far.contains(row.drink()))
                .toList();
    }

    /** Every drink that was on the menu in the month and has a price, sold or not. */
    private List<DrinkMonth> month(MonthFigures month) {
        List<DrinkMonth> rows = new ArrayList<>();
        for (Drink drink : book.drinks()) {
            int days = MenuCalendar.daysOnMenu(drink, month.month());
            averagePrice(drink, month.month())
                    .ifPresent(price -> rows.add(new DrinkMonth(
                            month.month(),
                            drink.name(),
                            categories.group(drink),
                            price,
                            Optional.ofNullable(month.sales().get(drink.name()))
                                    .orElseThrow()
                                    .sold(),
                            days)));
        }
        return rows;
    }

    /** Over the days on which the drink was listed and had a price; empty without such a day. */
    private Optional<Money> averagePrice(Drink drink, YearMonth month) {
        Money sum = Money.ZERO;
        int days = 0;
        for (int day = 1; day <= month.lengthOfMonth(); day++) {
            LocalDate date = month.atDay(day);
            Optional<Money> price = calendar.priceOn(drink, date);
            if (MenuCalendar.isListedOn(drink, date) && price.isPresent()) {
                sum = sum.plus(price.get());
                days++;
            }
        }
        return days == 0 ? Optional.empty() : Optional.of(sum.dividedBy(Exact.of(days)));
    }

    private static EarningRules earning(Settings settings) {
        return new EarningRules(
                rules(settings),
                settings.find(Setting.LARGEST_AVERAGE_RISE_PERCENT),
                settings.get(Setting.LEAST_CHANCE_PERCENT),
                settings.get(Setting.LEAST_GAIN));
    }

    private static PricingRules rules(Settings settings) {
        return new PricingRules(
                new PriceGrid(settings.get(Setting.PRICE_STEP), settings.get(Setting.PRICE_ENDINGS)),
                settings.get(Setting.LARGEST_PRICE_CHANGE_PERCENT),
                settings.get(Setting.LOWEST_PRICE_PER_GRAM),
                settings.find(Setting.FIXED_COST_A_SERVE),
                settings.find(Setting.TARGET_PRIME_COST_PERCENT));
    }
}
