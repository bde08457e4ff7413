package heeltap.pricing;

import java.util.SplittableRandom;

/**
 * What the months present say about a group's responses, beside what was believed before: a penalised likelihood on a grid.
 *
 * <p>{@code η}, the group's elasticity without its sign, is lognormal around its prior; {@code λ}, how far the group follows
 * what moves its drinks' shares, is logit-normal around {@link #FOLLOW}; the response within the group, {@code b} times the
 * average price paid, is {@code w = η / ((1 - g) λ)}. Counts within a month vary {@code φ} times as much as single orders; the
 * group's monthly total follows the seasons, a first-order autoregression about its mean.
 */
final class DemandPosterior {
    /** Middle of {@code λ}: an assumption, since guests switch within a list more easily than they stay away from it. */
    static final double FOLLOW = 0.75;
    /** Middle of {@code k}, which sales within a bar hardly show: between a price that hurts by amount and by ratio. */
    static final double POWER = 0.5;

    private static final double FOLLOW_SPREAD = 1;
    private static final double GROUP_SPREAD = 0.4;
    private static final int POINTS = 37;
    private static final double LOW_WITHIN = 0.4;
    private static final double HIGH_WITHIN = 12;
    private static final double LOW_LOGIT = -2.5;
    private static final double HIGH_LOGIT = 4.5;
    /** Counts before any month has spoken: how overdispersed, and worth how many degrees of freedom. */
    private static final double SPREAD = 2;

    private static final double SPREAD_WEIGHT = 6;
    /** The month's total likewise: how far it moves between months, and how much it remembers. */
    private static final double NOISE = 0.12;

    private static final double NOISE_WEIGHT = 6;
    private static final double MEMORY = 0.8;

    private final double elasticity;
    private final double[] within = new double[POINTS];
    private final double[] logit = new double[POINTS];
    private final double[][] weight = new double[POINTS][POINTS];
    /** φ. */
    final double spread;
    /** Innovation of the log of the group's total. */
    final double noise;
    /** Average price paid, to which η and w refer. */
    final double averagePrice;

    private DemandPosterior(GroupHistory history, double elasticity) {
        this.elasticity = elasticity;
        averagePrice = history.averagePrice();
        ShareFit[] fits = new ShareFit[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double part = (double) i / (POINTS - 1);
            within[i] = LOW_WITHIN * Math.pow(HIGH_WITHIN / LOW_WITHIN, part);
            logit[i] = LOW_LOGIT + part * (HIGH_LOGIT - LOW_LOGIT);
            fits[i] = ShareFit.of(history, new PriceResponse(within[i] / averagePrice, 1, averagePrice, POWER));
        }
        int best = likeliest(fits);
        spread = spread(history, fits[best]);
        noise = noise(history, fits[best]);
        fill(history, fits);
    }

    static DemandPosterior of(GroupHistory history, ElasticityPrior prior) {
        return new DemandPosterior(history, -prior.mean().toDouble());
    }

    /** Where counts and prior agree best before their spread is known. */
    private int likeliest(ShareFit[] fits) {
        int best = 0;
        double score = Double.NEGATIVE_INFINITY;
        for (int w = 0; w < POINTS; w++) {
            double prior = Double.NEGATIVE_INFINITY;
            for (int l = 0; l < POINTS; l++) {
                prior = Math.max(prior, prior(w, l));
            }
            double now = fits[w].logLikelihood / SPREAD + prior;
            if (now > score) {
                score = now;
                best = w;
            }
        }
        return best;
    }

    private double prior(int w, int l) {
        double zg = Math.log(group(w, l) / elasticity) / GROUP_SPREAD;
        double zl = (logit[l] - Math.log(FOLLOW / (1 - FOLLOW))) / FOLLOW_SPREAD;
        return -(zg * zg + zl * zl) / 2;
    }

    private double group(int w, int l) {
        return (1 - GroupDemand.GROUP_SHARE) * follow(logit[l]) * within[w];
    }

    private static double follow(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }

    private static double spread(GroupHistory history, ShareFit best) {
        int cells = 0;
        for (int t = 0; t < history.months(); t++) {
            for (int j = 0; j < history.size(); j++) {
                cells += history.exposure[t][j] > 0 ? 1 : 0;
            }
        }
        // one total a month, one pull a drink less their common scale, one response
        int freedom = Math.max(0, cells - history.months() - history.size());
        double statistic = freedom == 0 ? 0 : best.pearson;
        return Math.max(1, (SPREAD_WEIGHT * SPREAD + statistic) / (SPREAD_WEIGHT + freedom));
    }

