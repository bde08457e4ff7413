package heeltap.pricing;

import heeltap.quantity.Exact;

/**
 * An estimate with the bounds that hold 80 % of what is believed.
 *
 * @param low a tenth lies below
 * @param value best single figure
 * @param high a tenth lies above
 */
public record Interval(Exact low, Exact value, Exact high) {
    static Interval of(double value, double[] draws) {
        double[] sorted = draws.clone();
        java.util.Arrays.sort(sorted);
        return new Interval(
                Exact.ofPhysical(Math.min(value, quantile(sorted, 0.1))),
                Exact.ofPhysical(value),
                Exact.ofPhysical(Math.max(value, quantile(sorted, 0.9))));
    }

    private static double quantile(double[] sorted, double part) {
        double at = part * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    /** The same bounds about another single figure, widened where it lies outside them. */
    Interval about(Exact figure) {
        return new Interval(low.min(figure), figure, high.max(figure));
    }

    /** All three figures times a positive factor. */
    Interval times(Exact factor) {
        return new Interval(low.times(factor), value.times(factor), high.times(factor));
    }

    /** Whether a figure lies inside, bounds included. */
    public boolean holds(Exact figure) {
        return !figure.isLessThan(low) && !figure.isGreaterThan(high);
    }
}
