package heeltap.mixture;

/**
 * Freezing point of ethanol and water, straight between published values at 0 to 60 % vol (engineeringtoolbox.com,
 * ethanol-water); what sugar, acid and salt lower is left out.
 */
final class FreezingPoint {
    private static final double[] ABV = {0, 10, 20, 30, 40, 50, 60};
    private static final double[] CELSIUS = {0, -4, -9, -15, -23, -32, -37};

    private FreezingPoint() {}

    /** °C; above 60 % vol as at 60. */
    static double of(double abvPercent) {
        return Interpolation.between(ABV, CELSIUS, abvPercent);
    }
}
