package heeltap.mixture;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Water that a drink takes from ice, by a heat balance.
 *
 * <p>M c (Ts - Tf) + Q = m (L + cw Tf - ci Tr) + S ci (Tr - Ti) + U cw Tf: what the drink M gives up between its start Ts
 * and its end Tf, with the heat Q gained from outside, melts m g of ice and brings the rest of the dry ice S from Ti to Tr
 * = min(Tf, 0) and the clinging water U from 0 to Tf. The water in the drink is m + U. Heats of mixing and dilution are
 * left out. Beside ice no drink gets colder than it freezes: where the wished end lies below the freezing point of the
 * diluted drink, the end is that point.
 */
public final class IceDilution {
    /** Latent heat of fusion, J/g, from memory; a food chemistry appendix has 6012 J/mol, that is 333.7. */
    static final double LATENT_HEAT = 333.55;
    /** Specific heat of ice, J/(g K); food chemistry appendix 2.101 at 0 °C. */
    static final double ICE = 2.1;
    /** Specific heat of water, J/(g K); food chemistry appendix 4.218 at 0 °C, 4.182 at 20 °C from memory. */
    static final double WATER = 4.2;

    private IceDilution() {}

    /**
     * What the balance comes to.
     *
     * @param waterG g of water that the drink takes up; where the ice is not enough, all of it
     * @param endC temperature of the drink in the end, °C
     * @param enoughIce whether some ice is left; if not, the end is warmer than wished
     */
    public record Balance(double waterG, double endC, boolean enoughIce) {}

    /** g of water that the drink takes up. */
    public static double water(Contents drink, IceConditions conditions) {
        return balance(drink, conditions).waterG();
    }

    /** The water, the end temperature, and whether the ice suffices. */
    public static Balance balance(Contents drink, IceConditions conditions) {
        Sides sides = sides(drink, conditions);
        double end = end(drink, sides);
        double melted = sides.melted(end);
        return melted <= sides.dry
                ? new Balance(sides.clinging + melted, end, true)
                : new Balance(sides.clinging + sides.dry, sides.endOfAllMelted(), false);
    }

    /** The wished end, or the freezing point of the diluted drink where that is higher. */
    private static double end(Contents drink, Sides sides) {
        double wished = sides.conditions.finalC();
        if (aboveFreezing(drink, sides, wished) >= 0) {
            return wished;
        }
        return new BrentSolver(1e-12, 1e-12)
                .solve(200, celsius -> aboveFreezing(drink, sides, celsius), wished, Math.max(0, wished));
    }

    /** °C by which an end temperature lies above the freezing point of the drink with the water it then holds. */
    private static double aboveFreezing(Contents drink, Sides sides, double end) {
        double water = sides.clinging + Math.min(sides.melted(end), sides.dry);
        Contents diluted = Mixtures.mix(List.of(drink, Contents.water(water)));
        return end - FreezingPoint.of(diluted.abvPercent());
    }

    private static Sides sides(Contents drink, IceConditions conditions) {
        Double given = conditions.specificHeat();
        double mean = (conditions.startC() + conditions.finalC()) / 2;
        double specificHeat = given == null ? SpecificHeat.of(drink, mean) : given;
        double ice = conditions.icePerGram() * drink.massG();
        double clinging = conditions.wetness() * ice;
        return new Sides(
                conditions,
                drink.massG() * specificHeat,
                conditions.heatGain() * drink.massG(),
                ice - clinging,
                clinging);
    }

    /**
     * Both sides of the balance.
     *
     * @param capacity of the drink, J/K
     * @param gained J
     * @param dry g of ice
     * @param clinging g of water
     */
    private record Sides(IceConditions conditions, double capacity, double gained, double dry, double clinging) {
        /** g of ice that melt until the drink is so cold; may be more than there is. */
        double melted(double end) {
            double iceEnd = Math.min(end, 0);
            double heat = capacity * (conditions.startC() - end)
                    + gained
                    - dry * ICE * (iceEnd - conditions.iceC())
                    - clinging * WATER * end;
            return Math.max(0, heat / (LATENT_HEAT + WATER * end - ICE * iceEnd));
        }

        /** °C where all the ice has melted: M c (Ts - T) + Q = S (L - ci Ti + cw T) + U cw T. */
        double endOfAllMelted() {
            double heat = capacity * conditions.startC() + gained - dry * (LATENT_HEAT - ICE * conditions.iceC());
            return heat / (capacity + (dry + clinging) * WATER);
        }
    }
}
