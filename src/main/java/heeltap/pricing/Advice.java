package heeltap.pricing;

import heeltap.menu.MarginClass;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** A plan of prices in words and figures. */
final class Advice {
    private static final int SEED = 20_250_301;
    private static final Exact NOTABLE_RISE = Exact.of("1.02");

    private final List<Candidate> drinks;
    private final DemandModel demand;
    private final PricePlan plan;
    /** Lowest and highest price of the group, widest opening. */
    private final double[] range;

    private final EarningRules rules;
    private final double[][] units;
    private final double[][] change;

    Advice(List<Candidate> drinks, DemandModel demand, PricePlan plan, double[] range, EarningRules rules) {
        this.drinks = drinks;
        this.demand = demand;
        this.plan = plan;
        this.range = range;
        this.rules = rules;
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
                        ? kept(drink)
                        : driver(candidate, price, expected.unitsPercent().orElse(Exact.ZERO)));
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
                chosen ? Optional.of(Exact.ofPhysical(plan.chance[drink] * 100)) : Optional.empty());
    }

    private PriceReason kept(int drink) {
        Candidate candidate = drinks.get(drink);
        Exact largest = rules.pricing().largestChangePercent();
        if (candidate.allowed().size() > 1) {
            return plan.refused(drink).orElseGet(() -> PriceReason.of(PriceReason.Kind.NOTHING_BETTER));
        }
        return candidate.floor().price().compareTo(candidate.presentPrice()) > 0
                ? PriceReason.of(
                        PriceReason.Kind.COST_OUT_OF_REACH,
                        candidate.floor().price().amount(),
                        largest)
                : PriceReason.of(PriceReason.Kind.STEP_TOO_WIDE, largest);
    }

    private PriceReason driver(Candidate candidate, Money price, Exact unitsPercent) {
        PricedDrink drink = candidate.drink().priced();
        Money now = candidate.presentPrice();
        Money legal = candidate.floor().legal();
        if (now.compareTo(legal) < 0 && price.equals(candidate.allowed().get(0))) {
            return PriceReason.of(PriceReason.Kind.LEGAL_FLOOR, legal.amount());
        }
        boolean rise = price.compareTo(now) > 0;
        double paid = now.amount().toDouble();
        if (range[1] > range[2] * range[0] && (rise ? paid <= range[0] : paid >= range[1])) {
            return PriceReason.of(
                    PriceReason.Kind.OUT_OF_RANGE, Exact.ofPhysical(range[1] / range[0]), Exact.ofPhysical(range[2]));
        }
        if (!rise) {
            return PriceReason.of(PriceReason.Kind.BRINGS_GUESTS, unitsPercent);
        }
        Money cost = drink.cost().orElseThrow();
        Optional<Money> before = candidate.drink().previousCost();
        if (before.filter(old -> cost.compareTo(old.times(NOTABLE_RISE)) >= 0).isPresent()) {
            return PriceReason.of(PriceReason.Kind.SUPPLIER_UP, before.get().amount(), cost.amount());
        }
        Exact percent = drink.costPercentNow().orElseThrow();
        if (percent.isGreaterThan(drink.targetCostPercent())) {
            return PriceReason.of(PriceReason.Kind.COST_ABOVE_TARGET, percent, drink.targetCostPercent());
        }
        return candidate
                        .drink()
                        .marginClass()
                        .filter(c -> c == MarginClass.PLOWHORSE)
                        .isPresent()
                ? PriceReason.of(
                        PriceReason.Kind.POPULAR_AND_THIN,
                        drink.netPrice().orElseThrow().minus(cost).amount())
                : PriceReason.of(PriceReason.Kind.FEW_LEAVE, unitsPercent);
    }
}
