package heeltap.review;

import static heeltap.review.DrinkTable.number;
import static heeltap.review.DrinkTable.physical;

import heeltap.cost.CostLine;
import heeltap.cost.IngredientPrice;
import heeltap.cost.PreparationCost;
import heeltap.cost.Purchase;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.mixture.Contents;
import heeltap.mixture.PublishedComposition;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Composition;
import heeltap.record.Ingredient;
import heeltap.record.Preparation;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.source.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What ingredients and preparations cost. */
final class CostTables {
    private CostTables() {}

    static Table ingredients(Book book, MonthFigures month, Words words) {
        Filling table = Shapes.INGREDIENTS
                .fill(words.texts())
                .formula(
                        "change_percent",
                        "IF(OR({previous_unit_cost}=\"\",{unit_cost}=\"\"),\"\",IF({previous_unit_cost}=0,\"\",({unit_cost}-{previous_unit_cost})/{previous_unit_cost}*100))")
                .formula("margin_effect", "-({unit_cost}-{previous_unit_cost})*{use}");
        for (Ingredient ingredient : book.ingredients()) {
            IngredientPrice price = month.prices().get(ingredient.name());
            Exact use = month.use().byIngredient().getOrDefault(ingredient.name(), Exact.ZERO);
            Cells cells = new Cells()
                    .set("ingredient", CellValue.of(ingredient.name()))
                    .set("group", CellValue.of(ingredient.group()))
                    .set("measure", words.measure(ingredient.measure()))
                    .set("unit_cost", CellValue.of(price.unitCost()))
                    .set("price_basis", words.term("price-basis", price.basis().text()))
                    .set("previous_unit_cost", CellValue.of(price.previousUnitCost()))
                    .set("change_percent", number(price.changePercent()))
                    .set("use", CellValue.of(use))
                    .set("margin_effect", CellValue.of(marginEffect(price, use).orElse(null)));
            Purchase source = price.source();
            if (source != null) {
                cells.set("supplier", CellValue.of(source.supplier()))
                        .set("invoice", CellValue.of(source.invoice()))
                        .set("date", CellValue.of(source.date()))
                        .set("file", CellValue.of(source.place().file()))
                        .set("row", CellValue.of(source.place().row()));
            }
            cells.set("contents_from", CellValue.of(contentsFrom(ingredient, month)));
            table.add(price.unitCost() == null ? Emphasis.MARKED : Emphasis.PLAIN, cells);
        }
        return table.done();
    }

    /** Who says what it is made of, for an ingredient that a spec of the last day uses, in a drink or a preparation. */
    private static String contentsFrom(Ingredient row, MonthFigures month) {
        String ingredient = row.name();
        boolean used =
                month.costs().drinks().stream().anyMatch(drink -> drink.use().containsKey(ingredient))
                        || month.costs().preparations().stream()
                                .anyMatch(made -> made.use().containsKey(ingredient));
        if (!used) {
            return "";
        }
        boolean unknown = month.costs().drinks().stream()
                        .anyMatch(drink -> drink.unknownComposition().contains(ingredient))
                || month.costs().preparations().stream()
                        .anyMatch(made -> made.unknownComposition().contains(ingredient));
        if (unknown) {
            return "unknown";
        }
        return month.costs()
                .publishedContents(ingredient)
                .map(entry -> fromTable(row.composition(), entry))
                .orElse("book");
    }

    /** Which figures the published table filled in, and where it has them from. */
    private static String fromTable(Composition book, PublishedComposition entry) {
        Map<String, @Nullable Exact> typed = new LinkedHashMap<>();
        typed.put("Density", book.density());
        typed.put("ABV", book.abvPercent());
        typed.put("Sugar", book.sugar());
        typed.put("Citric acid", book.citric());
        typed.put("Malic acid", book.malic());
        typed.put("Tartaric acid", book.tartaric());
        typed.put("Other acid", book.otherAcid());
        typed.put("Salt", book.salt());
        boolean some = typed.values().stream().anyMatch(value -> value != null);
        Map<String, List<String>> bySource = new LinkedHashMap<>();
        typed.forEach((heading, value) -> {
            String source = entry.sources().get(heading);
            if (value == null && source != null) {
                bySource.computeIfAbsent(source, key -> new ArrayList<>()).add(heading);
            }
        });
        List<String> parts = new ArrayList<>();
        bySource.forEach((source, headings) -> parts.add(String.join(", ", headings) + " from " + source));
        return (some ? "book; " : "") + "published table: " + String.join("; ", parts);
    }

    /** The ingredients in use of which the published table told something; empty for none. */
    static Optional<String> fromPublishedTable(Book book, MonthFigures month) {
        List<String> names = book.ingredients().stream()
                .filter(ingredient -> contentsFrom(ingredient, month).contains("published table"))
                .map(Ingredient::name)
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", names));
    }

    /** What the last move of its price does to the month's margin: -(new - previous) × use. */
    static Optional<Money> marginEffect(IngredientPrice price, Exact use) {
        return price.unitCost() == null || price.previousUnitCost() == null
                ? Optional.empty()
                : Optional.of(price.unitCost()
                        .minus(price.previousUnitCost())
                        .times(use)
                        .negated());
    }

