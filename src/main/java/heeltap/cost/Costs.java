package heeltap.cost;

import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.mixture.PublishedComposition;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.quantity.Units;
import heeltap.record.BarMeasure;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What every preparation and drink costs by the prices of one month, with its workings.
 *
 * <p>Cost of a line = amount × (1 + waste/100) × unit cost as bought ÷ usable share; of a preparation's unit = lines ÷
 * yield; nothing is rounded. Specs follow the day asked for, prices are always the month's. A fault leaves its item, and
 * all that use it, without cost and says why; the lines that are known stay in use. Not safe for use by several threads.
 */
public final class Costs {
    private final Book book;
    private final NameBook names;
    private final IngredientPrices prices;
    private final Map<String, FruitShare> fruitShares;
    private final Units units;
    private final LocalDate lastDay;
    private final SpecVersions versions;
    private final Map<String, Supply> ingredients = new LinkedHashMap<>();
    private final Map<String, String> tables = new HashMap<>();
    private final Map<LocalDate, Snapshot> snapshots = new HashMap<>();
    private final Set<Problem> problems = new LinkedHashSet<>();

    private Costs(
            Book book,
            NameBook names,
            IngredientPrices prices,
            LocalDate lastDay,
            Map<String, FruitShare> fruitShares) {
        this.book = book;
        this.names = names;
        this.prices = prices;
        this.fruitShares = fruitShares;
        this.lastDay = lastDay;
        units = units(book.measures());
        versions = new SpecVersions(book, names);
        problems.addAll(versions.problems());
        for (Ingredient ingredient : book.ingredients()) {
            ingredients.putIfAbsent(ingredient.name(), supply(ingredient, prices));
            problems.addAll(Allergens.notListed(ingredient));
        }
    }

    /**
     * Every line of a fruit bears it whole, whether it takes the peel or the juice.
     *
     * @param lastDay the last day of the month: the day of {@link #drink} and {@link #preparation}
     */
    public static Costs of(Book book, NameBook names, IngredientPrices prices, LocalDate lastDay) {
        return new Costs(book, names, prices, lastDay, Map.of());
    }

    /** The same, with fruit that is both peeled and juiced shared out. */
    public Costs sharing(Map<String, FruitShare> shares) {
        return new Costs(book, names, prices, lastDay, Map.copyOf(shares));
    }

    /** The same for another book, such as one with a drink more. */
    public Costs forBook(Book other) {
        return new Costs(other, NameBook.of(other), prices, lastDay, fruitShares);
    }

    private Units units(List<BarMeasure> measures) {
        Units all = Units.standard();
        for (BarMeasure measure : measures) {
            if (all.isSettable(measure.unit()) && measure.ml().isPositive()) {
                all = all.with(measure.unit(), measure.ml());
            } else {
                problems.add(Problem.fault(
                        ProblemKind.UNIT_UNKNOWN,
                        measure.place(),
                        measure.unit(),
                        "The size of this unit is fixed, or the size given is not above 0; the row has no effect.",
                        "Take the row out."));
            }
        }
        return all;
    }

    private Supply supply(Ingredient ingredient, IngredientPrices prices) {
        Substances made = Substances.of(ingredient);
        problems.addAll(made.problems());
        if (!made.table().isEmpty()) {
            tables.putIfAbsent(ingredient.name(), made.table());
        }
        Money price = prices.get(ingredient.name()).unitCost();
        Exact bought = Exact.HUNDRED.dividedBy(ingredient.usablePercent());
        String name = ingredient.name();
        return new Supply(
                name,
                Match.Kind.INGREDIENT,
                new Traits(
                        ingredient.measure(),
                        made.analysis().density(),
                        ingredient.eachGrams(),
                        ingredient.juiceMl(),
                        ingredient.bottleMl()),
                price == null ? null : price.times(bought),
                Map.of(name, bought),
                Map.of(),
                Exact.ZERO,
                made.contents(),
                made.juice(),
                null,
                Set.copyOf(ingredient.allergens()),
                price == null ? Set.of(new Cause(name, noPrice(ingredient))) : Set.of(),
                made.unknown() ? Set.of(name) : Set.of(),
                made.table().isEmpty() ? Set.of() : Set.of(name));
    }

