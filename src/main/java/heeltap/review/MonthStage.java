package heeltap.review;

import heeltap.cost.Costs;
import heeltap.cost.IngredientPrices;
import heeltap.cost.MonthPurchases;
import heeltap.cost.Purchase;
import heeltap.cost.Purchases;
import heeltap.cost.StockLayer;
import heeltap.cost.StockPosition;
import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import heeltap.record.Month;
import heeltap.record.PriceRule;
import heeltap.record.SetAside;
import heeltap.record.Setting;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.WithProblems;
import heeltap.stock.InvoiceTie;
import heeltap.stock.Layer;
import heeltap.stock.Reconciliation;
import heeltap.stock.Valuation;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Computes the months one after the other: each opens with what the one before left. */
final class MonthStage {
    /** So many like notices stand each by itself. */
    private static final int FEW = 3;

    private final Book book;
    private final NameBook names;
    private final MenuCalendar calendar;
    private final List<MonthPurchases> earlier = new ArrayList<>();
    private final List<Purchase> purchasesSoFar = new ArrayList<>();

    private MonthStage(Book book, NameBook names, MenuCalendar calendar) {
        this.book = book;
        this.names = names;
        this.calendar = calendar;
    }

    /** The figures of each month, in order of time. */
    static List<MonthFigures> all(Book book, NameBook names, MenuCalendar calendar, List<Month> months) {
        MonthStage stage = new MonthStage(book, names, calendar);
        List<MonthFigures> figures = new ArrayList<>();
        for (Month month : months) {
            Optional<MonthFigures> before = figures.isEmpty()
                    ? Optional.empty()
                    : Optional.of(figures.get(figures.size() - 1))
                            .filter(last -> last.month().plusMonths(1).equals(month.month()));
            figures.add(stage.next(month, before));
        }
        return figures;
    }

    private MonthFigures next(Month month, Optional<MonthFigures> before) {
        List<Problem> problems = new ArrayList<>();
        YearMonth when = month.month();
        WithProblems<List<Purchase>> purchases = Purchases.of(book, names, month.invoices());
        problems.addAll(purchases.problems());
        purchasesSoFar.addAll(purchases.value());
        purchasesSoFar.sort(Purchase.BY_TIME);
        PriceRule drinkRule = book.settings().get(Setting.DRINK_COST_PRICE);

        // Counts need specs but no prices; prices by average or fifo need counts.
        MonthPurchases uncounted = new MonthPurchases(when, purchases.value(), Map.of());
        Map<String, DrinkSales> sales = SalesJoin.join(book, names, calendar, month);
        Costs whole = costs(IngredientPrices.of(book, drinkRule, uncounted, earlier), when);
        FruitCut cut = FruitCut.of(book, whole, sales);
        problems.addAll(cut.notices());
        Costs unpriced = whole.sharing(cut.shares());
        CountStage counts = new CountStage(book, names, unpriced, when.atEndOfMonth(), purchasesSoFar);
        List<CountedRow> rows = new ArrayList<>();
        StockStage.Ends ends = ends(month, before, counts, rows);
        CountStage.Lost lost = counts.lose(month.losses());
        rows.addAll(lost.rows());
        List<Problem> countProblems = new ArrayList<>(counts.problems());
        List<SetAside> late = new ArrayList<>(counts.setAside());
        late.addAll(linesSetAside(month, purchases));

        IngredientPrices beforeMonth = IngredientPrices.of(
                book,
                book.settings().get(Setting.STOCK_VALUE_PRICE),
                new MonthPurchases(when, List.of(), Map.of()),
                earlier);
        MonthPurchases counted = new MonthPurchases(when, purchases.value(), positions(ends, beforeMonth, when));
        IngredientPrices prices = IngredientPrices.of(book, drinkRule, counted, earlier);
        problems.addAll(prices.problems());
        Costs costs = costs(prices, when).sharing(cut.shares());
        problems.addAll(costs.problems());
        Use use = Use.of(costs, sales);
        Map<String, Reconciliation> stock =
                StockStage.of(book, when, ends, purchases.value(), lost, use.byIngredient(), beforeMonth);
        boolean isCounted = !month.closing().isEmpty();
        countProblems.addAll(impossibleCounts(month, rows, stock));
        problems.addAll(countProblems);
        problems.addAll(uncountedItems(month, isCounted, rows, stock));
        earlier.add(counted);
        return new MonthFigures(
                month.settingAside(late),
                late,
                sales,
                counted,
                prices,
                costs,
                use,
                lost,
                ties(month),
                stock,
                isCounted,
                rows,
                countProblems,
                problems);
    }

