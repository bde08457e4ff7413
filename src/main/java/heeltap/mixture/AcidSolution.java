package heeltap.mixture;

/** Fruit acids in water at 20 °C. */
final class AcidSolution {
    /** Source: CRC Handbook, density of aqueous citric acid, 1 to 30 % by mass. */
    static final ApparentVolume CITRIC = new ApparentVolume(
            0.9982, new double[][] {{1, 1.0022}, {5, 1.0189}, {10, 1.0402}, {20, 1.0858}, {30, 1.1346}});

    /**
     * Source: a producer's data sheet after Lange and Sinks (1930), 5 to 40 % by mass, as specific gravity 20/4; water at 4
     * °C is 0.99997 g/ml.
     */
    static final ApparentVolume MALIC = new ApparentVolume(0.99823 / 0.99997, new double[][] {
        {5, 1.019}, {10, 1.039}, {15, 1.060}, {20, 1.080}, {25, 1.100}, {30, 1.123}, {35, 1.146}, {40, 1.169}
    });

    /** ml per g; from memory, as no published table was at hand: more than a little of it marks a mixture estimated. */
    static final double TARTARIC_VOLUME = 0.555;
    /** Up to this mass fraction an error in {@link #TARTARIC_VOLUME} is below 0.1 % of the whole. */
    static final double TARTARIC_LIMIT = 0.02;

    /** Saturated at 20 °C, mass fraction; 59.2 % in an encyclopaedia's table. */
    static final double CITRIC_SATURATED = 0.592;
    /** Saturated at 20 °C, mass fraction; a producer's data sheet after Apelblat et al. (1995). */
    static final double MALIC_SATURATED = 0.555;
    /** Saturated at 20 °C, mass fraction; 139 g per 100 g of water, from memory. */
    static final double TARTARIC_SATURATED = 139.0 / 239.0;

    /**
     * g of citric acid with as many titratable protons as 1 g: equivalent weights 64.0413 (citric, 3 protons), 67.0435
     * (malic, 2) and 75.0435 (tartaric, 2), from standard atomic weights.
     */
    static final double MALIC_AS_CITRIC = 64.0413 / 67.0435;

    static final double TARTARIC_AS_CITRIC = 64.0413 / 75.0435;

    private AcidSolution() {}
}
