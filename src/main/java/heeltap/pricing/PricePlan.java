package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/** Prices chosen for the modelled drinks of one group: the best ones, less the changes that do not pay surely enough. */
final class PricePlan {
    /** Index of each drink's price in its allowed ones. */
    final int[] choice;
    /** Why a change that would help was not taken; empty entries where none was refused. */
    final PriceReason[] refused;
    /** Chance that a drink's own change pays, given the others; meaningless without one. */
    final double[] chance;

    private final List<Candidate> drinks;
    private final DemandModel demand;
    private final double[][] price;
    private final double[][] margin;
    private final double[] now;
    private final double[] marginNow;
    /** Pull of each drink at each of its prices, by draw: every trial below is then a sum. */
    private final double[][][] pull;

    private PricePlan(List<Candidate> drinks, DemandModel demand) {
        this.drinks = drinks;
        this.demand = demand;
        int n = drinks.size();
        choice = new int[n];
        refused = new PriceReason[n];
        chance = new double[n];
        price = new double[n][];
        margin = new double[n][];
        now = new double[n];
        marginNow = new double[n];
        for (int j = 0; j < n; j++) {
            Candidate drink = drinks.get(j);
            choice[j] = drink.start();
            price[j] = drink.allowed().stream()
                    .mapToDouble(p -> p.amount().toDouble())
                    .toArray();
            margin[j] = drink.allowed().stream().mapToDouble(drink::margin).toArray();
            now[j] = drink.presentPrice().amount().toDouble();
            marginNow[j] = drink.margin(drink.presentPrice());
        }
        pull = new double[demand.draws.length][n][];
        for (int d = 0; d < pull.length; d++) {
            for (int j = 0; j < n; j++) {
                pull[d][j] = demand.draws[d].pulls(j, price[j]);
            }
        }
    }

    static PricePlan of(List<Candidate> drinks, DemandModel demand, PriceLimits limits, EarningRules rules) {
        PricePlan plan = new PricePlan(drinks, demand);
        PriceSearch search = new PriceSearch(demand.point, limits, plan.price, plan.margin);
        boolean[] frozen = new boolean[drinks.size()];
        do {
            int[] start = new int[frozen.length];
            for (int j = 0; j < start.length; j++) {
                start[j] = drinks.get(j).start();
            }
            System.arraycopy(search.best(start, frozen), 0, plan.choice, 0, start.length);
        } while (plan.refuseWorst(frozen, rules));
        return plan;
    }

    /**
     * Takes back a change that falls short: the least sure of those that do so alone, else of the rises or the falls where
     * these do so together, else of all; whether there was one.
     */
    private boolean refuseWorst(boolean[] frozen, EarningRules rules) {
        double least = rules.leastChancePercent().percent().toDouble();
        double leastGain = rules.leastGain().amount().toDouble();
        for (int j = 0; j < choice.length; j++) {
            chance[j] = isMoved(j) ? chanceOf(only(j)) : 1;
        }
        int worst = leastSure(j -> chance[j] < least || gainOf(j) < leastGain);
        double shown = worst < 0 ? 0 : chance[worst];
        if (worst >= 0 && shown >= least) {
            return refuse(
                    worst,
                    frozen,
                    PriceReason.of(
                            PriceReason.Kind.TOO_SMALL,
                            Exact.ofPhysical(gainOf(worst)),
                            rules.leastGain().amount()));
        }
        for (IntPredicate part : List.<IntPredicate>of(this::isRise, this::isFall, this::isMoved)) {
            if (worst < 0) {
                shown = chanceOf(part);
                worst = shown < least ? leastSure(part) : -1;
            }
        }
        return worst >= 0
                && refuse(
                        worst,
                        frozen,
                        PriceReason.of(
                                PriceReason.Kind.TOO_UNSURE,
                                Exact.ofPhysical(shown * 100),
                                rules.leastChancePercent()));
    }

    private boolean refuse(int drink, boolean[] frozen, PriceReason reason) {
        refused[drink] = reason;
        frozen[drink] = true;
        return true;
    }

