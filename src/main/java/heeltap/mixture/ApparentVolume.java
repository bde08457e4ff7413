package heeltap.mixture;

/**
 * How many ml one g of something adds to the water it is dissolved in: φ(w) = (1/ρ - (1-w)/ρ_water)/w from a published
 * table of densities, straight between its rows and constant beyond its first and last.
 */
final class ApparentVolume {
    private final double[] massFractions;
    private final double[] volumes;

    /**
     * @param water density of water in the same table, g/ml
     * @param rows percent by mass and density in g/ml, rising
     */
    ApparentVolume(double water, double[][] rows) {
        massFractions = new double[rows.length];
        volumes = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            double w = rows[i][0] / 100;
            massFractions[i] = w;
            volumes[i] = (1 / rows[i][1] - (1 - w) / water) / w;
        }
    }

    /** ml per g in a solution with this mass fraction. */
    double at(double massFraction) {
        return Interpolation.between(massFractions, volumes, massFraction);
    }

    /** The largest mass fraction of the table. */
    double limit() {
        return massFractions[massFractions.length - 1];
    }
}
