package heeltap.pricing;

import java.util.Arrays;

/**
 * The prices on the grid that bring the group the highest margin: coordinate steps over all allowed prices of one drink
 * after another, then over those of every pair, until neither helps. No chance in it: same input, same prices.
 */
final class PriceSearch {
    private static final double LEAST_GAIN = 1e-9;

    private final GroupDemand demand;
    private final PriceLimits limits;
    private final double[][] prices;
    private final double[][] pull;
    private final double[][] margin;

    /**
     * @param prices allowed prices by drink, as the guest reads them
     * @param margin the net margin a serve at each of them
     */
    PriceSearch(GroupDemand demand, PriceLimits limits, double[][] prices, double[][] margin) {
        this.demand = demand;
        this.limits = limits;
        this.prices = prices;
        this.margin = margin;
        this.pull = new double[prices.length][];
        for (int j = 0; j < prices.length; j++) {
            pull[j] = new double[prices[j].length];
            for (int k = 0; k < prices[j].length; k++) {
                pull[j][k] = demand.pull(j, prices[j][k]);
            }
        }
    }

    /** From a choice of one price each, the best one that can be reached; frozen drinks keep theirs. */
    int[] best(int[] start, boolean[] frozen) {
        int[] choice = start.clone();
        while (single(choice, frozen) || paired(choice, frozen)) {
            // one more round
        }
        return choice;
    }

    private boolean single(int[] choice, boolean[] frozen) {
        boolean helped = false;
        for (int j = 0; j < choice.length; j++) {
            if (!frozen[j]) {
                helped |= improve(choice, j, j);
            }
        }
        return helped;
    }

    private boolean paired(int[] choice, boolean[] frozen) {
        boolean helped = false;
        for (int i = 0; i < choice.length; i++) {
            for (int j = i + 1; j < choice.length; j++) {
                if (!frozen[i] && !frozen[j]) {
                    helped |= improve(choice, i, j);
                }
            }
        }
        return helped;
    }

    /** The best prices of two drinks, or of one where they are the same, all others as they are. */
    private boolean improve(int[] choice, int i, int j) {
        double[] rest = sums(choice, i, j);
        int oldI = choice[i];
        int oldJ = choice[j];
        double best = value(choice, rest, i, j);
        int bestI = oldI;
        int bestJ = oldJ;
        double least = LEAST_GAIN * Math.max(1, Math.abs(best));
        for (int a = 0; a < prices[i].length; a++) {
            choice[i] = a;
            for (int b = i == j ? a : 0; b < (i == j ? a + 1 : prices[j].length); b++) {
                choice[j] = b;
                double value = value(choice, rest, i, j);
                if (value > best + least && limits.allow(prices, choice)) {
                    best = value;
                    bestI = a;
                    bestJ = b;
                }
            }
        }
        choice[i] = bestI;
        choice[j] = bestJ;
        return bestI != oldI || bestJ != oldJ;
    }

    /** Sum of pull and of pull × margin over all drinks but two. */
    private double[] sums(int[] choice, int i, int j) {
        double[] sums = new double[2];
        for (int k = 0; k < choice.length; k++) {
            if (k != i && k != j) {
                sums[0] += pull[k][choice[k]];
                sums[1] += pull[k][choice[k]] * margin[k][choice[k]];
            }
        }
        return sums;
    }

    private double value(int[] choice, double[] rest, int i, int j) {
        double sum = rest[0] + pull[i][choice[i]];
        double earned = rest[1] + pull[i][choice[i]] * margin[i][choice[i]];
        if (i != j) {
            sum += pull[j][choice[j]];
            earned += pull[j][choice[j]] * margin[j][choice[j]];
        }
        return sum > 0 ? demand.groupUnits(sum) / sum * earned : 0;
    }

    /** The prices of a choice. */
    double[] prices(int[] choice) {
        double[] chosen = new double[choice.length];
        Arrays.setAll(chosen, j -> prices[j][choice[j]]);
        return chosen;
    }
}
