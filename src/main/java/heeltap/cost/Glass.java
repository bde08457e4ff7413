package heeltap.cost;

import heeltap.mixture.Alcohol;
import heeltap.mixture.Contents;
import heeltap.mixture.IceConditions;
import heeltap.mixture.IceDilution;
import heeltap.mixture.Mixtures;
import heeltap.quantity.Exact;
import heeltap.record.Drink;
import heeltap.record.Method;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A drink as the guest gets it. Physical figures, at 20 °C.
 *
 * @param mixedMl volume before water from ice, ml
 * @param waterMl water from ice, ml
 * @param waterPercent that water in percent of the mixed volume
 * @param waterFrom what says so
 * @param endC temperature by the heat balance, °C; empty without one
 * @param served everything together
 */
public record Glass(
        double mixedMl,
        double waterMl,
        double waterPercent,
        WaterFrom waterFrom,
        OptionalDouble endC,
        Contents served) {
    private static final Contents WATER_G = Contents.water(1);

    static Glass of(Drink drink, Contents contents, Ice ice) {
        Exact typed = drink.waterPercent();
        if (typed != null) {
            return of(contents, typed.toDouble(), WaterFrom.DRINK);
        }
        Optional<IceConditions> conditions = ice.conditions(drink.method());
        if (conditions.isPresent() && Yield.isKnown(contents)) {
            return of(contents, IceDilution.balance(contents, conditions.get()));
        }
        return of(
                contents,
                usualWaterPercent(drink.method()),
                drink.method() == Method.NONE ? WaterFrom.NOTHING : WaterFrom.METHOD);
    }

    private static Glass of(Contents contents, double percent, WaterFrom from) {
        double water = contents.volumeMl() * percent / 100;
        Contents melted = WATER_G.times(water / WATER_G.volumeMl());
        return new Glass(
                contents.volumeMl(),
                water,
                percent,
                from,
                OptionalDouble.empty(),
                Mixtures.mix(List.of(contents, melted)));
    }

    private static Glass of(Contents contents, IceDilution.Balance balance) {
        Contents melted = Contents.water(balance.waterG());
        return new Glass(
                contents.volumeMl(),
                melted.volumeMl(),
                100 * melted.volumeMl() / contents.volumeMl(),
                WaterFrom.HEAT_BALANCE,
                OptionalDouble.of(balance.endC()),
                Mixtures.mix(List.of(contents, melted)));
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

    /** g of sugar to one g of acidity as citric; empty without acid. */
    public OptionalDouble sugarToAcid() {
        return served.sugarToAcid();
    }

    /** g in 100 ml as served. */
    public double per100Ml(double grams) {
        return served.per100Ml(grams);
    }

    /** kcal from alcohol and sugar. */
    public double energyKcal() {
        return Alcohol.energyKcal(served);
    }

    /** kJ from alcohol and sugar. */
    public double energyKj() {
        return Alcohol.energyKj(served);
    }
}
