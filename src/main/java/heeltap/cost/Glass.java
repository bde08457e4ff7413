package heeltap.cost;

import heeltap.mixture.Alcohol;
import heeltap.mixture.Contents;
import heeltap.mixture.Mixtures;
import heeltap.quantity.Exact;
import heeltap.record.Drink;
import heeltap.record.Method;
import java.util.List;

/**
 * A drink as the guest gets it. Physical figures, at 20 °C.
 *
 * @param mixedMl volume before water from ice, ml
 * @param waterMl water from ice, ml
 * @param waterPercent that water in percent of the mixed volume
 * @param served everything together
 */
public record Glass(double mixedMl, double waterMl, double waterPercent, Contents served) {
    static Glass of(Drink drink, Contents contents) {
        Exact typed = drink.waterPercent();
        double percent = typed == null ? usualWaterPercent(drink.method()) : typed.toDouble();
        double water = contents.volumeMl() * percent / 100;
        Contents one = Contents.water(1);
        Contents served = Mixtures.mix(List.of(contents, one.times(water / one.volumeMl())));
        return new Glass(contents.volumeMl(), water, percent, served);
    }

    /** Percent of the mixed volume; common practice, no source. */
    static double usualWaterPercent(Method method) {
        return switch (method) {
            case SHAKEN -> 30;
            case STIRRED -> 22;
            case THROWN -> 20;
            case BUILT -> 10;
            case BLENDED -> 60;
            case NONE -> 0;
        };
    }

    /** ml. */
    public double servedMl() {
        return served.volumeMl();
    }

    /** % vol as served. */
    public double abvPercent() {
        return served.abvPercent();
    }

    /** g of pure alcohol. */
    public double alcoholG() {
        return served.ethanolG();
    }

    /** @param gramsEach g of alcohol in one, by the bar's definition, above 0 */
    public double standardDrinks(Exact gramsEach) {
        return Alcohol.standardDrinks(served, gramsEach.toDouble());
    }

    /** g, counted as sucrose. */
    public double sugarG() {
        return served.sugarG();
    }

    /** Sum of all acids, g. */
    public double acidG() {
        return served.acidG();
    }

    /** Titratable acidity, g of citric acid. */
    public double acidityAsCitricG() {
        return served.acidityAsCitricG();
    }

    /** g of sodium chloride. */
    public double saltG() {
        return served.saltG();
    }

    /** kcal from alcohol and sugar. */
    public double energyKcal() {
        return Alcohol.energyKcal(served);
    }
}
