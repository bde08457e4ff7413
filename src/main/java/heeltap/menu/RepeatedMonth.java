package heeltap.menu;

import java.util.List;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * A month that could have been, for the same menu.
 *
 * @param sold counts of the real month
 * @param days days on the menu
 * @param margins not a number where unknown
 * @param spread φ, at least 1
 * @param rule popularity rule as a fraction of the equal share
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never leaves the package
record RepeatedMonth(double[] sold, double[] days, double[] margins, double spread, double rule) {
    /** Far below the share of one serve, far above binary noise: ties stay on the good side. */
    private static final double TIE = 1e-9;

    private static final double LARGE = 40;

    static RepeatedMonth of(List<ClassedDrink> drinks, double spread, MenuRules rules) {
        return new RepeatedMonth(
                drinks.stream().mapToDouble(d -> Overdispersion.count(d.item())).toArray(),
                drinks.stream().mapToDouble(d -> d.item().daysOnMenu()).toArray(),
                drinks.stream().mapToDouble(ClassCertainty::margin).toArray(),
                spread,
                rules.popularityRulePercent().percent().toDouble());
    }

    /**
     * Counts of a repeat. A Dirichlet draw is a set of gamma draws over their sum; counts that are gamma-mixed Poisson
     * with a common scale are Dirichlet-multinomial given their total.
     */
    double[] counts(RandomGenerator random) {
        int n = sold.length;
        double total = 0;
        double allDays = 0;
        for (int i = 0; i < n; i++) {
            total += sold[i];
            allDays += days[i];
        }
        double[] mix = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            // prior of one order in all, spread by days on the menu
            mix[i] = gamma(random, sold[i] / spread + days[i] / allDays);
            sum += mix[i];
        }
        double[] counts = new double[n];
        for (int i = 0; i < n; i++) {
            double mean = total * mix[i] / sum;
            double extra = spread - 1;
            double rate = extra < TIE ? mean : extra * gamma(random, mean / extra);
            counts[i] = poisson(random, rate);
        }
        return counts;
    }

    MarginClass[] classes(double[] counts) {
        double rates = 0;
        double costed = 0;
        double margin = 0;
        for (int i = 0; i < counts.length; i++) {
            rates += counts[i] / days[i];
            if (!Double.isNaN(margins[i])) {
                costed += counts[i];
                margin += counts[i] * margins[i];
            }
        }
        MarginClass[] classes = new MarginClass[counts.length];
        double average = costed > 0 ? margin / costed : 0;
        for (int i = 0; i < counts.length; i++) {
            double share = rates > 0 ? counts[i] / days[i] / rates * counts.length : 0;
            classes[i] = MarginClass.of(share >= rule - TIE, margins[i] >= average - TIE * Math.abs(average));
        }
        return classes;
    }

    /** The library's own draw takes time in proportion to large means, where a normal one is as good. */
    private static double poisson(RandomGenerator random, double mean) {
        if (mean < TIE) {
            return 0;
        }
        return mean < LARGE
                ? new PoissonDistribution(random, mean, 1e-12, 1000).sample()
                : Math.max(0, Math.rint(mean + Math.sqrt(mean) * random.nextGaussian()));
    }

    private static double gamma(RandomGenerator random, double shape) {
        return shape <= 0 ? 0 : new GammaDistribution(random, shape, 1, 1e-12).sample();
    }
}
