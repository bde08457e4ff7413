package heeltap.review;

import heeltap.cost.Costs;
import heeltap.cost.PreparationCost;
import heeltap.cost.Purchase;
import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Pack;
import heeltap.quantity.Units;
import heeltap.record.Book;
import heeltap.record.Ingredient;
import heeltap.record.Loss;
import heeltap.record.NameRule.Where;
import heeltap.record.Preparation;
import heeltap.record.StockCount;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.stock.Countable;
import heeltap.stock.Counting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Counts and losses brought to ingredients in their base measure; what cannot be is a problem with its place. */
final class CountStage {
    private final NameBook names;
    private final Costs costs;
    private final Units units;
    private final LocalDate lastDay;
    private final Map<String, Ingredient> ingredients = new HashMap<>();
    private final Map<String, Preparation> preparations = new HashMap<>();
    private final Map<String, Pack> lastPacks = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /**
     * Counts as of the month.
     *
     * @param purchases all that are known up to the month's end, in order of time: the last pack of each ingredient
     */
    CountStage(Book book, NameBook names, Costs costs, LocalDate lastDay, List<Purchase> purchases) {
        this.names = names;
        this.costs = costs;
        this.units = costs.units();
        this.lastDay = lastDay;
        book.ingredients().forEach(ingredient -> ingredients.put(ingredient.name(), ingredient));
        book.preparations().forEach(preparation -> preparations.put(preparation.name(), preparation));
        for (Purchase purchase : purchases) {
            if (purchase.ingredient() != null && purchase.pack() != null) {
                lastPacks.put(purchase.ingredient(), purchase.pack());
            }
        }
    }

    /**
     * Counted ingredients.
     *
     * @param byIngredient those with a row of their own, what counted preparations hold added
     * @param onlyInPreparations what counted preparations hold of ingredients that have no row of their own
     */
    record Counted(Map<String, Exact> byIngredient, Map<String, Exact> onlyInPreparations) {}

    Counted count(List<StockCount> rows) {
        Map<String, Exact> own = new TreeMap<>();
        Map<String, Exact> inPreparations = new TreeMap<>();
        TreeSet<String> faulty = new TreeSet<>();
        for (StockCount row : rows) {
            Optional<Match> match = names.find(Where.STOCK, row.item(), "");
            if (match.isEmpty() || match.get().kind() == Match.Kind.IGNORED) {
                continue;
            }
            Exact number = row.count().times(match.get().times());
            if (match.get().kind() == Match.Kind.INGREDIENT) {
                Ingredient ingredient = ingredients.get(match.get().name());
                if (ingredient != null) {
                    ingredient(ingredient, number, row.unit(), row.place())
                            .ifPresentOrElse(
                                    amount -> own.merge(ingredient.name(), amount, Exact::plus),
                                    () -> faulty.add(ingredient.name()));
                }
            } else {
                Map<String, Exact> held = preparation(match.get().name(), number, row.unit(), row.place());
                held.forEach((name, amount) -> inPreparations.merge(name, amount, Exact::plus));
                if (held.isEmpty() && !number.isZero()) {
                    faulty.addAll(costs.preparationOn(match.get().name(), lastDay)
                            .use()
                            .keySet());
                }
            }
        }
        // One row that cannot be understood leaves the whole ingredient uncounted: part of a count is no count.
        faulty.forEach(own::remove);
        Map<String, Exact> rest = new TreeMap<>();
        inPreparations.forEach((name, amount) -> {
            if (own.containsKey(name)) {
                own.merge(name, amount, Exact::plus);
            } else {
                rest.put(name, amount);
            }
        });
        return new Counted(own, rest);
    }

    /**
     * Losses and transfers by ingredient, as bought.
     *
     * @param recorded by reason of loss; gifts among them
     * @param transfers in (positive) and out (negative)
     */
    record Lost(Map<String, Map<Loss.Reason, Exact>> recorded, Map<String, Exact> transfers) {
        Exact recordedOf(String ingredient) {
            return recorded.getOrDefault(ingredient, Map.of()).values().stream().reduce(Exact.ZERO, Exact::plus);
        }
    }

    Lost lose(List<Loss> rows) {
        Map<String, Map<Loss.Reason, Exact>> recorded = new TreeMap<>();
        Map<String, Exact> transfers = new TreeMap<>();
        for (Loss row : rows) {
            Optional<Match> match = names.find(Where.LOSSES, row.item(), "");
            if (match.isEmpty() || match.get().kind() == Match.Kind.IGNORED) {
                continue;
            }
            boolean transfer = row.reason() == Loss.Reason.TRANSFER_IN || row.reason() == Loss.Reason.TRANSFER_OUT;
            Map<String, Exact> amounts = lost(row, match.get(), transfer);
            Exact sign = row.reason() == Loss.Reason.TRANSFER_OUT ? Exact.of(-1) : Exact.ONE;
            amounts.forEach((name, amount) -> {
                if (transfer) {
                    transfers.merge(name, amount.times(sign), Exact::plus);
                } else {
                    recorded.computeIfAbsent(name, absent -> new TreeMap<>()).merge(row.reason(), amount, Exact::plus);
                }
            });
        }
        return new Lost(recorded, transfers);
    }

