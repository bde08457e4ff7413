package heeltap.mixture;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/** Between the rows of a published table. */
final class Interpolation {
    private Interpolation() {}

    /** Straight between the given points, x rising, and constant beyond the first and last. */
    static double between(double[] x, double[] y, double at) {
        return new LinearInterpolator().interpolate(x, y).value(Math.max(x[0], Math.min(x[x.length - 1], at)));
    }
}