    static Table preparations(Book book, MonthFigures month, Words words) {
        Filling table = Shapes.PREPARATIONS
                .fill(words.texts())
                .formula("unit_cost", "{batch_cost}/{makes}")
                .formula("litre_cost", "{unit_cost}*1000")
                .formula("batches", "{month_use}/{makes}")
                .formula("expected_batches", "{expected_use}/{makes}");
        Map<String, Exact> expected = ComingMonth.preparations(book, month);
        for (Preparation preparation : book.preparations()) {
            PreparationCost cost = month.costs().preparationOn(preparation.name(), month.lastDay());
            Exact use = month.use().byPreparation().getOrDefault(preparation.name(), Exact.ZERO);
            Optional<Exact> makes = Optional.ofNullable(cost.makes()).map(amount -> amount.value());
            Cells cells = new Cells()
                    .set("preparation", CellValue.of(preparation.name()))
                    .set("makes", number(makes))
                    .set("unit", words.measure(preparation.measure()))
                    .set("batch_cost", CellValue.of(cost.batchCost()))
                    .set("unit_cost", CellValue.of(cost.unitCost()))
                    .set("labour", CellValue.of(cost.labour()))
                    .set("keeps_days", CellValue.of(keepsDays(cost).orElse(null)))
                    .set("month_use", CellValue.of(use))
                    .set("batches", number(makes.filter(Exact::isPositive).map(use::dividedBy)))
                    .set("note", CellValue.of(note(cost, words)));
            Optional<Exact> coming = Optional.ofNullable(expected.get(preparation.name()));
            cells.set("minutes", CellValue.of(cost.minutes()))
                    .set("expected_use", number(coming))
                    .set(
                            "expected_batches",
                            number(coming.flatMap(
                                    need -> makes.filter(Exact::isPositive).map(need::dividedBy))))
                    .set("allergens", CellValue.of(String.join("; ", cost.allergens())))
                    .set("cautions", CellValue.of(String.join(" ", Cautions.of(cost, words))));
            if (preparation.measure() == Measure.ML && cost.unitCost() != null) {
                cells.set("litre_cost", CellValue.of(cost.unitCost().times(Exact.of(1000))));
            }
            contents(cost, cells);
            table.add(cost.batchCost() == null ? Emphasis.MARKED : Emphasis.PLAIN, cells);
        }
        return table.done();
    }

    private static Optional<Exact> keepsDays(PreparationCost cost) {
        return Optional.ofNullable(cost.keepsDays()).map(days -> Exact.of(days));
    }

    private static void contents(PreparationCost cost, Cells cells) {
        Contents one = cost.contents();
        // a batch of which nothing is known has volume and no mass: its contents are absent, not zero
        if (one.volumeMl() <= 0 || one.massG() <= 0 || cost.preparation().measure() == Measure.EACH) {
            return;
        }
        double per100 = 100 / one.volumeMl();
        if (cost.unknownComposition().isEmpty()) {
            cells.set("density", physical(one.density()));
        }
        cells.set("abv_percent", physical(one.abvPercent()))
                .set("sugar_g_per_100ml", physical(one.sugarG() * per100))
                .set("citric_g_per_100ml", physical(one.citricG() * per100))
                .set("malic_g_per_100ml", physical(one.malicG() * per100));
        cells.set("acidity_as_citric_g_per_100ml", physical(one.acidityAsCitricG() * per100))
                .set("tartaric_g_per_100ml", physical(one.tartaricG() * per100))
                .set("other_acid_g_per_100ml", physical(one.otherAcidG() * per100))
                .set("volume_estimated", CellValue.of(one.estimated()));
        if (cost.unknownComposition().isEmpty()) {
            cells.set("salt_percent", physical(one.saltG() / one.massG() * 100));
        }
    }

    private static String note(PreparationCost cost, Words words) {
        List<String> notes = new ArrayList<>();
        cost.faults().stream().map(Problem::reason).distinct().forEach(notes::add);
        cost.notices().stream().map(Problem::reason).distinct().forEach(notes::add);
        if (!cost.unknownComposition().isEmpty()) {
            notes.add(words.say("note.unknown-contents", String.join(", ", cost.unknownComposition())));
        }
        return String.join(" ", notes);
    }

    static Table preparationLines(Book book, MonthFigures month, Words words) {
        Filling table = Shapes.PREPARATION_LINES.fill(words.texts());
        for (Preparation preparation : book.preparations()) {
            PreparationCost cost = month.costs().preparationOn(preparation.name(), month.lastDay());
            for (CostLine line : cost.lines()) {
                table.add(new Cells()
                        .set("preparation", CellValue.of(preparation.name()))
                        .set("ingredient", CellValue.of(line.ingredient()))
                        .set(
                                "amount",
                                CellValue.of(
                                        line.amount() == null
                                                ? null
                                                : line.amount().value()))
                        .set(
                                "unit",
                                line.amount() == null
                                        ? CellValue.BLANK
                                        : words.measure(line.amount().measure()))
                        .set("cost", CellValue.of(line.cost()))
                        .set("computed", CellValue.of(line.computed()))
                        .set("written", CellValue.of(line.written())));
            }
        }
        return table.done();
    }
}
