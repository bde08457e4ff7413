package heeltap.review;

import static heeltap.review.DrinkTable.money;
import static heeltap.review.DrinkTable.number;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.ElasticityPrior;
import heeltap.pricing.GroupDemand;
import heeltap.pricing.GroupRange;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.Interval;
import heeltap.pricing.LastReview;
import heeltap.pricing.PriceReason;
import heeltap.pricing.PriceResponse;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.PublishedElasticity;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The tables of prices. */
final class PriceTables {
    private PriceTables() {}

    static Table prices(PriceAdvice advice, Words words) {
        Filling table = Shapes.PRICES
                .fill(words.texts())
                .formula(
                        "change_percent",
                        "IF(OR({price_suggested}=\"\",{price_now}=\"\"),\"\",({price_suggested}-{price_now})/{price_now}*100)");
        for (EarningSuggestion drink : advice.drinks()) {
            Cells cells = cells(drink.price(), words);
            drink.demand().ifPresent(expected -> expect(expected, advice.group(drink), cells, words));
            table.add(drink.price().isChange() ? Emphasis.MARKED : Emphasis.PLAIN, cells);
        }
        return table.done();
    }

    private static Cells cells(PriceSuggestion suggestion, Words words) {
        return new Cells()
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
                                .map(reason ->
                                        words.say("floor." + reason.name().toLowerCase(Locale.ROOT)))
                                .orElse("")))
                .set("held", CellValue.of(suggestion.drink().held()))
                .set("target_cost_price", money(suggestion.targetCostPrice()))
                .set("margin_price", money(suggestion.marginPrice()))
                .set("prime_cost_price", money(suggestion.primeCostPrice()));
    }

    /** What demand makes of a suggestion. */
    private static void expect(EarningSuggestion.Expected expected, GroupSuggestion group, Cells cells, Words words) {
        cells.set("elasticity_low", CellValue.of(expected.elasticity().low()))
                .set("elasticity", CellValue.of(expected.elasticity().value()))
                .set("elasticity_high", CellValue.of(expected.elasticity().high()))
                .set("elasticity_source", CellValue.of(elasticitySource(group, expected, words)))
                .set("expected_units_percent", number(expected.unitsPercent()))
                .set(
                        "expected_margin_change",
                        CellValue.of(new Money(expected.marginChange().value())))
                .set(
                        "margin_change_low",
                        CellValue.of(new Money(expected.marginChange().low())))
                .set(
                        "margin_change_high",
                        CellValue.of(new Money(expected.marginChange().high())))
                .set("units_now", CellValue.of(expected.unitsNow()))
                .set("units_expected", CellValue.of(expected.units().value()))
                .set("units_low", CellValue.of(expected.units().low()))
                .set("units_high", CellValue.of(expected.units().high()))
                .set("chance_of_gain_percent", number(expected.chancePercent()));
    }

    private static String elasticitySource(GroupSuggestion group, Words words) {
        return words.say(group.isPriorOnly() ? "elasticity.prior" : "elasticity.group");
    }

    /** What spoke besides what was believed before: the drink's own price, if it moved, else others of its group. */
    private static String elasticitySource(GroupSuggestion group, EarningSuggestion.Expected expected, Words words) {
        return expected.priceChanges() > 0 ? words.say("elasticity.own") : elasticitySource(group, words);
    }

    private static CellValue floor(PriceSuggestion suggestion) {
        return suggestion.floor().reason().isPresent()
                ? CellValue.of(suggestion.floor().price())
                : CellValue.BLANK;
    }

    /** Of kinds that say how units change, whether they rise or fall. */
    private static String direction(PriceReason reason) {
        return switch (reason.kind()) {
            case FEW_LEAVE, BRINGS_GUESTS -> reason.figures().get(0).isNegative() ? "_fall" : "_rise";
            default -> "";
        };
    }

    /** The reason's sentence with its figures: percentages and prices as the kind has them. */
    static String reason(PriceReason reason, Words words) {
        String key = "reason." + reason.kind().name().toLowerCase(Locale.ROOT) + direction(reason);
        boolean priceFirst = switch (reason.kind()) {
            case HELD_BELOW_LEGAL, LEGAL_FLOOR, COST_OUT_OF_REACH -> true;
            default -> false;
        };
        boolean money = switch (reason.kind()) {
            case SUPPLIER_UP, POPULAR_AND_THIN, TOO_SMALL, SENDS_GUESTS, BESIDE_OTHERS, PRICE_FAR -> true;
            default -> false;
        };
        boolean times = switch (reason.kind()) {
            case OUT_OF_RANGE, RANGE_LIMIT -> true;
            default -> false;
        };
        List<String> printed = new ArrayList<>();
        for (Exact figure : reason.figures()) {
            if (priceFirst && printed.isEmpty()) {
                printed.add(words.priceAtLeast(new Money(figure)));
            } else if (money) {
                printed.add(words.money(new Money(figure)));
            } else {
                printed.add(times ? words.amount(figure) : words.percent(figure.abs()));
            }
        }
        return words.say(key, printed.toArray());
    }

    /** What the suggestions of each group are expected to do together. */
    static Table groups(PriceAdvice advice, Currency currency, Words words) {
        Filling table = Shapes.PRICE_GROUPS.fill(words.texts());
        for (String column : new String[] {"drinks", "changed", "expected_margin_change"}) {
            table.totalFormula(column, "SUM({" + column + ":all})");
        }
        for (GroupSuggestion group : advice.groups()) {
            Optional<PriceAdvice.Change> change = PriceAdvice.change(group, currency);
            table.add(new Cells()
                    .set("group", CellValue.of(group.group()))
                    .set("drinks", CellValue.of(group.drinks().size()))
                    .set("changed", CellValue.of(group.changed()))
                    .set("average_price_change_percent", number(group.averageChangePercent()))
                    .set("expected_margin_change", money(change.map(PriceAdvice.Change::expected)))
                    .set("margin_change_low", money(change.map(PriceAdvice.Change::low)))
                    .set("margin_change_high", money(change.map(PriceAdvice.Change::high)))
                    .set("chance_of_gain_percent", number(group.chancePercent())));
        }
        List<GroupSuggestion> groups = advice.groups();
        return groups.isEmpty()
                ? table.done()
                : table.total(new Cells()
                                .set("group", CellValue.of(words.say("word.total")))
                                .set(
                                        "drinks",
                                        CellValue.of(groups.stream()
                                                .mapToInt(
                                                        group -> group.drinks().size())
                                                .sum()))
                                .set(
                                        "changed",
                                        CellValue.of(groups.stream()
                                                .mapToLong(GroupSuggestion::changed)
                                                .sum()))
                                .set(
                                        "expected_margin_change",
                                        CellValue.of(groups.stream()
                                                .flatMap(group -> PriceAdvice.change(group, currency).stream())
                                                .map(PriceAdvice.Change::expected)
                                                .reduce(Money.ZERO, Money::plus))))
                        .done();
    }

    /** What is known and believed of how guests answer prices. */
    static Table demand(PriceAdvice advice, List<MonthFigures> months, Words words) {
        long selling = months.stream()
                .filter(month -> !month.written().sales().isEmpty())
                .count();
        Filling table = Shapes.DEMAND.fill(words.texts());
        for (GroupSuggestion group : advice.groups()) {
            Optional<Interval> elasticity = group.groupElasticity();
            Optional<PriceResponse> response = group.model().map(GroupDemand::response);
            ElasticityPrior.Beverage made = advice.priors().madeOf(group.group());
            table.add(new Cells()
                    .set("group", CellValue.of(group.group()))
                    .set("months", CellValue.of(selling))
                    .set("price_changes", CellValue.of(group.priceChanges()))
                    .set(
                            "made_of",
                            CellValue.of(words.say("beverage." + made.name().toLowerCase(Locale.ROOT))))
                    .set("published_reported", CellValue.of(made.market(PublishedElasticity.REPORTED)))
                    .set("published_corrected", CellValue.of(made.market(PublishedElasticity.CORRECTED)))
                    .set("bar_factor", CellValue.of(ElasticityPrior.BAR_FACTOR))
                    .set("prior", CellValue.of(group.prior().mean()))
                    .set(
                            "prior_source",
                            CellValue.of(words.say(
                                    "prior." + group.prior().source().name().toLowerCase(Locale.ROOT))))
                    .set("elasticity_low", number(elasticity.map(Interval::low)))
                    .set("elasticity", number(elasticity.map(Interval::value)))
                    .set("elasticity_high", number(elasticity.map(Interval::high)))
                    .set("elasticity_source", CellValue.of(elasticitySource(group, words)))
                    .set(
                            "within_elasticity",
                            number(response.map(one -> Exact.ofPhysical(-one.within() * one.usualPrice()))))
                    .set("follow_percent", number(response.map(one -> Exact.ofPhysical(one.follow() * 100))))
                    .set(
                            "order_percent",
                            number(response.map(one -> Exact.ofPhysical(GroupDemand.GROUP_SHARE * 100)))));
        }
        return table.done();
    }

    /** What became of last month's suggestions that were followed. */
    static Table lastReview(PriceAdvice advice, Words words) {
        Filling table = Shapes.LAST_REVIEW.fill(words.texts());
        for (LastReview.Outcome outcome : advice.outcomes()) {
            table.add(
                    outcome.held() ? Emphasis.PLAIN : Emphasis.MARKED,
                    new Cells()
                            .set("drink", CellValue.of(outcome.drink()))
                            .set("price_before", CellValue.of(outcome.before()))
                            .set("price_now", CellValue.of(outcome.after()))
                            .set(
                                    "units_expected",
                                    CellValue.of(outcome.expected().value()))
                            .set("units_low", CellValue.of(outcome.expected().low()))
                            .set("units_high", CellValue.of(outcome.expected().high()))
                            .set("sold", CellValue.of(outcome.sold()))
                            .set("inside", CellValue.of(outcome.held())));
        }
        return table.done();
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
