package heeltap.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.menu.MarginClass;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.PublishedElasticity;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EarningPricesTest {
    private static final YearMonth MONTH = YearMonth.of(2026, 9);

    /**
     * The closed form for one logit nest with an outside option: equal mark-ups {@code (1 + W(exp(V - 1))) / β}, where
     * {@code exp(V)} weighs the group at prices equal to costs against not ordering (Li and Huh 2011; from memory).
     */
    @Test
    void withoutLimitsTheSearchMeetsTheClosedForm() {
        double[] prices = {9, 10, 12};
        double[] units = {120, 200, 80};
        double[] cost = {2, 4, 3};
        double within = 0.25;
        for (double follow : new double[] {1, 0.6}) {
            GroupDemand demand = new GroupDemand(prices, units, new PriceResponse(within, follow, 10, 1));
            double atCost = 0;
            for (int j = 0; j < 3; j++) {
                atCost += units[j] * Math.exp(within * (prices[j] - cost[j]));
            }
            double beta = within * follow;
            double v =
                    Math.log(GroupDemand.GROUP_SHARE / (1 - GroupDemand.GROUP_SHARE)) + follow * Math.log(atCost / 400);
            double markup = (1 + lambert(Math.exp(v - 1))) / beta;
            double[][] allowed = new double[3][];
            double[][] margin = new double[3][];
            for (int j = 0; j < 3; j++) {
                double price = cost[j] + markup;
                double own = cost[j];
                // a grid of cents about the closed form, far enough off to miss it
                double low = Math.floor(price * 100) / 100 - 1.5;
                allowed[j] = java.util.stream.IntStream.range(0, 300)
                        .mapToDouble(k -> low + k * 0.01)
                        .toArray();
                margin[j] = Arrays.stream(allowed[j]).map(p -> p - own).toArray();
            }
            PriceLimits none = new PriceLimits(
                    prices, units, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY);
            PriceSearch search = new PriceSearch(demand, none, allowed, margin);
            double[] found = search.prices(search.best(new int[3], new boolean[3]));
            for (int j = 0; j < 3; j++) {
                assertThat(found[j] - cost[j]).isCloseTo(markup, within(0.011));
            }
        }
    }

    private static double lambert(double x) {
        double w = 1;
        for (int step = 0; step < 60; step++) {
            w -= (w * Math.exp(w) - x) / (Math.exp(w) * (w + 1));
        }
        return w;
    }

    @Test
    void elasticitiesAreTheSlopesOfTheDemand() {
        double[] prices = {9, 10, 12};
        GroupDemand demand =
                new GroupDemand(prices, new double[] {120, 200, 80}, new PriceResponse(0.25, 0.7, 10, 0.5));
        for (int j = 0; j < 3; j++) {
            double[] up = prices.clone();
            up[j] *= 1.0001;
            double slope = Math.log(demand.unitsAt(up)[j] / demand.unitsNow()[j]) / Math.log(1.0001);
            assertThat(demand.elasticity(j)).isCloseTo(slope, within(1e-3)).isNegative();
        }
        double[] all = Arrays.stream(prices).map(p -> p * 1.0001).toArray();
        double slope = Math.log(Arrays.stream(demand.unitsAt(all)).sum() / 400) / Math.log(1.0001);
        assertThat(demand.groupElasticity()).isCloseTo(slope, within(1e-3));
        assertThat(demand.unitsAt(prices)).containsExactly(demand.unitsNow(), within(1e-9));
    }

    @Test
    void withoutPriceChangesThePriorAloneSpeaksAndWithThemTheIntervalNarrows() {
        List<DrinkMonth> still = new ArrayList<>();
        List<DrinkMonth> moved = new ArrayList<>();
        int[] sold = {300, 200, 150, 260};
        for (int month = 0; month < 6; month++) {
            for (int j = 0; j < 4; j++) {
                double price = 10 + (month + j) % 3 * 0.5;
                // own response of 2.5 at 10
                long units = Math.round(sold[j] * Math.exp(-0.25 * (price - 10)));
                still.add(row(month - 6, j, "10", sold[j]));
                moved.add(row(month - 6, j, Double.toString(price), (int) units));
            }
        }
        for (int j = 0; j < 4; j++) {
            still.add(row(0, j, "10", sold[j]));
            moved.add(row(0, j, "10", sold[j]));
        }
        GroupSuggestion prior = suggest(drinks("2.2", "2.2", "2.2", "2.2"), still, rules("8"));
        GroupSuggestion learned = suggest(drinks("2.2", "2.2", "2.2", "2.2"), moved, rules("8"));
        assertThat(prior.isPriorOnly()).isTrue();
        assertThat(learned.isPriorOnly()).isFalse();
        Interval before = elasticity(prior);
        Interval after = elasticity(learned);
        assertThat(after.high().minus(after.low())).isLessThan(before.high().minus(before.low()));
        assertThat(after.holds(Exact.of("-2.2"))).isTrue();
        assertThat(before.high().isNegative()).isTrue();
    }

    @Test
    void theRowsOfAGroupAddUpToItsChange() {
        GroupSuggestion group = suggest(drinks("1", "1.5", "4.2", "3"), month(), rules("8"));
        Exact sum = group.drinks().stream()
                .map(drink -> drink.demand().orElseThrow().marginChange().value())
                .reduce(Exact.ZERO, Exact::plus);
        assertThat(group.changed()).isPositive();
        assertThat(sum.toDouble())
                .isCloseTo(group.marginChange().orElseThrow().value().toDouble(), within(1e-6));
        assertThat(group.chancePercent().orElseThrow()).isGreaterThanOrEqualTo(Exact.of(70));
        assertThat(suggest(drinks("1", "1.5", "4.2", "3"), month(), rules("8")).drinks())
                .isEqualTo(group.drinks());
    }

    @Test
    void everySuggestionKeepsTheLimits() {
        List<EarningDrink> drinks = drinks("1", "1.5", "4.2", "3");
        GroupSuggestion group = suggest(drinks, month(), rules("8"));
        for (EarningSuggestion drink : group.drinks()) {
            Money price = drink.price().suggested().orElseThrow();
            Money change = price.minus(Money.of("10")).abs();
            assertThat(change).isLessThanOrEqualTo(Money.of("0.8"));
            assertThat(price.dividedBy(Money.of("0.5")).isWhole()).isTrue();
            drink.demand()
                    .orElseThrow()
                    .chancePercent()
                    .ifPresent(chance -> assertThat(chance).isGreaterThanOrEqualTo(Exact.of(70)));
        }
    }

    @Test
    void theCapOnTheAverageRiseBinds() {
        List<EarningDrink> drinks = drinks("4", "4.5", "4.2", "5");
        ElasticityPrior dull = ElasticityPrior.ofBar(Exact.of("-0.3"));
        GroupSuggestion free = suggest(drinks, month(), rules("8"), dull);
        assertThat(free.averageChangePercent().orElseThrow()).isGreaterThan(Exact.of(3));
        EarningRules capped =
                new EarningRules(rules("8").pricing(), Optional.of(Exact.of(2)), Exact.of(70), Money.ZERO);
        GroupSuggestion held = suggest(drinks, month(), capped, dull);
        assertThat(held.averageChangePercent().orElseThrow().toDouble()).isLessThanOrEqualTo(2 + 1e-9);
        assertThat(held.changed()).isPositive();
        assertThat(kinds(held))
                .contains(PriceReason.Kind.AVERAGE_RISE_LIMIT)
                .doesNotContain(PriceReason.Kind.NOTHING_BETTER, PriceReason.Kind.TOO_UNSURE);
    }

    /** Steps of 0.95 from 9.95 on: the next price up is a whole unit away, more than 8 percent. */
    @Test
    void aKeepThatTheLargestChangeCausesSaysSo() {
        PricingRules endings = new PricingRules(
                new PriceGrid(Money.of("0.50"), List.of(Money.ZERO, Money.of("0.95"))),
                Exact.of(8),
                Money.ZERO,
                Optional.empty(),
                Optional.empty());
        EarningRules rules = new EarningRules(endings, Optional.empty(), Exact.of(70), Money.ZERO);
        GroupSuggestion kept =
                suggest(drinks("4", "4.5", "4.2", "5"), month(), rules, ElasticityPrior.ofBar(Exact.of("-0.3")));
        assertThat(kinds(kept)).containsOnly(PriceReason.Kind.BEYOND_LARGEST_CHANGE);
    }

    /** What a reason says of the drink's own guests holds in its row: they bring more than before. */
    @Test
    void reasonsAreTrueOfTheirRows() {
        int fallen = 0;
        int sent = 0;
        for (String elasticity : List.of("-0.4", "-0.7", "-1", "-1.5", "-3")) {
            for (String change : List.of("8", "30")) {
                GroupSuggestion group = suggest(
                        drinks("1", "2.5", "4.2", "3"),
                        month(),
                        new EarningRules(rules(change).pricing(), Optional.empty(), Exact.of(50), Money.ZERO),
                        ElasticityPrior.ofBar(Exact.of(elasticity)));
                for (EarningSuggestion drink : group.drinks()) {
                    PriceReason.Kind kind = drink.price().reason().kind();
                    EarningSuggestion.Expected row = drink.demand().orElseThrow();
                    boolean own = List.of(
                                    PriceReason.Kind.BRINGS_GUESTS,
                                    PriceReason.Kind.FEW_LEAVE,
                                    PriceReason.Kind.COST_ABOVE_TARGET)
                            .contains(kind);
                    assertThat(own && row.marginChange().value().isNegative())
                            .as("%s at %s: %s", drink.price().drink().drink(), elasticity, kind)
                            .isFalse();
                    fallen += kind == PriceReason.Kind.BRINGS_GUESTS ? 1 : 0;
                    boolean others = kind == PriceReason.Kind.SENDS_GUESTS || kind == PriceReason.Kind.BESIDE_OTHERS;
                    sent += others ? 1 : 0;
                }
            }
        }
        assertThat(fallen).isPositive();
        assertThat(sent).isPositive();
    }

    @Test
    void aCostThatRoseIsNamedWhereAtTheOldOneThePriceWouldStay() {
        assertThat(afterCostOf("2").kind()).isEqualTo(PriceReason.Kind.SUPPLIER_UP);
        assertThat(afterCostOf("2").figures()).containsExactly(Exact.of(2), Exact.of(6));
        assertThat(afterCostOf("4").kind()).isEqualTo(PriceReason.Kind.COST_ABOVE_TARGET);
    }

    /** Of one drink at 6 a serve, beside three at 3 whose cost did not change. */
    private static PriceReason afterCostOf(String before) {
        List<EarningDrink> drinks = new ArrayList<>();
        for (int j = 0; j < 4; j++) {
            drinks.add(new EarningDrink(
                    priced(j, Optional.of(Money.of(j == 0 ? "6" : "3")), false),
                    Optional.of(Money.of(j == 0 ? before : "3")),
                    Optional.empty()));
        }
        return suggest(drinks, month(), rules("8"), ElasticityPrior.ofBar(Exact.of("-1")))
                .drinks()
                .get(0)
                .price()
                .reason();
    }

    @Test
    void aPriceFarFromWhatGuestsPaidIsLeftAlone() {
        List<EarningDrink> drinks = new ArrayList<>(drinks("4", "4.5", "4.2", "5"));
        drinks.set(
                0,
                new EarningDrink(
                        drinks.get(0).priced(), Optional.empty(), Optional.empty(), Optional.of(Money.of("25"))));
        GroupSuggestion group = suggest(drinks, month(), rules("8"), ElasticityPrior.ofBar(Exact.of("-0.3")));
        assertThat(kinds(group).get(0)).isEqualTo(PriceReason.Kind.PRICE_FAR);
        assertThat(price(group, 0)).isEqualTo(Money.of("10"));
        assertThat(group.drinks().get(0).demand()).isEmpty();
        assertThat(group.changed()).isPositive();
    }

    /** A price of 100 in the book where guests paid 10 says nothing of how wide the group's prices lie. */
    @Test
    void aPriceFarFromWhatGuestsPaidWidensNoRange() {
        List<EarningDrink> drinks = new ArrayList<>(drinks("4", "4.5", "4.2", "5"));
        PricedDrink wrong = new PricedDrink(
                "D0",
                "G",
                Optional.of(Money.of("100")),
                Optional.of(Money.of("10")),
                Optional.of(Money.of("4")),
                Money.ZERO,
                Exact.of(22),
                Optional.of(Exact.ZERO),
                false);
        drinks.set(0, new EarningDrink(wrong, Optional.empty(), Optional.empty(), Optional.of(Money.of("10"))));
        GroupSuggestion group = suggest(drinks, month(), rules("8"), ElasticityPrior.ofBar(Exact.of("-0.3")));
        assertThat(kinds(group).get(0)).isEqualTo(PriceReason.Kind.PRICE_FAR);
        assertThat(group.changed()).isPositive();
        assertThat(kinds(group)).doesNotContain(PriceReason.Kind.OUT_OF_RANGE, PriceReason.Kind.RANGE_LIMIT);
    }

    @Test
    void theLawsFloorWinsAndNoSuggestionLiesBelowIt() {
        PricingRules law = new PricingRules(
                PriceGrid.step("0.50"), Exact.of(8), Money.of("0.30"), Optional.empty(), Optional.empty());
        List<EarningDrink> drinks = new ArrayList<>();
        for (int grams : new int[] {40, 33, 20, 0}) {
            drinks.add(new EarningDrink(
                    new PricedDrink(
                            "D" + drinks.size(),
                            "G",
                            Optional.of(Money.of("10")),
                            Optional.of(Money.of("10")),
                            Optional.of(Money.of("1")),
                            Money.ZERO,
                            Exact.of(22),
                            Optional.of(Exact.of(grams)),
                            false),
                    Optional.empty(),
                    Optional.empty()));
        }
        EarningRules rules = new EarningRules(law, Optional.empty(), Exact.of(70), Money.ZERO);
        // so elastic that falling prices would earn more
        GroupSuggestion group = suggest(drinks, month(), rules, ElasticityPrior.ofBar(Exact.of("-3")));
        assertThat(price(group, 0)).isEqualTo(Money.of("12"));
        assertThat(kinds(group).get(0)).isEqualTo(PriceReason.Kind.LEGAL_FLOOR);
        assertThat(price(group, 1)).isGreaterThanOrEqualTo(Money.of("10"));
        assertThat(price(group, 3)).isLessThan(Money.of("10"));
    }

    @Test
    void theRangeIsNotOpenedBeyondThePrinciple() {
        // 25 over 10 is the widest for so few drinks: the dear one may not rise nor the cheap one fall
        List<DrinkMonth> history = List.of(row(0, 0, "10", 300), row(0, 1, "25", 200));
        ElasticityPrior dull = ElasticityPrior.ofBar(Exact.of("-0.2"));
        List<EarningDrink> drinks = List.of(
                new EarningDrink(priced(0, Optional.of(Money.of("9.9")), true), Optional.empty(), Optional.empty()),
                new EarningDrink(
                        new PricedDrink(
                                "D1",
                                "G",
                                Optional.of(Money.of("25")),
                                Optional.of(Money.of("25")),
                                Optional.of(Money.of("15")),
                                Money.ZERO,
                                Exact.of(22),
                                Optional.of(Exact.ZERO),
                                false),
                        Optional.empty(),
                        Optional.empty()));
        GroupSuggestion group = suggest(drinks, history, rules("8"), dull);
        assertThat(price(group, 1)).isLessThanOrEqualTo(Money.of("25"));
        List<DrinkMonth> narrow = List.of(row(0, 0, "10", 300), row(0, 1, "20", 200));
        PricedDrink dear = new PricedDrink(
                "D1",
                "G",
                Optional.of(Money.of("20")),
                Optional.of(Money.of("20")),
                Optional.of(Money.of("15")),
                Money.ZERO,
                Exact.of(22),
                Optional.of(Exact.ZERO),
                false);
        GroupSuggestion free = suggest(
                List.of(drinks.get(0), new EarningDrink(dear, Optional.empty(), Optional.empty())),
                narrow,
                rules("8"),
                dull);
        assertThat(price(free, 1)).isGreaterThan(Money.of("20"));
    }

    private static Money price(GroupSuggestion group, int drink) {
        return group.drinks().get(drink).price().suggested().orElseThrow();
    }

    @Test
    void unsureAndSmallChangesAreNotSuggested() {
        List<EarningDrink> drinks = drinks("1", "1.5", "4.2", "3");
        PricingRules pricing = rules("8").pricing();
        EarningRules certain = new EarningRules(pricing, Optional.empty(), Exact.of(101), Money.ZERO);
        GroupSuggestion kept = suggest(drinks, month(), certain);
        assertThat(kept.changed()).isZero();
        assertThat(kinds(kept)).contains(PriceReason.Kind.TOO_UNSURE);
        assertThat(kept.chancePercent()).isEmpty();
        EarningRules rich = new EarningRules(pricing, Optional.empty(), Exact.of(70), Money.of("100000"));
        GroupSuggestion poor = suggest(drinks, month(), rich);
        assertThat(poor.changed()).isZero();
        assertThat(kinds(poor)).contains(PriceReason.Kind.TOO_SMALL);
    }

    @Test
    void heldUnknownAndNewDrinksAreShown() {
        List<EarningDrink> drinks = new ArrayList<>(drinks("1", "1.5", "4.2"));
        drinks.add(new EarningDrink(priced(3, Optional.of(Money.of("3")), true), Optional.empty(), Optional.empty()));
        drinks.add(new EarningDrink(priced(7, Optional.of(Money.of("3")), false), Optional.empty(), Optional.empty()));
        drinks.add(new EarningDrink(priced(2, Optional.empty(), false), Optional.empty(), Optional.empty()));
        GroupSuggestion group = suggest(drinks, month(), rules("8"));
        assertThat(kinds(group).subList(3, 6))
                .containsExactly(PriceReason.Kind.HELD, PriceReason.Kind.NEVER_LISTED, PriceReason.Kind.NO_COST);
        assertThat(group.drinks().get(3).demand()).isPresent();
        assertThat(group.drinks().get(4).demand()).isEmpty();
    }

    @Test
    void theReasonNamesTheDriverAndACostThatRoseOnlyWhereItCarriesTheChange() {
        List<EarningDrink> drinks = new ArrayList<>();
        drinks.add(new EarningDrink(
                priced(0, Optional.of(Money.of("3")), false), Optional.of(Money.of("2.5")), Optional.empty()));
        drinks.add(new EarningDrink(
                priced(1, Optional.of(Money.of("3")), false), Optional.of(Money.of("3")), Optional.empty()));
        drinks.add(new EarningDrink(
                priced(2, Optional.of(Money.of("1.8")), false), Optional.empty(), Optional.of(MarginClass.PLOWHORSE)));
        drinks.add(new EarningDrink(
                priced(3, Optional.of(Money.of("1.8")), false), Optional.empty(), Optional.of(MarginClass.STAR)));
        GroupSuggestion group = suggest(drinks, month(), rules("8"), ElasticityPrior.ofBar(Exact.of("-0.3")));
        assertThat(kinds(group))
                .containsExactly(
                        PriceReason.Kind.COST_ABOVE_TARGET,
                        PriceReason.Kind.COST_ABOVE_TARGET,
                        PriceReason.Kind.POPULAR_AND_THIN,
                        PriceReason.Kind.FEW_LEAVE);
    }

    @Test
    void followedSuggestionsAreComparedWithTheMonthAfter() {
        List<GroupSuggestion> then = List.of(suggest(drinks("1", "1.5", "4.2", "3"), month(), rules("8")));
        List<DrinkMonth> after = new ArrayList<>();
        int followed = 0;
        for (int j = 0; j < 4; j++) {
            EarningSuggestion drink = then.get(0).drinks().get(j);
            Money price = drink.price().suggested().orElseThrow();
            followed += drink.price().isChange() ? 1 : 0;
            Exact sold = j == 0
                    ? Exact.of(9999)
                    : drink.demand().orElseThrow().units().value().floor();
            after.add(new DrinkMonth(MONTH.plusMonths(1), "D" + j, "G", price, sold, 30));
        }
        List<LastReview.Outcome> outcomes = LastReview.compare(then, 30, after);
        assertThat(outcomes).hasSize(followed).isNotEmpty();
        for (LastReview.Outcome outcome : outcomes) {
            assertThat(outcome.held())
                    .as(outcome.drink())
                    .isEqualTo(!outcome.drink().equals("D0"));
        }
    }

    private static List<PriceReason.Kind> kinds(GroupSuggestion group) {
        return group.drinks().stream()
                .map(drink -> drink.price().reason().kind())
                .toList();
    }

    private static Interval elasticity(GroupSuggestion group) {
        return group.drinks().get(0).demand().orElseThrow().elasticity();
    }

    private static GroupSuggestion suggest(List<EarningDrink> drinks, List<DrinkMonth> history, EarningRules rules) {
        return suggest(
                drinks,
                history,
                rules,
                ElasticityPrior.published(ElasticityPrior.Beverage.SPIRITS, PublishedElasticity.REPORTED));
    }

    private static GroupSuggestion suggest(
            List<EarningDrink> drinks, List<DrinkMonth> history, EarningRules rules, ElasticityPrior prior) {
        return EarningPrices.suggest(drinks, history, group -> prior, rules).get(0);
    }

    private static EarningRules rules(String largestChange) {
        return new EarningRules(
                new PricingRules(
                        PriceGrid.step("0.50"),
                        Exact.of(largestChange),
                        Money.ZERO,
                        Optional.empty(),
                        Optional.empty()),
                Optional.empty(),
                Exact.of(70),
                Money.ZERO);
    }

    private static List<DrinkMonth> month() {
        return List.of(row(0, 0, "10", 300), row(0, 1, "10", 200), row(0, 2, "10", 150), row(0, 3, "10", 260));
    }

    private static DrinkMonth row(int month, int drink, String price, int sold) {
        return new DrinkMonth(MONTH.plusMonths(month), "D" + drink, "G", Money.of(price), Exact.of(sold), 30);
    }

    /** All at 10 without tax. */
    private static List<EarningDrink> drinks(String... costs) {
        List<EarningDrink> drinks = new ArrayList<>();
        for (int j = 0; j < costs.length; j++) {
            drinks.add(new EarningDrink(
                    priced(j, Optional.of(Money.of(costs[j])), false), Optional.empty(), Optional.empty()));
        }
        return drinks;
    }

    private static PricedDrink priced(int drink, Optional<Money> cost, boolean held) {
        return new PricedDrink(
                "D" + drink,
                "G",
                Optional.of(Money.of("10")),
                Optional.of(Money.of("10")),
                cost,
                Money.ZERO,
                Exact.of(22),
                Optional.of(Exact.ZERO),
                held);
    }
}
