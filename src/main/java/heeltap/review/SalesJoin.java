package heeltap.review;

import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Month;
import heeltap.record.NameRule.Where;
import heeltap.record.SaleTotal;
import heeltap.record.Setting;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Joins a month's sales to the drinks of the book. */
final class SalesJoin {
    private final Book book;
    private final MenuCalendar calendar;
    private final YearMonth month;
    private final Map<String, Sums> sums = new LinkedHashMap<>();

    private SalesJoin(Book book, MenuCalendar calendar, YearMonth month) {
        this.book = book;
        this.calendar = calendar;
        this.month = month;
        book.drinks().forEach(drink -> sums.put(drink.name(), new Sums(drink)));
    }

    /** One entry for each drink of the book, sold or not, in the book's order. */
    static Map<String, DrinkSales> join(Book book, NameBook names, MenuCalendar calendar, Month sales) {
        SalesJoin join = new SalesJoin(book, calendar, sales.month());
        for (SaleTotal total : sales.sales()) {
            Optional<Match> match = names.find(Where.SALES, total.item(), total.code());
            match.filter(found -> found.kind() == Match.Kind.DRINK).ifPresent(found -> join.add(total, found));
        }
        Map<String, DrinkSales> result = new LinkedHashMap<>();
        join.sums.forEach((name, sum) -> result.put(name, sum.done()));
        return result;
    }

    private void add(SaleTotal total, Match match) {
        Sums sum = sums.get(match.name());
        if (sum == null) {
            throw new IllegalStateException("joined to a drink the book has not: " + match.name());
        }
        Exact units = total.quantity().times(match.times());
        LocalDate day = total.day() == null ? month.atEndOfMonth() : total.day();
        switch (total.kind()) {
            case SALE -> {
                sum.sold(units, total.day());
                sum.poured(units, day);
                Money net = net(total, units, sum, day);
                sum.net = sum.net.plus(net);
                sum.paid = sum.paid.plus(paid(total, net));
            }
            case REFUND -> {
                sum.sold(units.negated(), total.day());
                Money net = net(total, units, sum, day);
                sum.net = sum.net.minus(net);
                sum.paid = sum.paid.minus(paid(total, net));
            }
            case COMPLIMENTARY -> {
                sum.complimentary = sum.complimentary.plus(units);
                sum.poured(units, day);
                sum.givenByDay.merge(day, units, Exact::plus);
            }
            case VOID -> {
                // never happened: in neither sales nor use
            }
        }
    }

    /** The money of the till, else the menu price of the day less tax. */
    private Money net(SaleTotal total, Exact units, Sums sum, LocalDate day) {
        if (total.net() != null) {
            return total.net();
        }
        sum.pricedByMenu = true;
        Optional<Money> price = calendar.priceOn(sum.drink, day);
        sum.moneyKnown = sum.moneyKnown && price.isPresent();
        return price.map(this::withoutTax).orElse(Money.ZERO).times(units);
    }

    /** With the till's own tax where it tells it, else with that of the settings, where menu prices include it. */
    private Money paid(SaleTotal total, Money net) {
        if (!book.settings().get(Setting.MENU_PRICES_INCLUDE_TAX)) {
            return net;
        }
        return total.paid() != null ? total.paid() : net.withTax(book.settings().get(Setting.SALES_TAX_PERCENT));
    }

    private Money withoutTax(Money menuPrice) {
        return netOf(menuPrice, book);
    }

    /** A menu price less tax where menu prices include it. */
    static Money netOf(Money menuPrice, Book book) {
        return book.settings().get(Setting.MENU_PRICES_INCLUDE_TAX)
                ? menuPrice.withoutTax(book.settings().get(Setting.SALES_TAX_PERCENT))
                : menuPrice;
    }

    /** A menu price more than so many times what guests paid, or they so many times it, is a slip of book or till. */
    private static final Exact FAR = Exact.of(2);

    /** What guests paid a serve, as they read prices, where that is far from the menu price; else empty. */
    static Optional<Money> farPaid(Money menuPrice, DrinkSales sales, Book book) {
        Money menuNet = netOf(menuPrice, book);
        if (!sales.moneyKnown() || !sales.sold().isPositive() || !menuNet.isPositive()) {
            return Optional.empty();
        }
        Money net = sales.netSales().dividedBy(sales.sold());
        boolean far = net.compareTo(menuNet.times(FAR)) > 0 || net.times(FAR).compareTo(menuNet) < 0;
        return Optional.of(menuPrice.times(net.dividedBy(menuNet))).filter(paid -> far);
    }

    /** The running sums of one drink. */
    private static final class Sums {
        private final Drink drink;
        private Exact sold = Exact.ZERO;
        private Exact complimentary = Exact.ZERO;
        private Money net = Money.ZERO;
        private Money paid = Money.ZERO;
        private final TreeMap<LocalDate, Exact> soldByDay = new TreeMap<>();
        private final TreeMap<LocalDate, Exact> pouredByDay = new TreeMap<>();
        private final TreeMap<LocalDate, Exact> givenByDay = new TreeMap<>();
        private boolean pricedByMenu;
        private boolean moneyKnown = true;

        Sums(Drink drink) {
            this.drink = drink;
        }

        void sold(Exact units, @org.jspecify.annotations.Nullable LocalDate day) {
            sold = sold.plus(units);
            if (day != null) {
                soldByDay.merge(day, units, Exact::plus);
            }
        }

        void poured(Exact units, LocalDate day) {
            pouredByDay.merge(day, units, Exact::plus);
        }

        DrinkSales done() {
            return new DrinkSales(
                    drink.name(),
                    sold,
                    complimentary,
                    net,
                    paid,
                    soldByDay,
                    pouredByDay,
                    givenByDay,
                    pricedByMenu,
                    moneyKnown);
        }
    }
}
