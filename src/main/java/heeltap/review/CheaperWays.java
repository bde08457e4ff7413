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
    /** Lines of less, in ml or g, are dashes and pinches that give a drink its taste: nothing takes their place. */
    private static final Exact LEAST_REPLACED = Exact.of(5);
    /** Where the settings ask for no least gain: so much of the drink's cost, and so many units of currency a month. */
    private static final Exact LEAST_PART = Exact.of("0.01");

    private static final Money LEAST_A_MONTH = Money.of("5");

    private static final String BEFORE = ", the line";
    private static final String AFTER = ", its stand-in";

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
                replacements(line, cost)
                        .forEach((other, kind) -> replace(cost, spec, line, kind, written.get(), other));
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

    /** For a bought product of more than a dash: the bar's preparations and bought ones of its kind, not in the drink yet. */
    private Map<String, Kind> replacements(CostLine line, DrinkCost cost) {
        Map<String, Kind> others = new LinkedHashMap<>();
        Ingredient now = ingredients.get(line.ingredient());
        boolean dash = line.amount() == null || line.amount().value().isLessThan(LEAST_REPLACED);
        if (line.kind() != Match.Kind.INGREDIENT || now == null || now.measure() == Measure.EACH || dash) {
            return others;
        }
        for (Preparation preparation : book.preparations()) {
            if (preparation.measure() == now.measure() && isKin(preparation.name(), now)) {
                others.put(preparation.name(), Kind.PREPARATION);
            }
        }
        for (Ingredient other : book.ingredients()) {
            if (other.group().equals(now.group()) && other.measure() == now.measure() && isKin(other.name(), now)) {
                others.put(other.name(), Kind.INGREDIENT);
            }
        }
        cost.lines().forEach(held -> others.remove(held.ingredient()));
        return others;
    }

    /** Whether two products are of one kind: what their names say before a comma shares a word, such as rum. */
    private static boolean isKin(String other, Ingredient now) {
        Set<String> words = new HashSet<>(kind(now.name()));
        words.retainAll(kind(other));
        return !other.equals(now.name()) && !words.isEmpty();
    }

    private static Set<String> kind(String name) {
        int comma = name.indexOf(',');
        return Arrays.stream((comma < 0 ? name : name.substring(0, comma)).split("[\\s\\p{Punct}]+", -1))
                .map(Folding::fold)
                .filter(word -> word.length() > 2)
                .collect(Collectors.toSet());
    }

    /** The drink with another thing in a line's place; beside it the line by itself, before and after. */
    private void replace(
            DrinkCost cost, List<SpecLine> spec, CostLine line, Kind kind, SpecLine written, String other) {
        SpecLine instead = renamed(written, other);
        String name = add(cost, spec, line, kind, instead);
        write(name + BEFORE, cost.drink(), List.of(written));
        write(name + AFTER, cost.drink(), List.of(instead));
    }

    /** The drink with one line changed, under a name of its own. */
    private String add(DrinkCost cost, List<SpecLine> spec, CostLine line, Kind kind, SpecLine instead) {
        String name = "way " + trials.size() + " of the review";
        write(
                name,
                cost.drink(),
                spec.stream()
                        .map(other -> other.place().equals(line.place()) ? instead : other)
                        .toList());
        trials.put(name, new Trial(cost.drink().name(), line, kind, instead));
        return name;
    }

    /** Writes a drink down once more under another name, with other lines. */
    private void write(String name, Drink drink, List<SpecLine> lines) {
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
        for (SpecLine kept : lines) {
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
            drinks.forEach(drink -> tried.put(drink.name(), costs.drink(drink.name())));
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
                        && entry.getValue().line().equals(line)
                        && isAlikeAlone(entry.getKey(), tried))
                .map(entry -> new Way(
                        kind,
                        entry.getValue().instead(),
                        Optional.ofNullable(tried.get(entry.getKey())).orElseThrow()))
                .filter(way -> isCheaper(way.then(), now) && isAlike(way.then(), now))
                .min(Comparator.comparing(way -> way.then().cost().orElseThrow()))
                .filter(way -> saving(way, now, units).compareTo(leastSaving(now, units)) >= 0);
    }

    /** A month. */
    private Money leastSaving(DrinkCost now, Exact units) {
        Money set = book.settings().get(Setting.LEAST_GAIN);
        return set.isPositive()
                ? set
                : now.cost().orElseThrow().times(units).times(LEAST_PART).max(LEAST_A_MONTH);
    }

    /** Whether what takes a line's place is like it by itself, not only in the drink; true of a smaller measure. */
    private boolean isAlikeAlone(String way, Map<String, DrinkCost> tried) {
        DrinkCost before = tried.get(way + BEFORE);
        DrinkCost after = tried.get(way + AFTER);
        return before == null || after == null || isAlike(after, before);
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
