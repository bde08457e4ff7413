package heeltap.pricing;

/**
 * Shares within the group at one response to price: a drink's share in a month is its exposure times {@code exp(a - b h(p))}
 * over the group's sum. The pulls {@code exp(a)} that make the counts likeliest are found by scaling each until its
 * expected units are the sold ones (Deming and Stephan 1940; from memory).
 */
final class ShareFit {
    private static final int STEPS = 500;
    private static final double PRECISION = 1e-10;
    /** A serve that every drink is taken to have sold besides: keeps the pull of an unsold one above zero. */
    private static final double PSEUDO = 0.5;

    /** {@code exp(a)}, by drink; they have no common scale. */
    final double[] pull;
    /** {@code Σ exposure exp(a - b h(p))}, by month. */
    final double[] sum;
    /** Log-likelihood of the counts as single orders. */
    final double logLikelihood;
    /** Pearson's statistic of the counts against the fit. */
    final double pearson;

    private ShareFit(double[] pull, double[] sum, double logLikelihood, double pearson) {
        this.pull = pull;
        this.sum = sum;
        this.logLikelihood = logLikelihood;
        this.pearson = pearson;
    }

    static ShareFit of(GroupHistory history, PriceResponse response) {
        int months = history.months();
        int n = history.size();
        double[][] weight = new double[months][n];
        double[] wanted = new double[n];
        for (int t = 0; t < months; t++) {
            for (int j = 0; j < n; j++) {
                weight[t][j] =
                        history.exposure[t][j] * Math.exp(-response.within() * response.hurt(history.price[t][j]));
                wanted[j] += history.weight[t] * history.sold[t][j];
            }
        }
        for (int j = 0; j < n; j++) {
            wanted[j] += PSEUDO;
        }
        double[] totals = new double[months];
        for (int t = 0; t < months; t++) {
            totals[t] = history.weight[t] * history.total(t) + PSEUDO * n / months;
        }
        double[] pull = scale(weight, wanted, totals);
        return measure(history, weight, pull);
    }

    private static double[] scale(double[][] weight, double[] wanted, double[] totals) {
        double[] pull = new double[wanted.length];
        java.util.Arrays.fill(pull, 1);
        for (int step = 0; step < STEPS; step++) {
            double[] expected = new double[pull.length];
            for (int t = 0; t < totals.length; t++) {
                double sum = sum(weight[t], pull);
                for (int j = 0; j < pull.length; j++) {
                    expected[j] += totals[t] * weight[t][j] / sum;
                }
            }
            double largest = 0;
            for (int j = 0; j < pull.length; j++) {
                double next = wanted[j] / expected[j];
                largest = Math.max(largest, Math.abs(next / pull[j] - 1));
                pull[j] = next;
            }
            if (largest < PRECISION) {
                break;
            }
        }
        return pull;
    }

    private static ShareFit measure(GroupHistory history, double[][] weight, double[] pull) {
        double[] sums = new double[weight.length];
        double likelihood = 0;
        double pearson = 0;
        for (int t = 0; t < weight.length; t++) {
            sums[t] = sum(weight[t], pull);
            double total = history.total(t);
            for (int j = 0; j < pull.length; j++) {
                double share = weight[t][j] * pull[j] / sums[t];
                if (share > 0 && total > 0) {
                    double gap = history.sold[t][j] - total * share;
                    likelihood += history.weight[t] * history.sold[t][j] * Math.log(share);
                    pearson += gap * gap / (total * share);
                }
            }
        }
        return new ShareFit(pull, sums, likelihood, pearson);
    }

    private static double sum(double[] weight, double[] pull) {
        double sum = 0;
        for (int j = 0; j < pull.length; j++) {
            sum += weight[j] * pull[j];
        }
        return sum;
    }
}
