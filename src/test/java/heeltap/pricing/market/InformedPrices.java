package heeltap.pricing.market;

import java.util.ArrayList;
import java.util.List;

/** The best prices inside the limits of one review for one who knows the market. */
final class InformedPrices {
    private InformedPrices() {}

    static double[] next(MarketGroup bar, int month, double[] now, double largestChange, double step) {
        int n = now.length;
        List<double[]> options = new ArrayList<>();
        double[][][] weights = new double[n][][];
        int[] choice = new int[n];
        for (int j = 0; j < n; j++) {
            double lowest = Math.max(now[j] * (1 - largestChange), bar.cost[month][j] * MarketGroup.TAX);
            List<Double> prices = new ArrayList<>();
            prices.add(now[j]);
            for (double p = Math.ceil(lowest / step - 1e-9) * step;
                    p <= now[j] * (1 + largestChange) + 1e-9;
                    p += step) {
                if (Math.abs(p - now[j]) > 1e-9) {
                    prices.add(p);
                }
            }
            options.add(prices.stream().mapToDouble(p -> p).toArray());
            weights[j] = new double[prices.size()][];
            for (int k = 0; k < prices.size(); k++) {
                weights[j][k] = bar.weights(month, j, prices.get(k));
            }
        }
        double opening = opening(now);
        double widest = Math.max(n <= 9 ? 2.5 : 3, opening);
        double best = value(bar, month, options, weights, choice);
        boolean helped = true;
        while (helped) {
            helped = false;
            for (int i = 0; i < n; i++) {
                for (int j = i; j < n; j++) {
                    int oldI = choice[i];
                    int oldJ = choice[j];
                    int bestI = oldI;
                    int bestJ = oldJ;
                    for (int a = 0; a < weights[i].length; a++) {
                        for (int b = 0; b < weights[j].length; b++) {
                            choice[i] = a;
                            choice[j] = i == j ? a : b;
                            double value = value(bar, month, options, weights, choice);
                            if (value > best + 1e-6 && opening(prices(options, choice)) <= widest + 1e-9) {
                                best = value;
                                bestI = choice[i];
                                bestJ = choice[j];
                                helped = true;
                            }
                        }
                    }
                    choice[i] = bestI;
                    choice[j] = bestJ;
                }
            }
        }
        return prices(options, choice);
    }

    private static double value(
            MarketGroup bar, int month, List<double[]> options, double[][][] weights, int[] choice) {
        double[][] chosen = new double[choice.length][];
        for (int j = 0; j < choice.length; j++) {
            chosen[j] = weights[j][choice[j]];
        }
        double[] shares = MarketGroup.shares(chosen);
        double sum = 0;
        for (int j = 0; j < choice.length; j++) {
            sum += shares[j] * (options.get(j)[choice[j]] / MarketGroup.TAX - bar.cost[month][j]);
        }
        return sum * bar.occasions[month];
    }

    private static double[] prices(List<double[]> options, int[] choice) {
        double[] prices = new double[choice.length];
        for (int j = 0; j < choice.length; j++) {
            prices[j] = options.get(j)[choice[j]];
        }
        return prices;
    }

    private static double opening(double[] prices) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = 0;
        for (double price : prices) {
            lowest = Math.min(lowest, price);
            highest = Math.max(highest, price);
        }
        return highest / lowest;
    }
}
