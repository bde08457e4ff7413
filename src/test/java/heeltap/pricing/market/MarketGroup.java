package heeltap.pricing.market;

import java.util.SplittableRandom;

/**
 * One group of drinks of an invented bar, and the guests who choose among them. Not the model that the estimator uses: a
 * guest's taste, thirst and care for money differ from the next guest's, and money hurts by a power of the price.
 */
final class MarketGroup {
    static final double TAX = 1.2;
    static final int MONTHS = 13;
    private static final int GUESTS = 120;

    final int drinks;
    /** Net cost of a serve, by month and drink. */
    final double[][] cost = new double[MONTHS][];
    /** Occasions on which a guest could order from the group, by month. */
    final double[] occasions = new double[MONTHS];
    /** Prices at the start, as the guest reads them. */
    final double[] firstPrice;

    final double party;
    private final double usualPrice;
    private final double power;
    /** Utility of a drink without its price, by guest and drink; the month's taste comes on top. */
    private final double[][] taste = new double[GUESTS][];

    private final double[][] fashion = new double[MONTHS][];
    private final double[] care = new double[GUESTS];

    MarketGroup(long seed, double sensitivity) {
        SplittableRandom random = new SplittableRandom(seed);
        drinks = 5 + random.nextInt(5);
        firstPrice = new double[drinks];
        cost[0] = new double[drinks];
        double sum = 0;
        for (int j = 0; j < drinks; j++) {
            cost[0][j] = 1.1 * Math.exp(0.9 * random.nextDouble());
            double net = cost[0][j] / 0.22 * Math.exp(0.15 * normal(random));
            firstPrice[j] = Math.max(3, Math.rint(2 * net * TAX) / 2);
            sum += firstPrice[j];
        }
        usualPrice = sum / drinks;
        power = 0.4 + 0.6 * random.nextDouble();
        party = 1 + random.nextInt(3);
        drift(random);
        guests(random, sensitivity);
        double share = 0.1 + 0.3 * random.nextDouble();
        thirst(share);
        traffic(random, (300 + 1200 * random.nextDouble()) / share);
    }

    private void drift(SplittableRandom random) {
        fashion[0] = new double[drinks];
        for (int m = 1; m < MONTHS; m++) {
            cost[m] = new double[drinks];
            fashion[m] = new double[drinks];
            for (int j = 0; j < drinks; j++) {
                double jump = random.nextDouble() < 0.04 ? 0.05 + 0.15 * random.nextDouble() : 0;
                cost[m][j] = cost[m - 1][j] * Math.exp(0.004 + 0.01 * normal(random) + jump);
                fashion[m][j] = fashion[m - 1][j] + 0.03 * normal(random);
            }
        }
    }

    private void guests(SplittableRandom random, double sensitivity) {
        double middle = sensitivity * (1.5 + 1.8 * random.nextDouble());
        double differ = 0.8 + 1.4 * random.nextDouble();
        double[][] style = new double[drinks][2];
        double[] liked = new double[drinks];
        for (int j = 0; j < drinks; j++) {
            style[j][0] = normal(random);
            style[j][1] = normal(random);
            // dearer drinks are mostly better ones
            liked[j] = 0.8 * middle * hurt(firstPrice[j]) + 0.5 * normal(random);
        }
        for (int i = 0; i < GUESTS; i++) {
            taste[i] = new double[drinks];
            care[i] = middle * Math.exp(0.4 * normal(random) - 0.08);
            double thirst = differ * normal(random);
            double first = 0.5 * normal(random);
            double second = 0.5 * normal(random);
            for (int j = 0; j < drinks; j++) {
                taste[i][j] = liked[j] + thirst + first * style[j][0] + second * style[j][1];
            }
        }
    }

