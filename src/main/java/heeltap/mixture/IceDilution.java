package heeltap.mixture;

/**
 * Water that a drink takes from ice, by a heat balance.
 *
 * <p>M c (Ts - Tf) + Q = m (L + cw Tf - ci Tr) + S ci (Tr - Ti) + U cw Tf: what the drink M gives up between its start Ts
 * and its end Tf, with the heat Q gained from outside, melts m g of ice and brings the rest of the dry ice S from Ti to Tr
 * = min(Tf, 0) and the clinging water U from 0 to Tf. The water in the drink is m + U. Heats of mixing and dilution are
 * left out.
 */
public final class IceDilution {
    /** Latent heat of fusion of ice, J/g: 6012 J/mol over 18.0153 g/mol (food chemistry appendix) is 333.7; from memory 333.55. */
    static final double LATENT_HEAT = 333.55;
    /** Specific heat of ice at 0 °C, J/(g K); food chemistry appendix 2.101. */
    static final double ICE = 2.1;
    /** Specific heat of water, J/(g K); food chemistry appendix 4.218 at 0 °C, 4.182 at 20 °C from memory. */
    static final double WATER = 4.2;

    private IceDilution() {}

    /**
     * What the balance comes to.
     *
     * @param waterG g of water that the drink takes up; where the ice is not enough, all of it
     * @param enoughIce whether some ice is left, so that the end temperature can be reached
     */
    public record Balance(double waterG, boolean enoughIce) {}

    /** g of water that the drink takes up. */
    public static double water(Contents drink, IceConditions conditions) {
        return balance(drink, conditions).waterG();
    }

    /** The water and whether the ice suffices. */
    public static Balance balance(Contents drink, IceConditions conditions) {
        double ice = conditions.icePerGram() * drink.massG();
        double clinging = conditions.wetness() * ice;
        double dry = ice - clinging;
        double end = conditions.finalC();
        double iceEnd = Math.min(end, 0);
        double heat = drink.massG() * specificHeat(drink, conditions) * (conditions.startC() - end)
                + conditions.heatGain() * drink.massG()
                - dry * ICE * (iceEnd - conditions.iceC())
                - clinging * WATER * end;
        double melted = Math.max(0, heat / (LATENT_HEAT + WATER * end - ICE * iceEnd));
        return new Balance(clinging + Math.min(melted, dry), melted <= dry);
    }

    /**
     * Where the drink ends if exactly so much ice of 0 °C melts into it, or so much water of 0 °C is poured in, °C.
     *
     * @param grams g of ice or water
     * @param latent whether it is ice
     */
    static double endTemperature(double drinkG, double specificHeat, double startC, double grams, boolean latent) {
        double melting = latent ? grams * LATENT_HEAT : 0;
        return (drinkG * specificHeat * startC - melting) / (drinkG * specificHeat + grams * WATER);
    }

    private static double specificHeat(Contents drink, IceConditions conditions) {
        Double given = conditions.specificHeat();
        double mean = (conditions.startC() + conditions.finalC()) / 2;
        return given == null ? SpecificHeat.of(drink, mean) : given;
    }
}
