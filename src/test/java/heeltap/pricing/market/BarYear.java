package heeltap.pricing.market;

import static heeltap.record.PublishedElasticity.REPORTED;

import heeltap.pricing.DrinkMonth;
import heeltap.pricing.EarningDrink;
import heeltap.pricing.EarningPrices;
import heeltap.pricing.EarningRules;
import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.ElasticityPrior;
import heeltap.pricing.ElasticityPrior.Beverage;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.PriceGrid;
import heeltap.pricing.PricedDrink;
import heeltap.pricing.PricingRules;
import heeltap.pricing.TargetCostPricing;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToIntFunction;

/** One bar of three groups through twelve reviews, priced in four ways. */
public final class BarYear {
    /** From this number on nothing was tuned on the bars. */
    public static final int FIRST_UNTUNED = 40_000;

    /** Inside the prices that guests read. */
    public static final Exact TAX_PERCENT = Exact.of(20);

    private static final YearMonth FIRST = YearMonth.of(2026, 1);
    private static final Exact TARGET = Exact.of(22);
    private static final PricingRules PRICING =
            new PricingRules(PriceGrid.step("0.50"), Exact.of(8), Money.ZERO, Optional.empty(), Optional.empty());
    private static final EarningRules RULES = new EarningRules(PRICING, Optional.empty(), Exact.of(70), Money.ZERO);
    private static final List<Beverage> KINDS = List.of(Beverage.SPIRITS, Beverage.WINE, Beverage.BEER);

    private final List<MarketGroup> groups = new ArrayList<>();
    private final List<double[]> suggestedPrices = new ArrayList<>();
    private final List<double[]> targetPrices = new ArrayList<>();
    private final List<double[]> informedPrices = new ArrayList<>();
    private final List<DrinkMonth> history = new ArrayList<>();
    private final SplittableRandom till;
    private final ToIntFunction<YearMonth> days;
    private final Follower follower;

    double never;
    double target;
    double suggested;
    double informed;
    /** Held and judged, by kind of interval. */
    final int[][] covered = new int[6][2];

    /** Who takes the prices of the coming month from a review. */
    @FunctionalInterface
    public interface Follower {
        /** @return the coming month's prices, by drink */
        Map<String, Money> follow(Review review);
    }

    /**
     * What is known at the end of a month.
     *
     * @param drinks of all groups, one after another, with the month's prices and costs
     * @param sold the month's own rows
     * @param advice by group, from these rows and those of the months before
     */
    public record Review(
            YearMonth month, List<EarningDrink> drinks, List<DrinkMonth> sold, List<GroupSuggestion> advice) {
        /** The suggested prices. */
        public Map<String, Money> suggested() {
            Map<String, Money> prices = new HashMap<>();
            for (GroupSuggestion group : advice) {
                for (EarningSuggestion drink : group.drinks()) {
                    prices.put(
                            drink.price().drink().drink(),
                            drink.price().suggested().orElseThrow());
                }
            }
            return prices;
        }
    }

    private BarYear(int seed, ToIntFunction<YearMonth> days, Follower follower) {
        this.days = days;
        this.follower = follower;
        till = new SplittableRandom(77_000 + seed);
        for (Beverage kind : KINDS) {
            // guests of beer and wine mind prices less, as the published means say; how much in this bar is chance
            double sensitivity = kind.market(REPORTED).toDouble()
                    / Beverage.SPIRITS.market(REPORTED).toDouble();
            MarketGroup group = new MarketGroup(1000L * (1 + groups.size()) + seed, sensitivity);
            groups.add(group);
            suggestedPrices.add(group.firstPrice.clone());
            targetPrices.add(group.firstPrice.clone());
            informedPrices.add(group.firstPrice.clone());
        }
    }

    /** A year of months of thirty days whose reviews are those of the library alone. */
    static BarYear of(int seed) {
        return of(seed, month -> 30, Review::suggested);
    }

    /** @param days that the till's figures of a month are taken to be of */
    public static BarYear of(int seed, ToIntFunction<YearMonth> days, Follower follower) {
        BarYear year = new BarYear(seed, days, follower);
        List<GroupSuggestion> last = List.of();
        for (int month = 0; month < MarketGroup.MONTHS - 1; month++) {
            last = year.review(month, last);
        }
        return year;
    }

    /** Whether the suggestions earned more than the first prices would have, and more than those at target cost. */
    public boolean beatsSimpleRules() {
        return suggested > never && suggested > target;
    }

