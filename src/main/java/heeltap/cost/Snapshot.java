package heeltap.cost;

import heeltap.cost.SpecVersions.Item;
import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.mixture.Contents;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.record.AcidTargets;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.NameRule.Where;
import heeltap.record.Preparation;
import heeltap.record.Setting;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.Place;
import heeltap.source.Problem;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** All preparations and drinks by the specs of one day. */
final class Snapshot {
    private static final Exact MINUTES_AN_HOUR = Exact.of(60);

    private final Book book;
    private final NameBook names;
    private final Units units;
    private final SpecVersions versions;
    private final LocalDate day;
    private final Map<String, Supply> ingredients;
    private final Map<Item, Supply> made = new HashMap<>();
    private final Map<String, PreparationCost> preparations = new HashMap<>();
    private final Map<String, DrinkCost> drinks = new HashMap<>();
    private final Set<Problem> problems = new LinkedHashSet<>();
    private final Set<Problem> told = new HashSet<>();
    private final Cycles cycles;
    private final Map<String, FruitShare> fruitShares;

    /** @param fruitShares as in {@link Recipe} */
    Snapshot(
            Book book,
            NameBook names,
            Units units,
            SpecVersions versions,
            Map<String, Supply> ingredients,
            Map<String, FruitShare> fruitShares,
            LocalDate day) {
        this.book = book;
        this.names = names;
        this.units = units;
        this.versions = versions;
        this.ingredients = ingredients;
        this.fruitShares = fruitShares;
        this.day = day;
        Map<Item, Preparation> preparationRows = new LinkedHashMap<>();
        Map<Item, Drink> drinkRows = new LinkedHashMap<>();
        book.preparations()
                .forEach(row -> preparationRows.putIfAbsent(new Item(Match.Kind.PREPARATION, row.name()), row));
        book.drinks().forEach(row -> drinkRows.putIfAbsent(new Item(Match.Kind.DRINK, row.name()), row));
        Map<Item, SortedSet<Item>> uses = new HashMap<>();
        preparationRows.keySet().forEach(item -> uses.put(item, used(item)));
        drinkRows.keySet().forEach(item -> uses.put(item, used(item)));
        cycles = new Cycles(uses);
        for (Item item : cycles.order()) {
            Preparation preparation = preparationRows.get(item);
            Drink drink = drinkRows.get(item);
            if (preparation != null) {
                make(item, preparation);
            } else if (drink != null) {
                make(item, drink);
            }
        }
    }

    private SortedSet<Item> used(Item item) {
        SortedSet<Item> used = new TreeSet<>(Cycles.BY_NAME);
        for (SpecLine line : versions.on(item, day)) {
            names.findInSpecs(line.ingredient())
                    .filter(match -> match.kind() != Match.Kind.INGREDIENT)
                    .ifPresent(match -> used.add(new Item(match.kind(), match.name())));
        }
        return used;
    }

    private void make(Item item, Preparation row) {
        Recipe recipe = recipe(item);
        if (versions.on(item, day).isEmpty()) {
            recipe.fault(SpecFaults.missing(item, row.place(), versions.findFirst(item)));
        }
        recipe.shareOutParts(null);
        Juicing.settle(recipe, typedMl(row));
        recipe.fillUp(typedMl(row));
        Targets.solve(row, recipe, book.settings().get(Setting.ACID_TARGETS) == AcidTargets.EXACT);
        Yield yield = Yield.of(row, recipe);
        gather(recipe);
        RowSums sums = recipe.sums();
        Money batchCost = recipe.cost();
        Exact makes = yield.makes();
        Exact minutes = row.minutes().plus(sums.minutes());
        Money unitCost = batchCost == null || makes == null ? null : batchCost.dividedBy(makes);
        PreparationCost cost = new PreparationCost(
                row,
                makes == null ? null : new Amount(makes, row.measure()),
                unitCost == null ? null : batchCost,
                unitCost,
                minutes,
                labour(minutes),
                recipe.costLines(),
                over(sums.use(), makes),
                over(sums.preparations(), makes),
                yield.contents(),
                row.keepsDays(),
                sums.allergens(),
                Cause.told(recipe.causes(), row.name()),
                recipe.notices(),
                sums.unknown(),
                sums.published());
        preparations.put(row.name(), cost);
        made.put(item, supply(cost, makes, recipe.causes()));
    }

    /** What a typed yield fills, for a line to top. */
    private static @Nullable Exact typedMl(Preparation row) {
        Exact makes = row.makes();
        if (makes == null) {
            return null;
        }
        if (row.makesUnit() == null) {
            return row.measure() == Measure.ML ? makes : null;
        }
        return row.makesUnit().kind() == Unit.Kind.VOLUME
                ? makes.times(row.makesUnit().factor())
                : null;
    }

    private static Supply supply(PreparationCost cost, @Nullable Exact makes, Set<Cause> causes) {
        Map<String, Exact> withItself = new TreeMap<>(cost.preparations());
        withItself.merge(cost.name(), Exact.ONE, Exact::plus);
        Contents contents = cost.contents();
        Measure measure = cost.preparation().measure();
        Exact density =
                measure != Measure.EACH && Yield.isKnown(contents) ? Exact.ofPhysical(contents.density()) : null;
        return new Supply(
                cost.name(),
                Match.Kind.PREPARATION,
                Traits.of(measure, density),
                cost.unitCost(),
                cost.use(),
                Collections.unmodifiableMap(withItself),
                makes == null ? Exact.ZERO : cost.minutes().dividedBy(makes),
                contents,
                Contents.NOTHING,
                makes,
                cost.allergens(),
                causes,
                cost.unknownComposition(),
                cost.publishedComposition());
    }

