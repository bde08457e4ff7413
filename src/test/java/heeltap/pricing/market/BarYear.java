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
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** One bar of three groups through twelve reviews, priced in four ways. */
final class BarYear {
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

    double never;
    double target;
    double suggested;
    double informed;
    /** Held and judged, by kind of interval. */
    final int[][] covered = new int[6][2];

    private BarYear(int seed) {
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

    static BarYear of(int seed) {
        BarYear year = new BarYear(seed);
        List<GroupSuggestion> last = List.of();
        for (int month = 0; month < MarketGroup.MONTHS - 1; month++) {
            last = year.review(month, last);
        }
        return year;
    }

    private List<GroupSuggestion> review(int month, List<GroupSuggestion> last) {
        List<EarningDrink> drinks = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int[] sold = groups.get(g).sales(month, suggestedPrices.get(g), till);
            for (int j = 0; j < sold.length; j++) {
                if (month > 0) {
                    count(5, expected(last.get(g), j).units().holds(Exact.of(sold[j])));
                }
                Money price = money(suggestedPrices.get(g)[j]);
                history.add(new DrinkMonth(
                        FIRST.plusMonths(month), "D" + j, KINDS.get(g).name(), price, Exact.of(sold[j]), 30));
                Optional<Money> before = month == 0 ? Optional.empty() : Optional.of(cost(groups.get(g), month - 1, j));
                drinks.add(new EarningDrink(priced(g, month, price, j), before, Optional.empty()));
            }
        }
        List<GroupSuggestion> advice = EarningPrices.suggest(
                drinks, history, name -> ElasticityPrior.published(Beverage.valueOf(name), REPORTED), RULES);
        for (int g = 0; g < groups.size(); g++) {
            follow(g, month, advice.get(g));
        }
        return advice;
    }

    private void follow(int g, int month, GroupSuggestion advice) {
        MarketGroup group = groups.get(g);
        double[] next = new double[group.drinks];
        double[] nextTarget = new double[group.drinks];
        for (int j = 0; j < next.length; j++) {
            next[j] = price(advice.drinks().get(j).price().suggested());
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
                "D" + j,
                KINDS.get(g).name(),
                Optional.of(price),
                Optional.of(price.withoutTax(Exact.of(20))),
                Optional.of(cost(groups.get(g), month, j)),
                Money.ZERO,
                TARGET,
                Optional.of(Exact.ZERO),
                false);
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
