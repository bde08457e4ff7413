package heeltap.mixture;

import org.jspecify.annotations.Nullable;

/**
 * How a drink is chilled with ice. Amounts are per g of drink, so that two drinks shaken in two tins come out as one.
 *
 * @param startC temperature of the drink before, °C
 * @param finalC wished temperature of drink, melted and remaining ice after, °C
 * @param icePerGram g of ice (with the water that clings to it) to one g of drink
 * @param iceC temperature of the ice, °C, not above 0
 * @param wetness mass fraction of the ice that is water clinging to it, 0 to 1; only ice at 0 °C is wet
 * @param heatGain J gained from tin, hands and air to one g of drink
 * @param specificHeat of the drink, J/(g K); null: from its contents
 */
public record IceConditions(
        double startC,
        double finalC,
        double icePerGram,
        double iceC,
        double wetness,
        double heatGain,
        @Nullable Double specificHeat) {
    /** Common practice, no source: drink at 20 °C, shaken with one and a half times its weight of ice to -4 °C, or as cold
     * as it gets. */
    public static final IceConditions SHAKEN = of(20, -4, 1.5);

    /** Common practice, no source: as shaken, but stirred to -2 °C. */
    public static final IceConditions STIRRED = of(20, -2, 1.5);

    /** Common practice, no source: as shaken, but thrown between tins to 0 °C. */
    public static final IceConditions THROWN = of(20, 0, 1.5);

    /** Common practice, no source: mostly chilled already (10 °C), built on its weight of ice and drunk at 3 °C. */
    public static final IceConditions BUILT = of(10, 3, 1);

    public IceConditions {
        require(startC >= finalC, "a drink is not warmed by ice");
        require(finalC >= -40, "no ice for drinks is colder than -40 °C");
        require(icePerGram >= 0 && heatGain >= 0, "ice and heat gained are not below 0");
        require(iceC <= 0, "ice is not above 0 °C");
        require(wetness >= 0 && wetness <= 1, "wetness is a share from 0 to 1");
        require(wetness == 0 || iceC == 0, "ice colder than 0 °C is dry");
        require(specificHeat == null || specificHeat > 0, "a specific heat is above 0");
    }

    /** With ice of 0 °C without clinging water, no heat gained, and the specific heat of the contents. */
    public static IceConditions of(double startC, double finalC, double icePerGram) {
        return new IceConditions(startC, finalC, icePerGram, 0, 0, 0, null);
    }

    private static void require(boolean holds, String why) {
        if (!holds) {
            throw new IllegalArgumentException(why);
        }
    }
}
