package heeltap.review;

import heeltap.cost.CostLine;
import heeltap.cost.Costs;
import heeltap.cost.DrinkCost;
import heeltap.cost.Glass;
import heeltap.match.Match;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Folding;
import heeltap.record.Ingredient;
import heeltap.record.Preparation;
import heeltap.record.Setting;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.review.CheaperWay.Kind;
import heeltap.review.CheaperWay.Way;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Where a price will not mend it: the lines that drive the cost of drinks above their target, and cheaper ways within the
 * bar's own ingredients and preparations that keep alcohol, sugar and acidity within a tolerance. Each way is costed as a
 * drink of its own, by the same rules as all others.
 */
final class CheaperWays {
    /** Lines shown of a drink, the dearest first. */
    private static final int LINES = 3;

    private static final int LARGEST_CUT = 4;
    /** Below this a measure is not made smaller. */
    private static final Exact LEAST_ML = Exact.of(10);
    /** So many grams of alcohol, sugar or acid may come or go in any case. */
    private static final double TRACE = 0.05;

    private final Book book;
    private final MonthFigures month;
    private final double tolerance;
    private final Map<String, Ingredient> ingredients = new LinkedHashMap<>();
    private final Map<String, Trial> trials = new LinkedHashMap<>();
    private final List<Drink> drinks = new ArrayList<>();
    private final List<SpecLine> specs = new ArrayList<>();

    /** One way to try, under the name of the drink that stands for it. */
    private record Trial(String drink, CostLine line, Kind kind, SpecLine instead) {}

    private CheaperWays(Book book, MonthFigures month) {
        this.book = book;
        this.month = month;
        this.tolerance =
                book.settings().get(Setting.TASTE_TOLERANCE_PERCENT).percent().toDouble();
        book.ingredients().forEach(one -> ingredients.put(one.name(), one));
    }

    /** By drink in the book's order, the dearest line first; the best way of each kind for each line. */
    static List<CheaperWay> of(Book book, MonthFigures month, List<PriceSuggestion> suggestions) {
        CheaperWays ways = new CheaperWays(book, month);
        List<PriceSuggestion> above = suggestions.stream()
                .filter(one -> one.costPercentNew()
                        .or(one::costPercentNow)
                        .filter(percent -> percent.isGreaterThan(one.drink().targetCostPercent()))
                        .isPresent())
                .toList();
        above.forEach(one -> ways.plan(one.drink().drink()));
        Map<String, DrinkCost> tried = ways.tried();
        List<CheaperWay> found = new ArrayList<>();
        above.forEach(one -> found.addAll(ways.found(one, tried)));
        return List.copyOf(found);
    }

    private DrinkCost cost(String drink) {
        return month.costs().drinkOn(drink, month.lastDay());
    }

    /** The dearest lines first; those of the same cost in the order of the spec. */
    private static List<CostLine> dearest(DrinkCost cost) {
        return cost.lines().stream()
                .filter(line -> line.cost() != null && line.cost().isPositive())
                .sorted(Comparator.comparing(CheaperWays::costOf).reversed())
                .limit(LINES)
                .toList();
    }

    private static Money costOf(CostLine line) {
        return Optional.ofNullable(line.cost()).orElse(Money.ZERO);
    }

    private void plan(String name) {
        DrinkCost cost = cost(name);
        if (cost.cost().isEmpty()) {
            return;
        }
        List<SpecLine> spec = book.specs().stream()
                .filter(line ->
                        cost.lines().stream().anyMatch(known -> known.place().equals(line.place())))
                .toList();
        for (CostLine line : dearest(cost)) {
            Optional<SpecLine> written = spec.stream()
                    .filter(one -> one.place().equals(line.place()))
                    .filter(one -> one.amount() instanceof SpecAmount.Units)
                    .findFirst();
            if (written.isPresent() && line.amount() != null) {
                smaller(written.get(), line).forEach(other -> add(cost, spec, line, Kind.SMALLER, other));
                replacements(line).forEach((other, kind) -> add(cost, spec, line, kind, renamed(written.get(), other)));
            }
        }
    }

