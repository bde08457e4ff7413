package heeltap.review;

import static heeltap.review.DrinkTable.number;

import heeltap.cost.CostLine;
import heeltap.cost.IngredientPrice;
import heeltap.cost.Purchase;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.match.Match;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Ingredient;
import heeltap.record.Loss;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.stock.Reconciliation;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where figures come from: a drink's cost from its lines, a variance from its counts and its use by drink. */
final class TraceTables {
    private TraceTables() {}

    /** Each drink's lines by the spec of the last day, and the paper behind each ingredient's price. */
    static Table drinkLines(Book book, MonthFigures month, Words words) {
        Filling table = Shapes.DRINK_LINES.fill(words.texts());
        for (Drink drink : book.drinks()) {
            for (CostLine line :
                    month.costs().drinkOn(drink.name(), month.lastDay()).lines()) {
                Cells cells = new Cells()
                        .set("drink", CellValue.of(drink.name()))
                        .set("ingredient", CellValue.of(line.ingredient()))
                        .set("kind", line.kind() == null ? CellValue.BLANK : words.term("line", word(line.kind())))
                        .set("written", CellValue.of(line.written()))
                        .set("waste_percent", CellValue.of(line.wastePercent()))
                        .set("unit_cost", CellValue.of(line.unitCost()))
                        .set("cost", CellValue.of(line.cost()))
                        .set("computed", CellValue.of(line.computed()))
                        .set("spec_file", CellValue.of(line.place().file()))
                        .set("spec_sheet", CellValue.of(line.place().sheet()))
                        .set("spec_row", CellValue.of(line.place().row()));
                Optional.ofNullable(line.amount())
                        .ifPresent(amount -> cells.set("amount", CellValue.of(amount.value()))
                                .set("unit", unit(line, amount, words)));
                if (line.kind() == Match.Kind.INGREDIENT) {
                    price(month.prices().get(line.ingredient()), cells, words);
                }
                table.add(line.cost() == null ? Emphasis.MARKED : Emphasis.PLAIN, cells);
            }
        }
        return table.done();
    }

    /** A drink within a drink or a preparation is taken by serves. */
    static CellValue unit(CostLine line, Amount amount, Words words) {
        return line.kind() == Match.Kind.DRINK ? words.term("measure", "serve") : words.measure(amount.measure());
    }

