package heeltap.mixture;

/**
 * Sodium chloride in water at 20 °C. Source: Poradnik fizykochemiczny (WNT 1974), density of NaCl solutions, 0 to 26 % by
 * mass; its rows 1, 5, 10 and 20 % agree with the CRC Handbook.
 */
final class SaltSolution {
    static final ApparentVolume VOLUME = new ApparentVolume(0.9982, new double[][] {
        {1, 1.0053},
        {2, 1.0122},
        {4, 1.0268},
        {6, 1.0413},
        {8, 1.0559},
        {10, 1.0707},
        {12, 1.0857},
        {14, 1.1009},
        {16, 1.1162},
        {18, 1.1319},
        {20, 1.1478},
        {22, 1.1640},
        {24, 1.1804},
        {26, 1.1972}
    });
    /**
     * Saturated at 20 °C, mass fraction: 26.395 % at 15.56 °C and 26.45 % at 21.11 °C in the salt industry's table
     * (saltinstitute.org), straight between.
     */
    static final double SATURATED = 0.26439;

    private SaltSolution() {}
}