    private Map<String, Exact> lost(Loss row, Match match, boolean transfer) {
        Exact number = row.amount().times(match.times());
        LocalDate day = row.date() == null ? lastDay : row.date();
        Map<String, Exact> sums = new TreeMap<>();
        switch (match.kind()) {
            case DRINK -> {
                Map<String, Exact> use = costs.drinkOn(match.name(), day).use();
                if (use.isEmpty()) {
                    problems.add(Problem.notice(
                            ProblemKind.SPEC_MISSING,
                            row.place(),
                            row.item(),
                            "The lost drink has no spec, so no ingredient is taken off for it.",
                            "Name what was lost, if it is counted as an ingredient."));
                }
                Use.add(sums, use, serves(row, number).orElse(Exact.ZERO));
            }
            case PREPARATION -> sums.putAll(preparation(match.name(), number, row.unit(), row.place()));
            case INGREDIENT -> {
                Ingredient ingredient = ingredients.get(match.name());
                if (ingredient != null) {
                    ingredient(ingredient, number, row.unit(), row.place())
                            .ifPresent(amount ->
                                    sums.put(ingredient.name(), transfer ? amount : asBought(ingredient, amount)));
                }
            }
            case IGNORED -> {
                // left aside by the book
            }
        }
        return sums;
    }

    /** Losses are as bought, over Usable percent, like all use. */
    private static Exact asBought(Ingredient ingredient, Exact amount) {
        return amount.dividedBy(ingredient.usablePercent().percent());
    }

    private Optional<Exact> serves(Loss row, Exact number) {
        String unit = row.unit().strip();
        if (unit.isEmpty()
                || units.find(unit, Measure.EACH)
                        .filter(found -> found.kind() == heeltap.quantity.Unit.Kind.SERVE
                                || found.kind() == heeltap.quantity.Unit.Kind.COUNT)
                        .isPresent()) {
            return Optional.of(number);
        }
        problems.add(Problem.fault(
                ProblemKind.UNIT_UNKNOWN,
                row.place(),
                row.amount() + " " + row.unit(),
                "A lost drink is counted in serves.",
                "Write the amount in serve, or name the ingredient that was lost."));
        return Optional.empty();
    }

    private Optional<Exact> ingredient(Ingredient ingredient, Exact number, String unit, Place place) {
        Optional<Pack> pack = Optional.ofNullable(lastPacks.get(ingredient.name()))
                .or(() -> Optional.ofNullable(ingredient.listPack()));
        Optional<Amount> bottle = ingredient.bottleMl() != null
                ? Optional.of(new Amount(ingredient.bottleMl(), Measure.ML))
                : pack.map(Pack::unitSize);
        Countable thing = new Countable(
                ingredient.name(),
                ingredient.measure(),
                bottle,
                ingredient.bottleMl() != null,
                pack,
                Optional.empty(),
                Optional.ofNullable(ingredient.composition().density()),
                Optional.ofNullable(ingredient.eachGrams()),
                Optional.ofNullable(ingredient.fullBottleGrams()),
                Optional.ofNullable(ingredient.emptyBottleGrams()));
        return keep(Counting.toBase(thing, number, unit, place, units));
    }

    /** What a counted or lost preparation holds, by ingredient as bought. */
    private Map<String, Exact> preparation(String name, Exact number, String unit, Place place) {
        Preparation preparation = Optional.ofNullable(preparations.get(name)).orElseThrow();
        PreparationCost cost = costs.preparationOn(name, lastDay);
        if (cost.use().isEmpty()) {
            problems.add(Problem.fault(
                    ProblemKind.SPEC_MISSING,
                    place,
                    name,
                    "The preparation was counted but has no spec, so nobody knows what is in it.",
                    "Add its lines to the sheet Specs, or count its ingredients."));
            return Map.of();
        }
        Countable thing = new Countable(
                name,
                preparation.measure(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.ofNullable(cost.makes()).map(Amount::value),
                density(cost),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Map<String, Exact> sums = new TreeMap<>();
        keep(Counting.toBase(thing, number, unit, place, units)).ifPresent(amount -> Use.add(sums, cost.use(), amount));
        return sums;
    }

    private static Optional<Exact> density(PreparationCost cost) {
        double density = cost.contents().density();
        return density > 0 ? Optional.of(Exact.ofPhysical(density)) : Optional.empty();
    }

    private Optional<Exact> keep(Counting.Counted counted) {
        counted.problem().ifPresent(problems::add);
        return counted.amount();
    }

    List<Problem> problems() {
        return problems;
    }
}