    /** The moved drink of a part with the least chance; negative where there is none. */
    private int leastSure(IntPredicate part) {
        int worst = -1;
        for (int j = 0; j < choice.length; j++) {
            if (isMoved(j) && part.test(j) && (worst < 0 || chance[j] < chance[worst])) {
                worst = j;
            }
        }
        return worst;
    }

    private static IntPredicate only(int drink) {
        return j -> j == drink;
    }

    private boolean isMoved(int drink) {
        return choice[drink] != drinks.get(drink).start();
    }

    private boolean isRise(int drink) {
        return choice[drink] > drinks.get(drink).start();
    }

    private boolean isFall(int drink) {
        return choice[drink] < drinks.get(drink).start();
    }

    /** The choice without the changes of a part. */
    private int[] without(IntPredicate part) {
        int[] rest = choice.clone();
        for (int j = 0; j < rest.length; j++) {
            rest[j] = part.test(j) ? drinks.get(j).start() : rest[j];
        }
        return rest;
    }

    /** Expected gain of the group from one drink's change, given the others. */
    private double gainOf(int drink) {
        return value(demand.point, choice) - value(demand.point, without(only(drink)));
    }

    /** Chance that the changes of a part pay, given the others; 1 where the part has none. */
    private double chanceOf(IntPredicate part) {
        int[] rest = without(part);
        if (Arrays.equals(rest, choice)) {
            return 1;
        }
        int pays = 0;
        for (int d = 0; d < pull.length; d++) {
            pays += value(d, choice) > value(d, rest) ? 1 : 0;
        }
        return (double) pays / pull.length;
    }

    /** The group's margin a month under one draw. */
    private double value(int draw, int[] chosen) {
        double sum = 0;
        double earned = 0;
        for (int j = 0; j < chosen.length; j++) {
            double x = pull[draw][j][chosen[j]];
            sum += x;
            earned += x * margin[j][chosen[j]];
        }
        return sum > 0 ? demand.draws[draw].groupUnits(sum) / sum * earned : 0;
    }

    /** The group's margin a month at present prices under one draw. */
    private double valueNow(int draw) {
        double[] units = demand.draws[draw].unitsNow();
        double sum = 0;
        for (int j = 0; j < units.length; j++) {
            sum += units[j] * marginNow[j];
        }
        return sum;
    }

    private double value(GroupDemand model, int[] chosen) {
        double[] units = model.unitsAt(prices(chosen));
        double sum = 0;
        for (int j = 0; j < units.length; j++) {
            sum += units[j] * margin[j][chosen[j]];
        }
        return sum;
    }

    private double[] prices(int[] chosen) {
        double[] prices = new double[chosen.length];
        for (int j = 0; j < prices.length; j++) {
            prices[j] = price[j][chosen[j]];
        }
        return prices;
    }

    double[] units(GroupDemand model) {
        return model.unitsAt(prices(choice));
    }

    /** Change of each drink's margin a month against present prices, under one model. */
    double[] marginChange(GroupDemand model) {
        double[] before = model.unitsNow();
        double[] after = units(model);
        double[] change = new double[choice.length];
        for (int j = 0; j < change.length; j++) {
            change[j] = after[j] * margin[j][choice[j]] - before[j] * marginNow[j];
        }
        return change;
    }

    private double groupChange(GroupDemand model) {
        double sum = 0;
        for (double change : marginChange(model)) {
            sum += change;
        }
        return sum;
    }

    Interval groupChange() {
        double[] draws = new double[demand.draws.length];
        for (int d = 0; d < draws.length; d++) {
            draws[d] = value(d, choice) - valueNow(d);
        }
        return Interval.of(groupChange(demand.point), draws);
    }

    Exact groupChance() {
        int pays = 0;
        for (int d = 0; d < pull.length; d++) {
            pays += value(d, choice) > valueNow(d) ? 1 : 0;
        }
        return Exact.of(pays).dividedBy(Exact.of(demand.draws.length)).times(Exact.HUNDRED);
    }

    boolean isChange() {
        for (int j = 0; j < choice.length; j++) {
            if (price[j][choice[j]] != now[j]) {
                return true;
            }
        }
        return false;
    }

    Money suggested(int drink) {
        return drinks.get(drink).allowed().get(choice[drink]);
    }

    Optional<PriceReason> refused(int drink) {
        return Optional.ofNullable(refused[drink]);
    }
}