    /** Shifts all tastes until guests order on the given share of occasions. */
    private void thirst(double share) {
        double low = -20;
        double high = 20;
        double at = 0;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            shift(middle - at);
            at = middle;
            double ordered = 0;
            for (double s : shares(0, firstPrice)) {
                ordered += s;
            }
            low = ordered < share ? middle : low;
            high = ordered < share ? high : middle;
        }
    }

    private void shift(double by) {
        for (double[] guest : taste) {
            for (int j = 0; j < drinks; j++) {
                guest[j] += by;
            }
        }
    }

    private void traffic(SplittableRandom random, double usual) {
        double swing = 0.2 * random.nextDouble();
        double phase = 2 * Math.PI * random.nextDouble();
        for (int m = 0; m < MONTHS; m++) {
            occasions[m] = usual * Math.exp(swing * Math.sin(phase + 2 * Math.PI * m / 12) + 0.06 * normal(random));
        }
    }

    /** How much a price hurts, as a share of the usual price: concave, 0 at the usual one. */
    private double hurt(double price) {
        return (Math.pow(price / usualPrice, power) - 1) / power;
    }

    /** Weight of a drink for a guest, by guest, at a price. */
    double[] weights(int month, int drink, double price) {
        double[] weights = new double[GUESTS];
        double hurt = hurt(price);
        for (int i = 0; i < GUESTS; i++) {
            weights[i] = Math.exp(taste[i][drink] + fashion[month][drink] - care[i] * hurt);
        }
        return weights;
    }

    /** Share of occasions on which each drink is ordered. */
    double[] shares(int month, double[] prices) {
        double[][] weights = new double[drinks][];
        for (int j = 0; j < drinks; j++) {
            weights[j] = weights(month, j, prices[j]);
        }
        return shares(weights);
    }

    static double[] shares(double[][] weights) {
        double[] shares = new double[weights.length];
        for (int i = 0; i < GUESTS; i++) {
            double sum = 1;
            for (double[] weight : weights) {
                sum += weight[i];
            }
            for (int j = 0; j < weights.length; j++) {
                shares[j] += weights[j][i] / sum / GUESTS;
            }
        }
        return shares;
    }

    /** Expected units of a month. */
    double[] units(int month, double[] prices) {
        double[] units = shares(month, prices);
        for (int j = 0; j < drinks; j++) {
            units[j] *= occasions[month];
        }
        return units;
    }

    /** Expected margin of a month. */
    double margin(int month, double[] prices) {
        double[] units = units(month, prices);
        double sum = 0;
        for (int j = 0; j < drinks; j++) {
            sum += units[j] * (prices[j] / TAX - cost[month][j]);
        }
        return sum;
    }

    /** True elasticity of one drink's units to its own price. */
    double elasticity(int month, double[] prices, int drink) {
        double[] up = prices.clone();
        up[drink] *= 1.001;
        return Math.log(shares(month, up)[drink] / shares(month, prices)[drink]) / Math.log(1.001);
    }

    /** True elasticity of all units to a common change. */
    double groupElasticity(int month, double[] prices) {
        double[] up = prices.clone();
        double before = 0;
        double after = 0;
        for (int j = 0; j < drinks; j++) {
            up[j] *= 1.001;
        }
        for (int j = 0; j < drinks; j++) {
            before += shares(month, prices)[j];
            after += shares(month, up)[j];
        }
        return Math.log(after / before) / Math.log(1.001);
    }

    /** Counts of a month as the till sees them: days of the week, weather, parties that order the same. */
    int[] sales(int month, double[] prices, SplittableRandom random) {
        double[] mean = units(month, prices);
        int[] sold = new int[drinks];
        double[] day = new double[30];
        double all = 0;
        for (int d = 0; d < 30; d++) {
            day[d] = (d % 7 >= 5 ? 1.8 : 1) * Math.exp(0.25 * normal(random));
            all += day[d];
        }
        for (double today : day) {
            for (int j = 0; j < drinks; j++) {
                sold[j] += ((int) party) * poisson(random, mean[j] * today / all / party);
            }
        }
        return sold;
    }

    private static int poisson(SplittableRandom random, double mean) {
        double limit = Math.exp(-mean);
        int n = 0;
        for (double product = random.nextDouble(); product > limit; product *= random.nextDouble()) {
            n++;
        }
        return n;
    }

    static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
