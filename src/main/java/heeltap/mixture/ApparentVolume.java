package heeltap.mixture;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * How many ml one g of something adds to the water it is dissolved in: φ(w) = (1/ρ - (1-w)/ρ_water)/w from a published
 * table of densities, straight between its rows and constant beyond its first and last.
 */
final class ApparentVolume {
    private final PolynomialSplineFunction function;
    private final double[] knots;

    private ApparentVolume(double[] massFractions, double[] volumes) {
        this.knots = massFractions;
        this.function = new LinearInterpolator().interpolate(massFractions, volumes);
    }

    /**
     * @param water density of water in the same table, g/ml
     * @param rows percent by mass and density in g/ml, rising
     */
    static ApparentVolume ofDensities(double water, double[][] rows) {
        double[] fractions = new double[rows.length];
        double[] volumes = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            double w = rows[i][0] / 100;
            fractions[i] = w;
            volumes[i] = (1 / rows[i][1] - (1 - w) / water) / w;
        }
        return new ApparentVolume(fractions, volumes);
    }

    /** ml per g in a solution with this mass fraction. */
    double at(double massFraction) {
        return function.value(Math.max(knots[0], Math.min(limit(), massFraction)));
    }

    /** The largest mass fraction of the table. */
    double limit() {
        return knots[knots.length - 1];
    }
}