    private static String word(Match.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static void price(IngredientPrice price, Cells cells, Words words) {
        cells.set("price_basis", words.term("price-basis", price.basis().text()));
        Purchase source = price.source();
        if (source != null) {
            cells.set("supplier", CellValue.of(source.supplier()))
                    .set("invoice", CellValue.of(source.invoice()))
                    .set("date", CellValue.of(source.date()))
                    .set("file", CellValue.of(source.place().file()))
                    .set("row", CellValue.of(source.place().row()));
        }
    }

    /** Theoretical use of each ingredient by drink, the largest user first. */
    static Table useByDrink(Book book, MonthFigures month, Words words) {
        Filling table =
                Shapes.USE_BY_DRINK.fill(words.texts()).formula("share_percent", TableShape.share("use", "ingredient"));
        for (Ingredient ingredient : book.ingredients()) {
            String name = ingredient.name();
            Exact all = month.use().byIngredient().getOrDefault(name, Exact.ZERO);
            for (Map.Entry<String, Exact> use : usersOf(name, month)) {
                Exact served =
                        Optional.ofNullable(month.sales().get(use.getKey()))
                                .orElseThrow()
                                .pouredByDay()
                                .values()
                                .stream()
                                .reduce(Exact.ZERO, Exact::plus);
                table.add(new Cells()
                        .set("ingredient", CellValue.of(name))
                        .set("measure", words.measure(ingredient.measure()))
                        .set("drink", CellValue.of(use.getKey()))
                        .set("served", CellValue.of(served))
                        .set("use", CellValue.of(use.getValue()))
                        .set(
                                "share_percent",
                                number(Optional.of(all)
                                        .filter(Exact::isPositive)
                                        .map(sum ->
                                                use.getValue().dividedBy(sum).times(Exact.HUNDRED)))));
            }
        }
        return table.done();
    }

    /** The drinks that used an ingredient, the one that used most first. */
    static List<Map.Entry<String, Exact>> usersOf(String ingredient, MonthFigures month) {
        Map<String, Exact> users = new HashMap<>();
        month.use().byDrink().forEach((drink, use) -> {
            Exact amount = use.getOrDefault(ingredient, Exact.ZERO);
            if (!amount.isZero()) {
                users.put(drink, amount);
            }
        });
        return users.entrySet().stream()
                .sorted(Map.Entry.<String, Exact>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .toList();
    }

    /** Rows of counts and losses by ingredient, in the book's order. */
    static Table counts(Book book, MonthFigures month, Words words) {
        Filling table = Shapes.COUNTS.fill(words.texts());
        Map<String, Integer> order = new HashMap<>();
        Map<String, CellValue> measures = new HashMap<>();
        book.ingredients().forEach(ingredient -> {
            order.put(ingredient.name(), order.size());
            measures.put(ingredient.name(), words.measure(ingredient.measure()));
        });
        month.counts().stream()
                .sorted(Comparator.comparing((CountedRow row) -> order.getOrDefault(row.ingredient(), order.size()))
                        .thenComparing(row -> kindOrder(row.kind()))
                        .thenComparing(CountedRow::kind)
                        .thenComparing(CountedRow::place))
                .forEach(row -> table.add(
                        row.base().isEmpty() ? Emphasis.MARKED : Emphasis.PLAIN,
                        new Cells()
                                .set("ingredient", CellValue.of(row.ingredient()))
                                .set("measure", measures.getOrDefault(row.ingredient(), CellValue.BLANK))
                                .set("kind", words.term("counted", row.kind()))
                                .set("item", CellValue.of(row.item()))
                                .set("date", CellValue.of(row.day()))
                                .set("count", CellValue.of(row.number()))
                                .set("unit", CellValue.of(row.unit()))
                                .set("location", CellValue.of(row.location()))
                                .set("base_quantity", number(row.base()))
                                .set("used", CellValue.of(row.used()))
                                .set("file", CellValue.of(row.place().file()))
                                .set("sheet", CellValue.of(row.place().sheet()))
                                .set("row", CellValue.of(row.place().row()))));
        return table.done();
    }

    /** Recorded losses of each ingredient by reason, in measure and in money, in the book's order. */
    static Table losses(Book book, MonthFigures month, Currency currency, Words words) {
        Filling table = Shapes.LOSSES
                .fill(words.texts())
                .totalFormula("cost", "SUM({cost:all})")
                .formula("share_percent", TableShape.share("amount", "ingredient"));
        Money all = Money.ZERO;
        for (Ingredient ingredient : book.ingredients()) {
            Reconciliation line =
                    Optional.ofNullable(month.stock().get(ingredient.name())).orElseThrow();
            Exact recorded = line.movement().recordedLosses();
            for (Map.Entry<Loss.Reason, Exact> loss : month.lost()
                    .recorded()
                    .getOrDefault(ingredient.name(), Map.of())
                    .entrySet()) {
                if (loss.getValue().isZero()) {
                    continue;
                }
                Exact share = loss.getValue().dividedBy(recorded);
                Optional<Money> cost = line.lossesCost()
                        .map(money -> Money.of(money.times(share).rounded(currency)));
                all = all.plus(cost.orElse(Money.ZERO));
                table.add(new Cells()
                        .set("ingredient", CellValue.of(ingredient.name()))
                        .set("group", CellValue.of(ingredient.group()))
                        .set("measure", words.measure(ingredient.measure()))
                        .set("reason", words.term("counted", reason(loss.getKey())))
                        .set("amount", CellValue.of(loss.getValue()))
                        .set("cost", DrinkTable.money(cost))
                        .set("share_percent", CellValue.of(share.times(Exact.HUNDRED))));
            }
        }
        return table.total(new Cells()
                        .set("ingredient", CellValue.of(words.say("word.total")))
                        .set("cost", CellValue.of(all)))
                .done();
    }

    private static String reason(Loss.Reason reason) {
        return reason.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static int kindOrder(String kind) {
        return switch (kind) {
            case CountedRow.OPENING -> 0;
            case CountedRow.CLOSING -> 1;
            default -> 2;
        };
    }
}
