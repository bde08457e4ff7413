package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** A plan of prices in words and figures. */
final class Advice {
    private static final int SEED = 20_250_301;

    private final List<Candidate> drinks;
    private final DemandModel demand;
    private final PricePlan plan;
    /** Lowest and highest price of the group, widest opening. */
    private final double[] range;

    private final PriceLimits limits;
    private final PriceTrial trial;

    private final EarningRules rules;
    private final double[][] units;
    private final double[][] change;

    Advice(
            List<Candidate> drinks,
            DemandModel demand,
            PricePlan plan,
            PriceLimits limits,
            double[] range,
            EarningRules rules) {
        this.drinks = drinks;
        this.demand = demand;
        this.plan = plan;
        this.limits = limits;
        this.range = range;
        this.rules = rules;
        this.trial = new PriceTrial(drinks, demand, plan, rules);
        int n = demand.draws.length;
        units = new double[n][];
        change = new double[n][];
        RandomGenerator random = new Well19937c(SEED);
        for (int d = 0; d < n; d++) {
            change[d] = plan.marginChange(demand.draws[d]);
            units[d] = plan.units(demand.draws[d]);
            for (int j = 0; j < units[d].length; j++) {
                double mean = units[d][j];
                units[d][j] = Math.max(0, mean + Math.sqrt(demand.spread * mean) * random.nextGaussian());
            }
        }
    }

    /** A drink that demand does not cover: kept, or moved to the law's floor. */
    static EarningSuggestion unmodelled(Candidate drink, EarningRules rules) {
        Optional<Money> price = drink.hasPrice() ? Optional.of(drink.allowed().get(0)) : Optional.empty();
        PriceReason reason = drink.keep()
                .orElseGet(() -> PriceReason.of(
                        PriceReason.Kind.LEGAL_FLOOR, drink.floor().legal().amount()));
        return new EarningSuggestion(
                PriceSuggestion.of(drink.drink().priced(), rules.pricing(), drink.floor(), price, reason),
                Optional.empty());
    }

    EarningSuggestion of(int drink) {
        Candidate candidate = drinks.get(drink);
        Money price = plan.suggested(drink);
        EarningSuggestion.Expected expected = expected(drink, !price.equals(candidate.presentPrice()));
        PriceReason reason = candidate
                .keep()
                .orElseGet(() -> price.equals(candidate.presentPrice())
                        ? new KeepReason(candidate, drink, trial, limits, rules).reason(plan.refused(drink))
                        : new ChangeReason(candidate, drink, trial, price, expected).reason(range));
        return new EarningSuggestion(
                PriceSuggestion.of(
                        candidate.drink().priced(), rules.pricing(), candidate.floor(), Optional.of(price), reason),
                Optional.of(expected));
    }

    private EarningSuggestion.Expected expected(int drink, boolean changed) {
        int n = demand.draws.length;
        double[] elasticity = new double[n];
        double[] sold = new double[n];
        double[] gain = new double[n];
        for (int d = 0; d < n; d++) {
            elasticity[d] = demand.draws[d].elasticity(drink);
            sold[d] = units[d][drink];
            gain[d] = change[d][drink];
        }
        boolean chosen = changed && plan.choice[drink] != drinks.get(drink).start();
        return new EarningSuggestion.Expected(
                Interval.of(demand.point.elasticity(drink), elasticity),
                Exact.ofPhysical(demand.point.unitsNow()[drink]),
                Interval.of(plan.units(demand.point)[drink], sold),
                Interval.of(plan.marginChange(demand.point)[drink], gain),
                chosen ? Optional.of(Exact.ofPhysical(plan.chance[drink] * 100)) : Optional.empty(),
                demand.priceChanges[drink]);
    }
}