    private Costs costs(IngredientPrices prices, YearMonth month) {
        return Costs.of(book, names, prices, month.atEndOfMonth());
    }

    private List<InvoiceTie> ties(Month month) {
        return month.invoices().stream()
                .map(invoice -> InvoiceTie.of(
                        invoice,
                        book.settings().get(Setting.INVOICE_TAX_PERCENT),
                        book.settings().get(Setting.CURRENCY)))
                .toList();
    }

    /** The opening file if there is one, else what the month before counted at its end. */
    private static StockStage.Ends ends(
            Month month, Optional<MonthFigures> before, CountStage counts, List<CountedRow> rows) {
        CountStage.Counted closing = counts.count(month.closing(), CountedRow.CLOSING, setAside(month, "stock"));
        Map<String, Exact> opening = new TreeMap<>();
        Map<String, List<Layer>> layers = new HashMap<>();
        before.ifPresent(last -> last.stock().forEach((name, reconciliation) -> {
            reconciliation.movement().closing().ifPresent(counted -> opening.put(name, counted));
            layers.put(
                    name,
                    reconciliation.valuation().map(Valuation::closingLayers).orElse(List.of()));
        }));
        if (month.opening().isEmpty()) {
            before.ifPresent(last -> last.counts().stream()
                    .filter(row -> row.kind().equals(CountedRow.CLOSING))
                    .map(row -> row.as(CountedRow.OPENING))
                    .forEach(rows::add));
        } else {
            CountStage.Counted own =
                    counts.count(month.opening(), CountedRow.OPENING, setAside(month, "stock opening"));
            opening.clear();
            opening.putAll(own.byIngredient());
            rows.addAll(own.rows());
        }
        rows.addAll(closing.rows());
        return new StockStage.Ends(opening, layers, closing.byIngredient());
    }

    /** Lines of an ingredient of which nothing says how much they hold. */
    private static List<SetAside> linesSetAside(Month month, WithProblems<List<Purchase>> purchases) {
        Set<Place> places = new TreeSet<>();
        purchases.value().stream().filter(Purchase::isSetAside).forEach(line -> places.add(line.place()));
        List<SetAside> rows = new ArrayList<>();
        for (Invoice invoice : month.invoices()) {
            for (InvoiceLine line : invoice.lines()) {
                if (places.contains(line.place())) {
                    String reason = purchases.problems().stream()
                            .filter(problem -> problem.place().equals(line.place()))
                            .map(Problem::reason)
                            .findFirst()
                            .orElseThrow();
                    rows.add(new SetAside(
                            line.place(),
                            reason,
                            line.packText().isEmpty() ? line.product() : line.product() + " | " + line.packText(),
                            line.printedQuantity(),
                            line.printedMoney(),
                            List.of(),
                            line.product()));
                }
            }
        }
        return rows;
    }

    /** Rows of the files of one kind that were not used. */
    private static List<SetAside> setAside(Month month, String kind) {
        return month.setAside().stream()
                .filter(row -> month.findFile(row.place().file(), row.place().sheet())
                        .filter(file -> file.kind().equals(kind))
                        .isPresent())
                .toList();
    }

    /** What the counts say of prices: the opening stock at its own value, else at the price from before the month. */
    private Map<String, StockPosition> positions(StockStage.Ends ends, IngredientPrices before, YearMonth month) {
        Map<String, StockPosition> positions = new TreeMap<>();
        Set<String> counted = new TreeSet<>(ends.opening().keySet());
        counted.addAll(ends.closing().keySet());
        for (String name : counted) {
            positions.put(
                    name,
                    new StockPosition(
                            opening(name, ends, before, month), ends.closing().get(name)));
        }
        return positions;
    }

    private List<StockLayer> opening(String name, StockStage.Ends ends, IngredientPrices before, YearMonth month) {
        Exact quantity = ends.opening().getOrDefault(name, Exact.ZERO);
        List<Layer> layers = StockStage.openingLayers(name, ends);
        Money unit = before.get(name).unitCost();
        if (quantity.isPositive() && layers.isEmpty() && unit != null) {
            layers = List.of(new Layer(quantity, unit.times(quantity)));
        }
        return layers.stream()
                .filter(layer -> layer.quantity().isPositive())
                .map(layer -> new StockLayer(layer.quantity(), layer.value(), broughtBy(name, layer, month)))
                .toList();
    }