    /** By steps of 2.5 ml, or a quarter of another unit. */
    private static List<SpecLine> smaller(SpecLine line, CostLine cost) {
        List<SpecLine> cuts = new ArrayList<>();
        boolean poured = cost.amount() != null
                && cost.amount().measure() == Measure.ML
                && !cost.amount().value().isLessThan(LEAST_ML);
        if (poured && line.amount() instanceof SpecAmount.Units units) {
            String unit = line.unit().trim();
            Exact step = unit.isEmpty() || unit.equalsIgnoreCase("ml") ? Exact.of("2.5") : Exact.of("0.25");
            for (int k = 1; k <= LARGEST_CUT; k++) {
                Exact number = units.number().minus(step.times(Exact.of(k)));
                if (number.isPositive()) {
                    cuts.add(with(line, line.ingredient(), number));
                }
            }
        }
        return cuts;
    }

    private static SpecLine renamed(SpecLine line, String ingredient) {
        return line.amount() instanceof SpecAmount.Units units ? with(line, ingredient, units.number()) : line;
    }

    private static SpecLine with(SpecLine line, String ingredient, Exact number) {
        return new SpecLine(
                line.item(),
                line.from(),
                ingredient,
                new SpecAmount.Units(number),
                number.toString(),
                line.unit(),
                line.wastePercent(),
                line.note(),
                line.place());
    }

    /** For a bought product: the bar's preparations, and bought ones of the same group, of the same measure. */
    private Map<String, Kind> replacements(CostLine line) {
        Map<String, Kind> others = new LinkedHashMap<>();
        Ingredient now = ingredients.get(line.ingredient());
        if (line.kind() != Match.Kind.INGREDIENT || now == null || now.measure() == Measure.EACH) {
            return others;
        }
        for (Preparation preparation : book.preparations()) {
            if (preparation.measure() == now.measure()) {
                others.put(preparation.name(), Kind.PREPARATION);
            }
        }
        for (Ingredient other : book.ingredients()) {
            if (other.group().equals(now.group()) && other.measure() == now.measure() && isKin(other, now)) {
                others.put(other.name(), Kind.INGREDIENT);
            }
        }
        return others;
    }

    /** Whether two products are of one kind: what their names say before a comma shares a word, such as rum. */
    private static boolean isKin(Ingredient other, Ingredient now) {
        Set<String> words = new HashSet<>(kind(now));
        words.retainAll(kind(other));
        return !other.name().equals(now.name()) && !words.isEmpty();
    }

    private static Set<String> kind(Ingredient ingredient) {
        String name = ingredient.name();
        int comma = name.indexOf(',');
        return Arrays.stream(Folding.fold(comma < 0 ? name : name.substring(0, comma))
                        .split(" ", -1))
                .filter(word -> word.length() > 2)
                .collect(Collectors.toSet());
    }

    /** Writes the drink down once more under another name, with one line changed. */
    private void add(DrinkCost cost, List<SpecLine> spec, CostLine line, Kind kind, SpecLine instead) {
        Drink drink = cost.drink();
        String name = "way " + trials.size() + " of the review";
        drinks.add(new Drink(
                name,
                drink.price(),
                drink.category(),
                "",
                drink.method(),
                drink.waterPercent(),
                drink.serveMl(),
                drink.minutes(),
                null,
                null,
                drink.holdPrice(),
                null,
                drink.inMenuAnalysis(),
                drink.place()));
        for (SpecLine other : spec) {
            SpecLine kept = other.place().equals(line.place()) ? instead : other;
            specs.add(new SpecLine(
                    name,
                    null,
                    kept.ingredient(),
                    kept.amount(),
                    kept.amountText(),
                    kept.unit(),
                    kept.wastePercent(),
                    kept.note(),
                    kept.place()));
        }
        trials.put(name, new Trial(drink.name(), line, kind, instead));
    }

