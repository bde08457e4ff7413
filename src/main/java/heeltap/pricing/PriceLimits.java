package heeltap.pricing;

/**
 * Limits on the prices of a group together.
 *
 * @param present prices now, by drink
 * @param units by which rises are weighted
 * @param largestAverageRise as a fraction; infinite where there is none
 * @param lowestOther lowest price of the group's drinks that are not in the search; infinite: none
 * @param highestOther highest; 0: none
 * @param widest highest over lowest price that may be reached; the present one where that is wider already
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never leaves the package
record PriceLimits(
        double[] present,
        double[] units,
        double largestAverageRise,
        double lowestOther,
        double highestOther,
        double widest) {
    private static final double NOISE = 1e-9;

    boolean allow(double[][] prices, int[] choice) {
        double[] chosen = new double[choice.length];
        for (int j = 0; j < choice.length; j++) {
            chosen[j] = prices[j][choice[j]];
        }
        return !opensTooWide(chosen) && !risesTooMuch(chosen);
    }

    boolean opensTooWide(double[] prices) {
        double lowest = lowestOther;
        double highest = highestOther;
        for (double price : prices) {
            lowest = Math.min(lowest, price);
            highest = Math.max(highest, price);
        }
        return highest > widest * lowest * (1 + NOISE);
    }

    boolean risesTooMuch(double[] prices) {
        double rise = 0;
        double all = 0;
        for (int j = 0; j < prices.length; j++) {
            rise += units[j] * (prices[j] / present[j] - 1);
            all += units[j];
        }
        return rise > largestAverageRise * all + NOISE;
    }
}
