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
import heeltap.record.SetAside;
import heeltap.record.StockCount;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.stock.Containers;
import heeltap.stock.Countable;
import heeltap.stock.Counting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Counts and losses brought to ingredients in their base measure; what cannot be is a problem with its place. */
final class CountStage {
    private final NameBook names;
    private final Costs costs;
    private final Units units;
    private final LocalDate lastDay;
    private final Map<String, Ingredient> ingredients = new HashMap<>();
    private final Map<String, Preparation> preparations = new HashMap<>();
    private final Map<String, List<Pack>> packs = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    /**
     * Counts as of the month.
     *
     * @param purchases all that are known up to the month's end, in order of time: what each ingredient comes in
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
                packs.computeIfAbsent(purchase.ingredient(), name -> new ArrayList<>())
                        .add(purchase.pack());
            }
        }
    }

    /**
     * Counted ingredients.
     *
     * @param byIngredient those with a row of their own, what counted preparations hold added
     * @param onlyInPreparations what counted preparations hold of ingredients that have no row of their own
     * @param rows where each sum comes from
     */
    record Counted(Map<String, Exact> byIngredient, Map<String, Exact> onlyInPreparations, List<CountedRow> rows) {}

    /**
     * Adds the rows of a count up.
     *
     * @param kind opening or closing, for the rows
     * @param unread rows of the same files that could not be read
     */
    Counted count(List<StockCount> counts, String kind, List<SetAside> unread) {
        Map<String, Exact> own = new TreeMap<>();
        Map<String, Exact> inPreparations = new TreeMap<>();
        TreeSet<String> faulty = new TreeSet<>();
        List<CountedRow> rows = new ArrayList<>();
        for (StockCount row : counts) {
            Optional<Match> match = names.find(Where.STOCK, row.item(), "");
            if (match.isEmpty() || match.get().kind() == Match.Kind.IGNORED) {
                continue;
            }
            Exact number = row.count().times(match.get().times());
            int told = problems.size();
            if (match.get().kind() == Match.Kind.INGREDIENT) {
                Ingredient ingredient = ingredients.get(match.get().name());
                if (ingredient != null) {
                    Optional<Exact> base = ingredient(ingredient, number, row.unit(), row.place());
                    base.ifPresentOrElse(
                            amount -> own.merge(ingredient.name(), amount, Exact::plus),
                            () -> faulty.add(ingredient.name()));
                    rows.add(counted(kind, ingredient.name(), match.get(), row, number, base));
                }
            } else {
                Map<String, Exact> held = preparation(match.get().name(), number, row.unit(), row.place());
                held.forEach((name, amount) -> {
                    inPreparations.merge(name, amount, Exact::plus);
                    rows.add(counted(kind, name, match.get(), row, number, Optional.of(amount)));
                });
                if (held.isEmpty() && !number.isZero()) {
                    faulty.addAll(costs.preparationOn(match.get().name(), lastDay)
                            .use()
                            .keySet());
                }
                if (held.isEmpty()) {
                    rows.add(counted(kind, "", match.get(), row, number, Optional.empty()));
                }
            }
            setAside(told, row.place(), text(row), row.count(), row.item());
        }
        unread.forEach(row ->
                names.find(Where.STOCK, row.item(), "").ifPresent(match -> leaveOut(row, match, own.keySet(), faulty)));
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
        return new Counted(
                own,
                rest,
                rows.stream()
                        .map(row -> own.containsKey(row.ingredient()) ? row : row.unused())
                        .toList());
    }

    /** What a row that was set aside speaks of is not counted, nor is what a preparation holds. */
    private void leaveOut(SetAside row, Match match, Set<String> counted, Set<String> faulty) {
        boolean ingredient = match.kind() == Match.Kind.INGREDIENT;
        Set<String> left = new TreeSet<>();
        if (ingredient) {
            left.add(match.name());
        } else if (match.kind() == Match.Kind.PREPARATION) {
            left.addAll(costs.preparationOn(match.name(), lastDay).use().keySet());
        }
        left.retainAll(counted);
        if (left.isEmpty()) {
            return;
        }
        faulty.addAll(left);
        String others = ingredient
                ? "its other counts are left out too"
                : "the counts of what it holds are left out too (" + String.join(", ", left) + ")";
        problems.add(Problem.fault(
                ProblemKind.COUNT_IMPOSSIBLE,
                row.place(),
                row.text(),
                "This row of " + match.name() + " was set aside, so " + others + ": part of a count is no count.",
                "Correct the row."));
    }