    private static Problem noPrice(Ingredient ingredient) {
        return Problem.fault(
                ProblemKind.PRICE_MISSING,
                ingredient.place(),
                ingredient.name(),
                "No invoice of this or an earlier month prices " + ingredient.name()
                        + ", and it has no usable list price.",
                "Add an invoice, or fill in List price and List pack on the sheet Ingredients.");
    }

    private Snapshot on(@Nullable LocalDate day) {
        LocalDate epoch = versions.epoch(day == null ? lastDay : day);
        return snapshots.computeIfAbsent(epoch, this::snapshot);
    }

    private Snapshot snapshot(LocalDate first) {
        return new Snapshot(book, names, units, versions, ingredients, fruitShares, first);
    }

    /** The entry of the published table that filled empty cells of an ingredient; empty for none. */
    public Optional<PublishedComposition> publishedContents(String ingredient) {
        return Optional.ofNullable(tables.get(ingredient)).flatMap(PublishedComposition::find);
    }

    /**
     * A drink as on the month's last day.
     *
     * @throws IllegalArgumentException if the book has no such drink
     */
    public DrinkCost drink(String name) {
        return drinkOn(name, null);
    }

    /**
     * A drink by the spec of a day; null: the month's last.
     *
     * @throws IllegalArgumentException if the book has no such drink
     */
    public DrinkCost drinkOn(String name, @Nullable LocalDate day) {
        DrinkCost cost = on(day).drink(name);
        if (cost == null) {
            throw new IllegalArgumentException("no drink of that name: " + name);
        }
        return cost;
    }

    /**
     * A preparation as on the month's last day.
     *
     * @throws IllegalArgumentException if the book has no such preparation
     */
    public PreparationCost preparation(String name) {
        return preparationOn(name, null);
    }

    /**
     * A preparation by the spec of a day; null: the month's last.
     *
     * @throws IllegalArgumentException if the book has no such preparation
     */
    public PreparationCost preparationOn(String name, @Nullable LocalDate day) {
        PreparationCost cost = on(day).preparation(name);
        if (cost == null) {
            throw new IllegalArgumentException("no preparation of that name: " + name);
        }
        return cost;
    }

    /** All drinks as on the month's last day, in the order of the book. */
    public List<DrinkCost> drinks() {
        return book.drinks().stream()
                .map(drink -> drink(drink.name()))
                .distinct()
                .toList();
    }

    /** All preparations as on the month's last day, in the order of the book. */
    public List<PreparationCost> preparations() {
        return book.preparations().stream()
                .map(preparation -> preparation(preparation.name()))
                .distinct()
                .toList();
    }

    /** The bar's units: the standard ones with its own sizes. */
    public Units units() {
        return units;
    }

    /**
     * What an amount of an ingredient, preparation or drink takes out of the stock, as bought.
     *
     * @param match what it is; the amount counts {@code times} over
     * @param unit as written; empty: its measure, of a drink a serve
     * @param day whose spec holds; null: the month's last
     * @param place where the amount stands, for a problem
     */
    public ItemUse use(Match match, Exact amount, String unit, @Nullable LocalDate day, Place place) {
        Supply supply = on(day).supply(match);
        if (supply == null) {
            return new ItemUse(Map.of(), Map.of(), List.of());
        }
        LineAmount worked = LineAmount.of(units, amount.times(match.times()), unit, supply, place);
        List<Problem> found = new ArrayList<>();
        if (worked.problem() != null) {
            found.add(worked.problem());
        }
        found.addAll(Cause.told(
                supply.causes().stream()
                        .filter(cause -> cause.problem().kind() != ProblemKind.PRICE_MISSING)
                        .toList(),
                match.name()));
        return new ItemUse(
                times(supply.use(), worked.value()), times(supply.preparations(), worked.value()), List.copyOf(found));
    }

    private static Map<String, Exact> times(Map<String, Exact> each, @Nullable Exact factor) {
        Map<String, Exact> all = new TreeMap<>();
        if (factor != null) {
            each.forEach((name, amount) -> all.put(name, amount.times(factor)));
        }
        return all;
    }

    /** What is wrong with the specs of the month's last day, each fault once, by place. */
    public List<Problem> problems() {
        Collection<Problem> all = new LinkedHashSet<>(problems);
        all.addAll(on(null).problems());
        return all.stream().sorted(Problem.ORDER).toList();
    }
}