    private List<GroupSuggestion> review(int month, List<GroupSuggestion> last) {
        YearMonth now = FIRST.plusMonths(month);
        List<EarningDrink> drinks = new ArrayList<>();
        List<DrinkMonth> rows = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int[] sold = groups.get(g).sales(month, suggestedPrices.get(g), till);
            for (int j = 0; j < sold.length; j++) {
                if (month > 0) {
                    count(5, expected(last.get(g), j).units().holds(Exact.of(sold[j])));
                }
                Money price = money(suggestedPrices.get(g)[j]);
                rows.add(new DrinkMonth(
                        now, name(g, j), KINDS.get(g).name(), price, Exact.of(sold[j]), days.applyAsInt(now)));
                Optional<Money> before = month == 0 ? Optional.empty() : Optional.of(cost(groups.get(g), month - 1, j));
                drinks.add(new EarningDrink(priced(g, month, price, j), before, Optional.empty()));
            }
        }
        history.addAll(rows);
        List<GroupSuggestion> advice = EarningPrices.suggest(
                drinks, history, name -> ElasticityPrior.published(Beverage.valueOf(name), REPORTED), RULES);
        Map<String, Money> prices = follower.follow(new Review(now, drinks, rows, advice));
        for (int g = 0; g < groups.size(); g++) {
            follow(g, month, advice.get(g), prices);
        }
        return advice;
    }

    private void follow(int g, int month, GroupSuggestion advice, Map<String, Money> prices) {
        MarketGroup group = groups.get(g);
        double[] next = new double[group.drinks];
        double[] nextTarget = new double[group.drinks];
        for (int j = 0; j < next.length; j++) {
            next[j] = price(Optional.ofNullable(prices.get(name(g, j))));
            PricedDrink drink = priced(g, month, money(targetPrices.get(g)[j]), j);
            nextTarget[j] = price(
                    TargetCostPricing.suggest(List.of(drink), PRICING).get(0).suggested());
        }
        judge(group, month, suggestedPrices.get(g), next, advice);
        suggestedPrices.set(g, next);
        targetPrices.set(g, nextTarget);
        informedPrices.set(g, InformedPrices.next(group, month + 1, informedPrices.get(g), 0.08, 0.5));
        never += group.margin(month + 1, group.firstPrice);
        target += group.margin(month + 1, nextTarget);
        suggested += group.margin(month + 1, next);
        informed += group.margin(month + 1, informedPrices.get(g));
    }

    /** Counts how often the intervals of one review hold what the market then does. */
    private void judge(MarketGroup group, int month, double[] now, double[] next, GroupSuggestion advice) {
        double[] before = group.units(month + 1, now);
        double[] after = group.units(month + 1, next);
        double groupChange = 0;
        for (int j = 0; j < group.drinks; j++) {
            Exact truth = Exact.ofPhysical(group.elasticity(month, now, j));
            boolean holds = expected(advice, j).elasticity().holds(truth);
            count(0, holds);
            if (month == MarketGroup.MONTHS - 2) {
                count(1, holds);
            }
            double change = after[j] * (next[j] / MarketGroup.TAX - group.cost[month][j])
                    - before[j] * (now[j] / MarketGroup.TAX - group.cost[month][j]);
            groupChange += change;
            if (advice.changed() > 0) {
                count(3, expected(advice, j).marginChange().holds(Exact.ofPhysical(change)));
            }
        }
        count(2, advice.groupElasticity().orElseThrow().holds(Exact.ofPhysical(group.groupElasticity(month, now))));
        if (advice.changed() > 0) {
            count(4, advice.marginChange().orElseThrow().holds(Exact.ofPhysical(groupChange)));
        }
    }

    private static EarningSuggestion.Expected expected(GroupSuggestion advice, int drink) {
        return advice.drinks().get(drink).demand().orElseThrow();
    }

    private void count(int kind, boolean holds) {
        covered[kind][0] += holds ? 1 : 0;
        covered[kind][1]++;
    }

    private PricedDrink priced(int g, int month, Money price, int j) {
        return new PricedDrink(
                name(g, j),
                KINDS.get(g).name(),
                Optional.of(price),
                Optional.of(price.withoutTax(TAX_PERCENT)),
                Optional.of(cost(groups.get(g), month, j)),
                Money.ZERO,
                TARGET,
                Optional.of(Exact.ZERO),
                false);
    }

    private static String name(int g, int j) {
        return KINDS.get(g).name() + " " + j;
    }

    private static double price(Optional<Money> price) {
        return price.orElseThrow().amount().toDouble();
    }

    private static Money money(double price) {
        return Money.of(Exact.ofPhysical(price).round(2, RoundingMode.HALF_UP));
    }

    private static Money cost(MarketGroup group, int month, int drink) {
        return Money.of(Exact.ofPhysical(group.cost[month][drink]).round(4, RoundingMode.HALF_UP));
    }
}