    private static CountedRow counted(
            String kind, String ingredient, Match match, StockCount row, Exact number, Optional<Exact> base) {
        return new CountedRow(
                kind,
                ingredient,
                match.name(),
                match.kind(),
                null,
                number,
                row.unit(),
                row.location(),
                base,
                base.isPresent(),
                row.place());
    }

    /**
     * Losses and transfers by ingredient, as bought.
     *
     * @param recorded by reason of loss; gifts among them
     * @param transfers in (positive) and out (negative)
     * @param rows where each sum comes from
     */
    record Lost(Map<String, Map<Loss.Reason, Exact>> recorded, Map<String, Exact> transfers, List<CountedRow> rows) {
        Exact recordedOf(String ingredient) {
            return recorded.getOrDefault(ingredient, Map.of()).values().stream().reduce(Exact.ZERO, Exact::plus);
        }
    }

    Lost lose(List<Loss> losses) {
        Map<String, Map<Loss.Reason, Exact>> recorded = new TreeMap<>();
        Map<String, Exact> transfers = new TreeMap<>();
        List<CountedRow> rows = new ArrayList<>();
        for (Loss row : losses) {
            Optional<Match> match = names.find(Where.LOSSES, row.item(), "");
            if (match.isEmpty() || match.get().kind() == Match.Kind.IGNORED) {
                continue;
            }
            boolean transfer = row.reason() == Loss.Reason.TRANSFER_IN || row.reason() == Loss.Reason.TRANSFER_OUT;
            int told = problems.size();
            Map<String, Exact> amounts = lost(row, match.get(), transfer);
            setAside(told, row.place(), text(row), row.amount(), row.item());
            Exact sign = row.reason() == Loss.Reason.TRANSFER_OUT ? Exact.of(-1) : Exact.ONE;
            amounts.forEach((name, amount) -> {
                if (transfer) {
                    transfers.merge(name, amount.times(sign), Exact::plus);
                } else {
                    recorded.computeIfAbsent(name, absent -> new TreeMap<>()).merge(row.reason(), amount, Exact::plus);
                }
                rows.add(lost(row, match.get(), name, Optional.of(amount.times(sign))));
            });
            if (amounts.isEmpty()) {
                rows.add(lost(row, match.get(), "", Optional.empty()));
            }
        }
        return new Lost(recorded, transfers, rows);
    }

    private static CountedRow lost(Loss row, Match match, String ingredient, Optional<Exact> base) {
        return new CountedRow(
                row.reason().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                ingredient,
                match.name(),
                match.kind(),
                row.date(),
                row.amount().times(match.times()),
                row.unit(),
                "",
                base,
                base.isPresent(),
                row.place());
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
        Containers containers = Containers.of(packs.getOrDefault(ingredient.name(), List.of()), ingredient.listPack());
        Optional<Amount> bottle = ingredient.bottleMl() != null
                ? Optional.of(new Amount(ingredient.bottleMl(), Measure.ML))
                : containers.bottle();
        Countable thing = new Countable(
                ingredient.name(),
                ingredient.measure(),
                bottle,
                ingredient.bottleMl() != null,
                containers,
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
                Containers.NONE,
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

    /** A row of which a fault was told since is not used. */
    private void setAside(int told, Place row, String text, Exact number, String item) {
        problems.subList(told, problems.size()).stream()
                .filter(problem -> problem.severity() == Problem.Severity.FAULT)
                .findFirst()
                .ifPresent(
                        fault -> setAside.add(new SetAside(row, fault.reason(), text, number, null, List.of(), item)));
    }

    private static String text(StockCount row) {
        return joined(row.item(), row.count().toString(), row.unit(), row.location());
    }

    private static String text(Loss row) {
        String day = row.date() == null ? "" : row.date().toString();
        String reason = row.reason().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return joined(day, row.item(), row.amount().toString(), row.unit(), reason);
    }

    private static String joined(String... cells) {
        return Stream.of(cells).filter(cell -> !cell.isEmpty()).collect(Collectors.joining(" | "));
    }

    /** Rows that could not be brought to an ingredient. */
    List<SetAside> setAside() {
        return setAside;
    }

    List<Problem> problems() {
        return problems;
    }
}
