package heeltap.mixture;

/**
 * Specific heat of a drink: that of its ethanol-water from Perry's Chemical Engineers' Handbook, table 2-205, straight
 * between its rows, with 1.4 J/(g K) for each g dissolved (sucrose in solution, from memory of the sugar industry's
 * formula).
 */
final class SpecificHeat {
    private static final double CALORIE = 4.184;
    private static final double DISSOLVED = 1.4;
    private static final double[] CELSIUS = {3, 23, 41};
    /** Mass fractions of the table's 4.16, 11.5, 37.0, 61.0 and 100 mol %, water before them. */
    private static final double[] ETHANOL = {0, 0.100, 0.249, 0.600, 0.800, 1};
    /** A row for each temperature, cal/(g K). Water: 4.218 J/(g K) at 0 °C published, 4.182 at 20 °C from memory. */
    private static final double[][] CALORIES = {
        {1.007, 1.05, 1.02, 0.805, 0.67, 0.54},
        {0.9995, 1.02, 1.03, 0.86, 0.727, 0.577},
        {0.9995, 1.02, 1.03, 0.875, 0.748, 0.621}
    };

    private SpecificHeat() {}

    /** J/(g K) at a temperature, held constant below 3 and above 41 °C; of water for nothing. */
    static double of(Contents drink, double celsius) {
        double dissolved = drink.sugarG() + drink.acidG() + drink.saltG();
        double solvent = drink.massG() - dissolved;
        if (drink.massG() <= 0 || solvent <= 0) {
            return drink.massG() > 0 ? DISSOLVED : CALORIE;
        }
        double ofSolvent = ofEthanolWater(drink.ethanolG() / solvent, celsius);
        return (solvent * ofSolvent + dissolved * DISSOLVED) / drink.massG();
    }

    /** J/(g K) of ethanol-water with this mass fraction of ethanol. */
    static double ofEthanolWater(double massFraction, double celsius) {
        double[] atFraction = new double[CELSIUS.length];
        for (int i = 0; i < CELSIUS.length; i++) {
            atFraction[i] = CALORIE * Interpolation.between(ETHANOL, CALORIES[i], massFraction);
        }
        return Interpolation.between(CELSIUS, atFraction, celsius);
    }
}
