package heeltap.pricing;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Demand of one group for the coming month: the best single model, and draws of what it may be instead, total included. */
final class DemandModel {
    private static final int SEED = 20_250_201;
    private static final int DRAWS = 400;

    final GroupDemand point;
    final GroupDemand[] draws;
    /** How overdispersed counts within the month are. */
    final double spread;
    /** Changes of each drink's own price in the months present. */
    final int[] priceChanges;

    private DemandModel(GroupDemand point, GroupDemand[] draws, double spread, int[] priceChanges) {
        this.point = point;
        this.draws = draws;
        this.spread = spread;
        this.priceChanges = priceChanges;
    }

    /**
     * @param names the drinks to model, all of them in the history
     * @param prices their present prices
     * @param staying other drinks of the history that stay on the menu at their last price, such as those of unknown cost
     */
    static DemandModel of(
            GroupHistory history, ElasticityPrior prior, List<String> names, double[] prices, List<String> staying) {
        DemandPosterior posterior = DemandPosterior.of(history, prior);
        PriceResponse mean = posterior.mean();
        ShareFit fit = ShareFit.of(history, mean);
        double[] units = units(history, fit, mean, names, prices, staying);
        GroupDemand point = new GroupDemand(prices, units, mean);
        RandomGenerator random = new Well19937c(SEED);
        PriceResponse[] responses = posterior.draws(DRAWS, new SplittableRandom(SEED));
        GroupDemand[] draws = new GroupDemand[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            double[] drawn = new double[units.length];
            double month = Math.exp(posterior.noise * random.nextGaussian());
            for (int j = 0; j < drawn.length; j++) {
                double sold = soldEver(history, names.get(j));
                drawn[j] =
                        units[j] * month * Math.exp(Math.sqrt(posterior.spread / (sold + 1)) * random.nextGaussian());
            }
            draws[d] = new GroupDemand(prices, drawn, responses[d]);
        }
        int[] changes = names.stream()
                .mapToInt(name -> history.priceChanges(history.drinks.indexOf(name)))
                .toArray();
        return new DemandModel(point, draws, posterior.spread, changes);
    }

    /** The last month's total, at the coming month's list and prices, shared by the drinks' pulls. */
    private static double[] units(
            GroupHistory history,
            ShareFit fit,
            PriceResponse response,
            List<String> names,
            double[] prices,
            List<String> staying) {
        int last = history.months() - 1;
        double[] pull = new double[prices.length];
        double sum = 0;
        for (int j = 0; j < pull.length; j++) {
            double own = fit.pull[history.drinks.indexOf(names.get(j))];
            pull[j] = own * Math.exp(-response.within() * response.hurt(prices[j]));
            sum += pull[j];
        }
        for (String name : staying) {
            int j = history.drinks.indexOf(name);
            sum += fit.pull[j] * Math.exp(-response.within() * response.hurt(history.lastPrice(j)));
        }
        double r = Math.pow(sum / fit.sum[last], response.follow());
        double total = history.total(last) * r / (1 - GroupDemand.GROUP_SHARE + GroupDemand.GROUP_SHARE * r);
        for (int j = 0; j < pull.length; j++) {
            pull[j] *= total / sum;
        }
        return pull;
    }

    private static double soldEver(GroupHistory history, String drink) {
        int j = history.drinks.indexOf(drink);
        double sum = 0;
        for (int t = 0; t < history.months(); t++) {
            sum += history.sold[t][j];
        }
        return sum;
    }
}
