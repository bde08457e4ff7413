package heeltap.mixture;

/**
 * What an amount of liquid or solid is made of: extensive quantities, so that parts add up.
 *
 * @param massG g
 * @param volumeMl ml at 20 °C
 * @param ethanolG g of pure ethanol
 * @param sugarG g, counted as sucrose
 * @param citricG g of citric acid; so too malic, tartaric and other acid (other counted as citric)
 * @param saltG g of sodium chloride
 * @param estimated whether the volume comes from adding volumes because no published relation covers the mixture
 */
public record Contents(
        double massG,
        double volumeMl,
        double ethanolG,
        double sugarG,
        double citricG,
        double malicG,
        double tartaricG,
        double otherAcidG,
        double saltG,
        boolean estimated) {
    /** Density of pure ethanol at 20 °C in g/ml, OIML R 22 (1973): 789.24 kg/m³. */
    public static final double ETHANOL_DENSITY = 0.78924;

    public static final Contents NOTHING = new Contents(0, 0, 0, 0, 0, 0, 0, 0, 0, false);

    /** So many times this amount. */
    public Contents times(double factor) {
        return new Contents(
                massG * factor,
                volumeMl * factor,
                ethanolG * factor,
                sugarG * factor,
                citricG * factor,
                malicG * factor,
                tartaricG * factor,
                otherAcidG * factor,
                saltG * factor,
                estimated);
    }

    /** Alcohol by volume in percent: volume of the ethanol alone at 20 °C over the volume of the mixture. */
    public double abvPercent() {
        return volumeMl == 0 ? 0 : 100 * ethanolG / ETHANOL_DENSITY / volumeMl;
    }

    /** All acids, g. */
    public double acidG() {
        return citricG + malicG + tartaricG + otherAcidG;
    }

    /** g/ml; 0 for nothing. */
    public double density() {
        return volumeMl == 0 ? 0 : massG / volumeMl;
    }
}
