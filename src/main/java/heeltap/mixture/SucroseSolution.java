package heeltap.mixture;

/**
 * Sucrose in water at 20 °C.
 *
 * <p>ρ(w) = 998.2012 + Σ bₖ wᵏ in kg/m³, w the mass fraction of sucrose. Source: the density polynomial of aqueous sucrose
 * of ICUMSA SPS-4 and OIML R 124, coefficients as quoted from Llano (2005); stated for 0 to 70 % by mass (the limits
 * from memory).
 */
final class SucroseSolution {
    private static final double WATER = 998.2012;
    /** b₁ to b₆. */
    private static final double[] B = {385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289};
    /** Where the polynomial ends, mass fraction. */
    static final double LIMIT = 0.70;
    /**
     * Saturated at 20 °C, mass fraction: 67.09 % by Sokolovsky (1958), in Mohos, Confectionery and Chocolate Engineering
     * (2010); another table has 66.74 %. The larger, so that only what every source refuses is refused.
     */
    static final double SATURATED = 0.6709;

    private SucroseSolution() {}

    /** g/ml of a solution with this mass fraction of sucrose. */
    static double density(double massFraction) {
        return (WATER + massFraction * slope(massFraction)) / 1000;
    }

    /**
     * ml that one g of sucrose adds to its water in a solution with this mass fraction, held constant above
     * {@link #LIMIT}: φ = (1/ρ - (1-w)/ρ_water)/w, written so that it also holds at w = 0.
     */
    static double apparentVolume(double massFraction) {
        double w = Math.min(massFraction, LIMIT);
        double density = WATER + w * slope(w);
        return 1000 * (density - slope(w)) / (density * WATER);
    }

    /** (ρ - ρ_water)/w in kg/m³. */
    private static double slope(double w) {
        return EthanolWater.polynomial(B, w);
    }
}