    private static double noise(GroupHistory history, ShareFit best) {
        double squares = squares(history, best, FOLLOW);
        return Math.sqrt((NOISE_WEIGHT * NOISE * NOISE + squares) / (NOISE_WEIGHT + history.months() - 1));
    }

    private void fill(GroupHistory history, ShareFit[] fits) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int w = 0; w < POINTS; w++) {
            for (int l = 0; l < POINTS; l++) {
                weight[w][l] = fits[w].logLikelihood / spread
                        - squares(history, fits[w], follow(logit[l])) / (2 * noise * noise)
                        + prior(w, l);
                highest = Math.max(highest, weight[w][l]);
            }
        }
        double sum = 0;
        for (double[] row : weight) {
            for (int l = 0; l < POINTS; l++) {
                row[l] = Math.exp(row[l] - highest);
                sum += row[l];
            }
        }
        for (double[] row : weight) {
            for (int l = 0; l < POINTS; l++) {
                row[l] /= sum;
            }
        }
    }

    /** Squared innovations of the log total a day, less what the model says, about their best mean. */
    private static double squares(GroupHistory history, ShareFit fit, double follow) {
        int n = history.months();
        double[] gap = new double[n];
        for (int t = 0; t < n; t++) {
            double r = Math.exp(follow * (Math.log(fit.sum[t]) - Math.log(fit.sum[n - 1])));
            double share = r / (1 - GroupDemand.GROUP_SHARE + GroupDemand.GROUP_SHARE * r);
            gap[t] = Math.log((history.total(t) + 0.5) / history.days[t]) - Math.log(share);
        }
        double first = Math.sqrt(1 - MEMORY * MEMORY);
        double top = first * first * gap[0];
        double bottom = first * first;
        for (int t = 1; t < n; t++) {
            top += (1 - MEMORY) * (gap[t] - MEMORY * gap[t - 1]);
            bottom += (1 - MEMORY) * (1 - MEMORY);
        }
        double mean = top / bottom;
        double squares = Math.pow(first * (gap[0] - mean), 2);
        for (int t = 1; t < n; t++) {
            squares += Math.pow(gap[t] - mean - MEMORY * (gap[t - 1] - mean), 2);
        }
        return squares;
    }

    /** The means of the group's response and of that within it, as one response. */
    PriceResponse mean() {
        double meanGroup = 0;
        double meanWithin = 0;
        for (int w = 0; w < POINTS; w++) {
            for (int l = 0; l < POINTS; l++) {
                meanGroup += weight[w][l] * group(w, l);
                meanWithin += weight[w][l] * within[w];
            }
        }
        double follow = Math.min(1, meanGroup / ((1 - GroupDemand.GROUP_SHARE) * meanWithin));
        return new PriceResponse(meanWithin / averagePrice, follow, averagePrice, POWER);
    }

    /** So many draws, spread evenly over the posterior; the power of the price, which no data bound, from 0 to 1. */
    PriceResponse[] draws(int count, SplittableRandom random) {
        PriceResponse[] draws = new PriceResponse[count];
        double step = Math.log(within[1] / within[0]);
        double stepLogit = logit[1] - logit[0];
        int cell = 0;
        double reached = weight[0][0];
        for (int i = 0; i < count; i++) {
            double mark = (i + random.nextDouble()) / count;
            while (reached < mark && cell < POINTS * POINTS - 1) {
                cell++;
                reached += weight[cell / POINTS][column(cell)];
            }
            draws[i] = new PriceResponse(
                    within[cell / POINTS] * Math.exp(step * (random.nextDouble() - 0.5)) / averagePrice,
                    follow(logit[column(cell)] + stepLogit * (random.nextDouble() - 0.5)),
                    averagePrice,
                    Math.max(0.01, random.nextDouble()));
        }
        return draws;
    }

    /** Up and down in turns, so that neighbours stay neighbours. */
    private static int column(int cell) {
        int column = cell % POINTS;
        return cell / POINTS % 2 == 0 ? column : POINTS - 1 - column;
    }
}