    private Map<String, DrinkCost> tried() {
        List<Drink> allDrinks = new ArrayList<>(book.drinks());
        allDrinks.addAll(drinks);
        List<SpecLine> allSpecs = new ArrayList<>(book.specs());
        allSpecs.addAll(specs);
        Book wider = new Book(
                book.bar(),
                book.settings(),
                book.categories(),
                book.ingredients(),
                book.preparations(),
                allDrinks,
                book.prices(),
                allSpecs,
                book.names(),
                book.columns(),
                book.measures(),
                book.accounts());
        Map<String, DrinkCost> tried = new LinkedHashMap<>();
        if (!drinks.isEmpty()) {
            Costs costs = month.costs().forBook(wider);
            trials.keySet().forEach(name -> tried.put(name, costs.drink(name)));
        }
        return tried;
    }

    private List<CheaperWay> found(PriceSuggestion suggestion, Map<String, DrinkCost> tried) {
        List<CheaperWay> ways = new ArrayList<>();
        String name = suggestion.drink().drink();
        DrinkCost now = cost(name);
        if (now.cost().isEmpty()) {
            return ways;
        }
        for (CostLine line : dearest(now)) {
            List<CheaperWay> best = new ArrayList<>();
            for (Kind kind : Kind.values()) {
                best(name, line, kind, now, tried).ifPresent(way -> best.add(way(suggestion, line, now, way)));
            }
            ways.addAll(best.isEmpty() ? List.of(way(suggestion, line, now, null)) : best);
        }
        return ways;
    }

    private CheaperWay way(PriceSuggestion suggestion, CostLine line, DrinkCost now, @Nullable Way way) {
        return new CheaperWay(
                suggestion.drink().drink(),
                suggestion.costPercentNew().or(suggestion::costPercentNow).orElseThrow(),
                suggestion.drink().targetCostPercent(),
                line,
                now,
                Optional.ofNullable(way),
                units(suggestion.drink().drink()));
    }

    /** The cheapest of a kind that stays within the tolerance; the first of those of the same cost. */
    private Optional<Way> best(String drink, CostLine line, Kind kind, DrinkCost now, Map<String, DrinkCost> tried) {
        Exact units = units(drink);
        return trials.entrySet().stream()
                .filter(entry -> entry.getValue().drink().equals(drink)
                        && entry.getValue().kind() == kind
                        && entry.getValue().line().equals(line))
                .map(entry -> new Way(
                        kind,
                        entry.getValue().instead(),
                        Optional.ofNullable(tried.get(entry.getKey())).orElseThrow()))
                .filter(way -> isCheaper(way.then(), now) && isAlike(way.then(), now))
                .min(Comparator.comparing(way -> way.then().cost().orElseThrow()))
                .filter(way -> saving(way, now, units).compareTo(book.settings().get(Setting.LEAST_GAIN)) >= 0);
    }

    private static Money saving(Way way, DrinkCost now, Exact units) {
        return now.cost().orElseThrow().minus(way.then().cost().orElseThrow()).times(units);
    }

    /** Serves poured in the month, given ones included. */
    private Exact units(String drink) {
        DrinkSales sales = Optional.ofNullable(month.sales().get(drink)).orElseThrow();
        return sales.sold().plus(sales.complimentary()).max(Exact.ZERO);
    }

    private static boolean isCheaper(DrinkCost then, DrinkCost now) {
        return then.cost()
                .filter(cost -> cost.compareTo(now.cost().orElseThrow()) < 0)
                .isPresent();
    }

    /** Only where both are known to be what they are. */
    private boolean isAlike(DrinkCost then, DrinkCost now) {
        Glass a = now.glass();
        Glass b = then.glass();
        return Served.isWhole(now)
                && Served.isWhole(then)
                && then.unknownComposition().equals(now.unknownComposition())
                && near(a.alcoholG(), b.alcoholG())
                && near(a.sugarG(), b.sugarG())
                && near(a.acidityAsCitricG(), b.acidityAsCitricG())
                && near(a.saltG(), b.saltG());
    }

    private boolean near(double now, double then) {
        return Math.abs(then - now) <= tolerance * now + TRACE;
    }
}