    /** The last priced line of the layer's day; null where nobody knows the day. */
    private @Nullable Purchase broughtBy(String ingredient, Layer layer, YearMonth month) {
        return purchasesSoFar.stream()
                .filter(line -> ingredient.equals(line.ingredient()) && line.isPriced())
                .filter(line -> line.date() != null && line.date().equals(layer.day()))
                .filter(line ->
                        line.date() != null && YearMonth.from(line.date()).isBefore(month))
                .reduce((a, b) -> b)
                .orElse(null);
    }

    /** In a counted month an ingredient without a row is uncounted, not zero. */
    private List<Problem> uncountedItems(
            Month month, boolean counted, List<CountedRow> rows, Map<String, Reconciliation> stock) {
        List<Problem> problems = new ArrayList<>();
        List<String> without = new ArrayList<>();
        if (!counted) {
            return problems;
        }
        Place file = month.closing().get(0).place();
        for (Ingredient ingredient : book.ingredients()) {
            Reconciliation line =
                    Optional.ofNullable(stock.get(ingredient.name())).orElseThrow();
            boolean moved = !line.movement().theoreticalUse().isZero()
                    || !line.purchases().isZero();
            if (line.movement().closing().isPresent()
                    && line.movement().opening().isEmpty()
                    && moved) {
                problems.add(Problem.notice(
                        ProblemKind.COUNT_IMPOSSIBLE,
                        Place.of(file.file(), file.sheet()),
                        ingredient.name(),
                        "Nothing says how much " + ingredient.name()
                                + " there was when the month began, so its actual use is not known.",
                        "Count it in the month before, or in a stock-opening file."));
            }
            if (!line.movement().purchasesKnown()) {
                problems.add(Problem.notice(
                        ProblemKind.PACK_UNREADABLE,
                        Place.of(file.file(), file.sheet()),
                        ingredient.name(),
                        "A purchase of " + ingredient.name()
                                + " was set aside because nothing says how much it holds, so its actual use is not known.",
                        "Mend the invoice line that is told, or fill in List pack in the sheet Ingredients."));
                continue;
            }
            boolean partly = rows.stream()
                    .anyMatch(row -> row.kind().equals(CountedRow.CLOSING)
                            && row.ingredient().equals(ingredient.name())
                            && row.itemKind() == Match.Kind.INGREDIENT);
            if (line.movement().closing().isEmpty() && moved && partly) {
                problems.add(Problem.notice(
                        ProblemKind.COUNT_IMPOSSIBLE,
                        Place.of(file.file(), file.sheet()),
                        ingredient.name(),
                        "A count of " + ingredient.name()
                                + " is not understood, so its closing stock and actual use are not known.",
                        "Mend the rows that are told; the table of counts shows which are not used."));
            } else if (line.movement().closing().isEmpty() && moved) {
                without.add(ingredient.name());
            }
        }
        problems.addAll(withoutRow(without, Place.of(file.file(), file.sheet())));
        return problems;
    }

    /** Each by itself while they are few, else all in one. */
    private static List<Problem> withoutRow(List<String> names, Place file) {
        if (names.size() > FEW) {
            return List.of(Problem.notice(
                    ProblemKind.COUNT_IMPOSSIBLE,
                    file,
                    "",
                    names.size() + " ingredients were not counted, so their actual use is not known: "
                            + String.join("; ", names.subList(0, FEW)) + " and " + (names.size() - FEW)
                            + " more, empty in the table of stock.",
                    "Add a row for each; where there is none left, count 0."));
        }
        return names.stream()
                .map(name -> Problem.notice(
                        ProblemKind.COUNT_IMPOSSIBLE,
                        file,
                        name,
                        name + " was not counted, so its actual use is not known.",
                        "Add a row for it; where there is none left, count 0."))
                .toList();
    }

    /** More at the end than there could be. */
    private static List<Problem> impossibleCounts(
            Month month, List<CountedRow> rows, Map<String, Reconciliation> stock) {
        List<Problem> problems = new ArrayList<>();
        for (Reconciliation line : stock.values()) {
            if (line.actualUse().filter(Exact::isNegative).isPresent()) {
                String name = line.movement().ingredient();
                Place place = rows.stream()
                        .filter(row -> row.kind().equals(CountedRow.CLOSING)
                                && row.ingredient().equals(name))
                        .map(CountedRow::place)
                        .min(Comparator.naturalOrder())
                        .orElse(month.closing().get(0).place());
                problems.add(Problem.notice(
                        ProblemKind.COUNT_IMPOSSIBLE,
                        place,
                        name,
                        "More " + name + " was counted at the end than opening stock and purchases could leave.",
                        "Check both counts and whether an invoice is missing."));
            }
        }
        return problems;
    }
}
