package heeltap.mixture;

import heeltap.quantity.Exact;

/** Grams of alcohol, standard drinks and energy. */
public final class Alcohol {
    /** g/ml of ethanol as laws on prices and units reckon it; OIML R 22 has 0.78924 at 20 °C. */
    public static final Exact LEGAL_DENSITY = Exact.of("0.789");

    private static final double KJ_ALCOHOL = 29;
    private static final double KJ_SUGAR = 17;
    private static final double KCAL_ALCOHOL = 7;
    private static final double KCAL_SUGAR = 4;

    private Alcohol() {}

    /**
     * Grams of alcohol as laws reckon them, unrounded: ml × % vol / 100 × 0.789.
     *
     * @param contents any amount
     */
    public static Exact legalGrams(Contents contents) {
        return Exact.ofPhysical(contents.ethanolMl()).times(LEGAL_DENSITY);
    }

    /**
     * How many standard drinks an amount holds: g of ethanol over those of one standard drink.
     *
     * @param gramsEach g of ethanol in one, by the definition that applies: 8 in the United Kingdom to 20 in Austria
     *     (Kalinowski and Humphreys 2016)
     * @throws IllegalArgumentException if that is not above 0
     */
    public static double standardDrinks(Contents contents, double gramsEach) {
        if (!(gramsEach > 0)) {
            throw new IllegalArgumentException("a standard drink holds more than 0 g");
        }
        return contents.ethanolG() / gramsEach;
    }

    /** kJ from alcohol (29 kJ/g) and sugar (17 kJ/g): Regulation (EU) 1169/2011, Annex XIV (factors from memory). */
    public static double energyKj(Contents contents) {
        return KJ_ALCOHOL * contents.ethanolG() + KJ_SUGAR * contents.sugarG();
    }

    /** kcal from alcohol (7 kcal/g) and sugar (4 kcal/g): Regulation (EU) 1169/2011, Annex XIV (factors from memory). */
    public static double energyKcal(Contents contents) {
        return KCAL_ALCOHOL * contents.ethanolG() + KCAL_SUGAR * contents.sugarG();
    }
}
