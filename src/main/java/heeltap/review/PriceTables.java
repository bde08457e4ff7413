package heeltap.review;

import static heeltap.review.DrinkTable.money;
import static heeltap.review.DrinkTable.number;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.pricing.GroupRange;
import heeltap.pricing.PriceReason;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The tables of prices. */
final class PriceTables {
    private PriceTables() {}

    static Table prices(List<PriceSuggestion> suggestions, Words words) {
        Filling table = Shapes.PRICES
                .fill(words.texts())
                .formula(
                        "change_percent",
                        "IF(OR({price_suggested}=\"\",{price_now}=\"\"),\"\",({price_suggested}-{price_now})/{price_now}*100)");
        for (PriceSuggestion suggestion : suggestions) {
            table.add(
                    suggestion.isChange() ? Emphasis.MARKED : Emphasis.PLAIN,
                    new Cells()
                            .set("drink", CellValue.of(suggestion.drink().drink()))
                            .set("price_now", money(suggestion.drink().priceNow()))
                            .set("price_suggested", money(suggestion.suggested()))
                            .set("change_percent", number(suggestion.changePercent()))
                            .set("reason", CellValue.of(reason(suggestion.reason(), words)))
                            .set("cost_percent_now", number(suggestion.costPercentNow()))
                            .set("cost_percent_new", number(suggestion.costPercentNew()))
                            .set("margin_now", money(suggestion.marginNow()))
                            .set("margin_new", money(suggestion.marginNew()))
                            .set("break_even_units_percent", number(suggestion.breakEvenUnitsPercent()))
                            .set("floor", floor(suggestion))
                            .set(
                                    "floor_reason",
                                    CellValue.of(suggestion
                                            .floor()
                                            .reason()
                                            .map(reason -> words.say(
                                                    "floor." + reason.name().toLowerCase(Locale.ROOT)))
                                            .orElse("")))
                            .set("held", CellValue.of(suggestion.drink().held()))
                            .set("target_cost_price", money(suggestion.targetCostPrice()))
                            .set("margin_price", money(suggestion.marginPrice()))
                            .set("prime_cost_price", money(suggestion.primeCostPrice())));
        }
        return table.done();
    }

    private static CellValue floor(PriceSuggestion suggestion) {
        return suggestion.floor().reason().isPresent()
                ? CellValue.of(suggestion.floor().price())
                : CellValue.BLANK;
    }

    /** The reason's sentence with its figures: percentages and prices as the kind has them. */
    static String reason(PriceReason reason, Words words) {
        String key = "reason." + reason.kind().name().toLowerCase(Locale.ROOT);
        boolean priceFirst = switch (reason.kind()) {
            case HELD_BELOW_LEGAL, LEGAL_FLOOR, COST_OUT_OF_REACH -> true;
            default -> false;
        };
        List<String> printed = new ArrayList<>();
        for (Exact figure : reason.figures()) {
            printed.add(
                    priceFirst && printed.isEmpty() ? words.priceAtLeast(new Money(figure)) : words.percent(figure));
        }
        return words.say(key, printed.toArray());
    }

    /** How many drinks of each group change, and by how much on average, weighted by units sold. */
    static Table groups(List<PriceSuggestion> suggestions, List<DrinkRow> rows, Words words) {
        Map<String, List<PriceSuggestion>> groups = new LinkedHashMap<>();
        suggestions.forEach(one -> groups.computeIfAbsent(one.drink().group(), name -> new ArrayList<>())
                .add(one));
        Map<String, Exact> sold = new LinkedHashMap<>();
        rows.forEach(row -> sold.put(row.name(), row.sales().sold().max(Exact.ZERO)));
        Filling table = Shapes.PRICE_GROUPS.fill(words.texts());
        groups.forEach((group, drinks) -> table.add(new Cells()
                .set("group", CellValue.of(group))
                .set("drinks", CellValue.of(drinks.size()))
                .set(
                        "changed",
                        CellValue.of(drinks.stream()
                                .filter(PriceSuggestion::isChange)
                                .count()))
                .set("average_price_change_percent", number(averageChange(drinks, sold)))));
        return table.done();
    }

    private static Optional<Exact> averageChange(List<PriceSuggestion> drinks, Map<String, Exact> sold) {
        Money now = Money.ZERO;
        Money then = Money.ZERO;
        for (PriceSuggestion drink : drinks) {
            Exact units = sold.getOrDefault(drink.drink().drink(), Exact.ZERO);
            if (drink.drink().priceNow().isPresent() && drink.suggested().isPresent()) {
                now = now.plus(drink.drink().priceNow().get().times(units));
                then = then.plus(drink.suggested().get().times(units));
            }
        }
        return now.isPositive() ? Optional.of(then.minus(now).dividedBy(now).times(Exact.HUNDRED)) : Optional.empty();
    }

    static Table range(List<GroupRange> ranges, Words words) {
        Filling table = Shapes.PRICE_RANGE
                .fill(words.texts())
                .formula("range_ratio", "IF({lowest}=0,\"\",{highest}/{lowest})")
                .formula(
                        "response_ratio",
                        "IF(OR({sold_average}=\"\",{offered_average}=0),\"\",{sold_average}/{offered_average})");
        for (GroupRange range : ranges) {
            table.add(
                    range.findings().isEmpty() ? Emphasis.PLAIN : Emphasis.MARKED,
                    new Cells()
                            .set("group", CellValue.of(range.group()))
                            .set("items", CellValue.of(range.items()))
                            .set("lowest", CellValue.of(range.bands().lowest()))
                            .set("highest", CellValue.of(range.bands().highest()))
                            .set("range_ratio", CellValue.of(range.opening()))
                            .set("low_band", CellValue.of(range.bands().low()))
                            .set("middle_band", CellValue.of(range.bands().middle()))
                            .set("high_band", CellValue.of(range.bands().high()))
                            .set("offered_average", CellValue.of(range.offeredAverage()))
                            .set("sold_average", money(range.soldAverage()))
                            .set("response_ratio", number(range.response()))
                            .set(
                                    "finding",
                                    CellValue.of(String.join(
                                            " ",
                                            range.findings().stream()
                                                    .map(finding -> words.say("range."
                                                            + finding.name().toLowerCase(Locale.ROOT)))
                                                    .toList())))
                            .set("lower_limit", CellValue.of(range.bands().lowerLimit()))
                            .set("upper_limit", CellValue.of(range.bands().upperLimit())));
        }
        return table.done();
    }
}
