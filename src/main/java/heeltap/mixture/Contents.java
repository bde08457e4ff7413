package heeltap.mixture;

import java.util.OptionalDouble;

/**
 * What an amount of liquid or solid is made of: extensive quantities, so that parts add up. What is none of the named
 * substances counts as water.
 *
 * @param massG g
 * @param volumeMl ml at 20 °C; of a dry solid what it fills once dissolved, never its bulk
 * @param ethanolG g of pure ethanol
 * @param sugarG g, counted as sucrose
 * @param citricG g of citric acid; so too malic, tartaric and other acid (other counted as citric)
 * @param saltG g of sodium chloride
 * @param unknownMl ml of it of which nobody said what they are made of; counted as water
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
        double unknownMl,
        boolean estimated) {
    /** Density of pure ethanol at 20 °C in g/ml, OIML R 22 (1975): 789.24 kg/m³. */
    public static final double ETHANOL_DENSITY = 0.78924;

    public static final Contents NOTHING = new Contents(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, false);

    /** Contents that are known, or, where {@code estimated}, known to nobody. */
    public Contents(
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
        this(
                massG,
                volumeMl,
                ethanolG,
                sugarG,
                citricG,
                malicG,
                tartaricG,
                otherAcidG,
                saltG,
                estimated ? volumeMl : 0,
                estimated);
    }

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
                unknownMl * factor,
                estimated);
    }

    /** So many g of water; 0.99820 g/ml at 20 °C by OIML R 22. */
    public static Contents water(double grams) {
        return new Contents(grams, EthanolWater.volume(grams, 0), 0, 0, 0, 0, 0, 0, 0, 0, false);
    }

    /** Alcohol by volume in percent: volume of the ethanol alone at 20 °C over the volume of the mixture. */
    public double abvPercent() {
        return volumeMl == 0 ? 0 : 100 * ethanolMl() / volumeMl;
    }

    /** ml of the ethanol alone at 20 °C. */
    public double ethanolMl() {
        return ethanolG / ETHANOL_DENSITY;
    }

    /** All acids, g. */
    public double acidG() {
        return citricG + malicG + tartaricG + otherAcidG;
    }

    /**
     * Total titratable acidity as g of citric acid: citric + other + 0.95522 malic + 0.85339 tartaric, by equivalent
     * weights 64.04, 67.04 and 75.04.
     */
    public double acidityAsCitricG() {
        return citricG
                + otherAcidG
                + AcidSolution.MALIC_AS_CITRIC * malicG
                + AcidSolution.TARTARIC_AS_CITRIC * tartaricG;
    }

    /** g of sugar to one g of acidity as citric; empty where there is no acid. */
    public OptionalDouble sugarToAcid() {
        return acidityAsCitricG() > 0 ? OptionalDouble.of(sugarG / acidityAsCitricG()) : OptionalDouble.empty();
    }

    /** Water and whatever is none of the named substances, g. */
    public double waterG() {
        return massG - ethanolG - sugarG - acidG() - saltG;
    }

    /** g of something in 100 ml of this, such as {@code per100Ml(sugarG())}; 0 for nothing. */
    public double per100Ml(double grams) {
        return volumeMl == 0 ? 0 : 100 * grams / volumeMl;
    }

    /** Percent by mass of something in this, such as {@code massPercent(saltG())}; 0 for nothing. */
    public double massPercent(double grams) {
        return massG == 0 ? 0 : 100 * grams / massG;
    }

    /** g/ml; 0 for nothing. */
    public double density() {
        return volumeMl == 0 ? 0 : massG / volumeMl;
    }

    Contents withVolume(double newVolumeMl, double newUnknownMl, boolean newEstimated) {
        return new Contents(
                massG,
                newVolumeMl,
                ethanolG,
                sugarG,
                citricG,
                malicG,
                tartaricG,
                otherAcidG,
                saltG,
                newUnknownMl,
                newEstimated);
    }

    boolean isNothing() {
        return massG == 0 && volumeMl == 0;
    }

    /** Sugar, acid and salt to nine tenths of its mass: no solution of these is so strong. */
    boolean isDry() {
        return massG > 0 && sugarG + acidG() + saltG >= 0.9 * massG;
    }
}