    private void make(Item item, Drink row) {
        Recipe recipe = recipe(item);
        boolean specified = !versions.on(item, day).isEmpty();
        Money fixed = row.fixedCost();
        if (fixed != null && versions.findFirst(item).isPresent()) {
            recipe.fault(SpecFaults.twoCosts(row));
        } else if (fixed == null && !specified) {
            recipe.fault(SpecFaults.missing(item, row.place(), versions.findFirst(item)));
        }
        recipe.rows().stream()
                .filter(Row::isToTarget)
                .forEach(line -> recipe.fault(SpecFaults.targetOfDrink(line.line())));
        recipe.shareOutParts(row.serveMl());
        recipe.fillUp(row.serveMl());
        gather(recipe);
        RowSums sums = recipe.sums();
        Money cost = fixed != null && recipe.causes().isEmpty()
                ? IngredientPrices.withoutInvoiceTax(fixed, book.settings())
                : recipe.cost();
        Exact minutes = row.minutes().plus(sums.minutes());
        Contents contents = sums.contents();
        DrinkCost result = new DrinkCost(
                row,
                cost,
                minutes,
                labour(minutes),
                recipe.costLines(),
                Collections.unmodifiableMap(sums.use()),
                Collections.unmodifiableMap(sums.preparations()),
                contents,
                Glass.of(row, contents, new Ice(book.settings())),
                sums.allergens(),
                Cause.told(recipe.causes(), row.name()),
                recipe.notices(),
                sums.unknown(),
                sums.published());
        drinks.put(row.name(), result);
        made.put(item, supply(result, recipe.causes()));
    }

    private static Supply supply(DrinkCost cost, Set<Cause> causes) {
        return new Supply(
                cost.name(),
                Match.Kind.DRINK,
                Traits.of(Measure.EACH, null),
                cost.knownCost(),
                cost.use(),
                cost.preparations(),
                cost.minutes(),
                cost.contents(),
                Contents.NOTHING,
                null,
                cost.allergens(),
                causes,
                cost.unknownComposition(),
                cost.publishedComposition());
    }

    private Recipe recipe(Item item) {
        Recipe recipe = new Recipe(
                item.name(),
                units,
                fruitShares,
                book.settings().get(Setting.RINSE_LEFT_PERCENT).percent());
        List<Item> path = cycles.path(item);
        if (!path.isEmpty()) {
            recipe.fault(SpecFaults.cycle(path.stream().map(Item::name).toList(), cyclePlace(path)));
        }
        for (SpecLine line : versions.on(item, day)) {
            Optional<Match> match = names.findInSpecs(line.ingredient());
            if (match.isPresent()) {
                add(recipe, line, match.get());
            } else if (line.amount() instanceof SpecAmount.Unclear unclear) {
                recipe.addUnclear(line, unclear);
            } else {
                recipe.fault(SpecFaults.unknown(line, names.nearest(Where.ANY, line.ingredient())));
                recipe.addUnknown(line, line.ingredient());
            }
        }
        return recipe;
    }

    private void add(Recipe recipe, SpecLine line, Match match) {
        Item used = new Item(match.kind(), match.name());
        Supply supply = match.kind() == Match.Kind.INGREDIENT ? ingredients.get(match.name()) : made.get(used);
        if (supply == null) {
            recipe.addUnknown(line, match.name());
        } else {
            recipe.add(line, supply, match.times());
        }
    }

    private Place cyclePlace(List<Item> path) {
        return versions.on(path.get(0), day).stream()
                .filter(line -> names.findInSpecs(line.ingredient())
                        .filter(match -> match.kind() == path.get(1).kind()
                                && match.name().equals(path.get(1).name()))
                        .isPresent())
                .map(SpecLine::place)
                .findFirst()
                .orElseThrow();
    }

    private void gather(Recipe recipe) {
        told.addAll(recipe.told());
        recipe.causes().stream()
                .map(Cause::problem)
                .filter(problem -> !told.contains(problem))
                .forEach(problems::add);
        problems.addAll(recipe.notices());
    }

    private Money labour(Exact minutes) {
        return book.settings().get(Setting.LABOUR_COST_PER_HOUR).times(minutes).dividedBy(MINUTES_AN_HOUR);
    }

    private static Map<String, Exact> over(Map<String, Exact> batch, @Nullable Exact makes) {
        Map<String, Exact> each = new TreeMap<>();
        if (makes != null) {
            batch.forEach((name, amount) -> each.put(name, amount.dividedBy(makes)));
        }
        return Collections.unmodifiableMap(each);
    }

    @Nullable PreparationCost preparation(String name) {
        return preparations.get(name);
    }

    @Nullable DrinkCost drink(String name) {
        return drinks.get(name);
    }

    @Nullable Supply supply(Match match) {
        return match.kind() == Match.Kind.INGREDIENT
                ? ingredients.get(match.name())
                : made.get(new Item(match.kind(), match.name()));
    }

    /** What is wrong with the items, each once, where it is. */
    Set<Problem> problems() {
        return problems;
    }
}
