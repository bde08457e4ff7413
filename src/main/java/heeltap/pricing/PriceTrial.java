package heeltap.pricing;

import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;

/** What another price of one drink does to the group's margin a month, all other prices as planned. */
final class PriceTrial {
    /** A gain that is more than noise of arithmetic, in currency units. */
    private static final double LEAST = 1e-6;

    private final List<Candidate> drinks;
    private final DemandModel demand;
    private final EarningRules rules;
    private final double[] price;
    private final double[] margin;

    PriceTrial(List<Candidate> drinks, DemandModel demand, PricePlan plan, EarningRules rules) {
        this.drinks = drinks;
        this.demand = demand;
        this.rules = rules;
        this.price = new double[drinks.size()];
        this.margin = new double[drinks.size()];
        for (int j = 0; j < price.length; j++) {
            Money planned = plan.suggested(j);
            price[j] = planned.amount().toDouble();
            margin[j] = drinks.get(j).margin(planned);
        }
    }

    /**
     * @param own change of the drink's own margin
     * @param others of the group's other drinks
     */
    record Effect(double own, double others) {
        double gain() {
            return own + others;
        }
    }

    /** The prices with one of them another. */
    double[] with(int drink, Money other) {
        double[] prices = price.clone();
        prices[drink] = other.amount().toDouble();
        return prices;
    }

    /** Of one price in place of another, where a serve costs so much less. */
    Effect effect(int drink, Money from, Money to, Money costLess) {
        return effect(demand.point, drink, from, to, costLess);
    }

    private Effect effect(GroupDemand model, int drink, Money from, Money to, Money costLess) {
        double less = costLess.amount().toDouble();
        double[] before = model.unitsAt(with(drink, from));
        double[] after = model.unitsAt(with(drink, to));
        Candidate candidate = drinks.get(drink);
        double own = after[drink] * (candidate.margin(to) + less) - before[drink] * (candidate.margin(from) + less);
        double others = 0;
        for (int j = 0; j < price.length; j++) {
            others += j == drink ? 0 : (after[j] - before[j]) * margin[j];
        }
        return new Effect(own, others);
    }

    double chance(int drink, Money from, Money to, Money costLess) {
        int pays = 0;
        for (GroupDemand draw : demand.draws) {
            pays += effect(draw, drink, from, to, costLess).gain() > 0 ? 1 : 0;
        }
        return (double) pays / demand.draws.length;
    }

    static boolean helps(Effect effect) {
        return effect.gain() > LEAST;
    }

    /** Whether a price brings enough, and surely enough, to be suggested in place of the present one. */
    boolean pays(int drink, Money to, Money costLess) {
        Money now = drinks.get(drink).presentPrice();
        Effect effect = effect(drink, now, to, costLess);
        return helps(effect)
                && effect.gain() >= rules.leastGain().amount().toDouble()
                && chance(drink, now, to, costLess)
                        >= rules.leastChancePercent().percent().toDouble();
    }

    /** The price, other than the present one, that brings the group most; empty where there is no other. */
    Optional<Money> best(int drink) {
        Money now = drinks.get(drink).presentPrice();
        Money best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Money other : drinks.get(drink).allowed()) {
            double gain = effect(drink, now, other, Money.ZERO).gain();
            if (!other.equals(now) && gain > most) {
                most = gain;
                best = other;
            }
        }
        return Optional.ofNullable(best);
    }
}
