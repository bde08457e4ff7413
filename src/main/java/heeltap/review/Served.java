package heeltap.review;

import heeltap.cost.DrinkCost;
import heeltap.cost.Glass;
import heeltap.quantity.Exact;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.source.ProblemKind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What is told of a drink in its glass. What nobody described is absent, never zero. */
final class Served {
    /** A drink is told of while no more than this share of its volume is of unknown contents. */
    private static final double UNKNOWN = 0.01;

    private final Map<String, Exact> figures = new LinkedHashMap<>();
    private final boolean whollyKnown;
    private final boolean liquidsKnown;

    private Served(DrinkCost cost) {
        whollyKnown = cost.unknownComposition().isEmpty();
        liquidsKnown = cost.contents().unknownMl() <= UNKNOWN * cost.contents().volumeMl();
    }

    /**
     * Figures by their column in the table of drinks; none for a bought-in drink, or one that lacks a line. Physical
     * figures are no money.
     */
    static Map<String, Exact> figures(DrinkCost cost, Settings settings) {
        Served served = new Served(cost);
        if (!cost.lines().isEmpty() && cost.glass().mixedMl() > 0 && isWhole(cost)) {
            served.tell(cost.glass(), settings.get(Setting.STANDARD_DRINK_GRAMS));
        }
        return served.figures;
    }

    /** Whether every line is in the glass: a missing price takes nothing out of it, any other fault may. */
    static boolean isWhole(DrinkCost cost) {
        return cost.faults().stream().allMatch(fault -> fault.kind() == ProblemKind.PRICE_MISSING);
    }

    private void tell(Glass glass, Exact standardDrink) {
        figures.put("volume_ml", Exact.ofPhysical(glass.mixedMl()));
        figures.put("served_ml", Exact.ofPhysical(glass.servedMl()));
        figures.put("water_percent", Exact.ofPhysical(glass.waterPercent()));
        glass.endC().ifPresent(celsius -> figures.put("end_celsius", Exact.ofPhysical(celsius)));
        content("abv_percent", glass.abvPercent());
        content("alcohol_g", glass.alcoholG());
        content("sugar_g", glass.sugarG());
        content("acid_g", glass.acidG());
        content("salt_g", glass.saltG());
        content("acidity_as_citric_g", glass.acidityAsCitricG());
        if (standardDrink.isPositive()) {
            content("standard_drinks", glass.standardDrinks(standardDrink));
        }
        glass.sugarToAcid().ifPresent(ratio -> content("sugar_to_acid", ratio));
        content("sugar_g_per_100ml", glass.per100Ml(glass.sugarG()));
        content("acid_g_per_100ml", glass.per100Ml(glass.acidG()));
        content("acidity_as_citric_g_per_100ml", glass.per100Ml(glass.acidityAsCitricG()));
        content("salt_g_per_100ml", glass.per100Ml(glass.saltG()));
        content("mass_g", glass.served().massG());
        content("density", glass.served().density());
        content("citric_g", glass.served().citricG());
        content("malic_g", glass.served().malicG());
        content("tartaric_g", glass.served().tartaricG());
        content("other_acid_g", glass.served().otherAcidG());
        content("energy_kcal", glass.energyKcal());
        content("energy_kj", glass.energyKj());
    }

    /** None of something is told only where all ingredients are known, and nothing where a liquid is unknown. */
    private void content(String key, double figure) {
        if (liquidsKnown && (whollyKnown || figure > 0)) {
            figures.put(key, Exact.ofPhysical(figure));
        }
    }

    /** What says how much water comes from ice; empty where nothing is told of the glass. */
    static Optional<String> waterFrom(DrinkCost cost) {
        return cost.lines().isEmpty() || cost.glass().mixedMl() == 0 || !isWhole(cost)
                ? Optional.empty()
                : Optional.of(cost.glass().waterFrom().text());
    }
}
