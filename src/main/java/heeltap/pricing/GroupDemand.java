package heeltap.pricing;

import java.util.Arrays;

/**
 * Demand of one group for the coming month: a nested logit in which a guest first orders from the group or not, then
 * chooses one of its drinks (McFadden 1978; Train, Discrete Choice Methods with Simulation, 2009, ch. 4; from memory).
 *
 * <p>With units {@code q} at present prices {@code p}, and {@code x = q exp(-b (h(p') - h(p)))}, {@code R = Σx / Σq}: units
 * at prices {@code p'} are {@code x / Σx × Σq × R^λ / (1 - g + g R^λ)}. Here {@code g} is the share of occasions on which a
 * guest orders from the group at present prices, {@code b} the response within the group a unit of currency at the usual
 * price {@code m}, {@code λ} how far the group as a whole follows, between 0 and 1, and {@code h(p) = m ((p/m)^k - 1) / k}
 * how much a price hurts: by its amount where {@code k} is 1, by its ratio as {@code k} nears 0.
 */
public final class GroupDemand {
    /** Share of occasions on which a guest orders from the group: an assumption, since who did not order is not known. */
    public static final double GROUP_SHARE = 0.25;

    private final double[] prices;
    private final double[] units;
    private final PriceResponse response;
    private final double total;

    GroupDemand(double[] prices, double[] units, PriceResponse response) {
        this.prices = prices.clone();
        this.units = units.clone();
        this.response = response;
        this.total = Arrays.stream(units).sum();
    }

    /**
     * @param prices present ones by drink, as the guest reads them
     * @param units a month at these prices
     */
    public static GroupDemand of(double[] prices, double[] units, PriceResponse response) {
        return new GroupDemand(prices, units, response);
    }

    /** The same demand where the group answers a common rise of its prices so; all responses move in proportion. */
    public GroupDemand withGroupElasticity(double elasticity) {
        double within = response.within() * elasticity / groupElasticity();
        return new GroupDemand(
                prices, units, new PriceResponse(within, response.follow(), response.usualPrice(), response.power()));
    }

    /** {@code b}, {@code λ}, {@code m} and {@code k}. */
    public PriceResponse response() {
        return response;
    }

    /** Units a month at present prices, in the order of the group's drinks. */
    public double[] unitsNow() {
        return units.clone();
    }

    /** Units a month at other prices, as the guest reads them. */
    public double[] unitsAt(double[] newPrices) {
        double[] pull = new double[units.length];
        double sum = 0;
        for (int i = 0; i < pull.length; i++) {
            pull[i] = pull(i, newPrices[i]);
            sum += pull[i];
        }
        double scale = sum > 0 ? groupUnits(sum) / sum : 0;
        for (int i = 0; i < pull.length; i++) {
            pull[i] *= scale;
        }
        return pull;
    }

    /** Price elasticity of one drink at present prices, others as they are; negative. */
    public double elasticity(int drink) {
        double share = total > 0 ? units[drink] / total : 0;
        double own = 1 - share + response.follow() * (1 - GROUP_SHARE) * share;
        return -response.within() * response.slope(prices[drink]) * own;
    }

    /** Elasticity of the group's units when all its prices rise by the same percentage; negative. */
    public double groupElasticity() {
        double slope = 0;
        for (int i = 0; i < prices.length; i++) {
            slope += response.slope(prices[i]) * units[i];
        }
        return total > 0 ? -response.within() * response.follow() * (1 - GROUP_SHARE) * slope / total : 0;
    }

    /** {@code x} of one drink. */
    double pull(int drink, double price) {
        return units[drink] * Math.exp(-response.within() * (response.hurt(price) - response.hurt(prices[drink])));
    }

    /** {@code x} of one drink at several prices. */
    double[] pulls(int drink, double[] newPrices) {
        return Arrays.stream(newPrices).map(price -> pull(drink, price)).toArray();
    }

    /** The group's units where the drinks' {@code x} add up to {@code sum}. */
    double groupUnits(double sum) {
        if (total <= 0) {
            return 0;
        }
        double r = Math.pow(sum / total, response.follow());
        return total * r / (1 - GROUP_SHARE + GROUP_SHARE * r);
    }
}
