package heeltap.review;

import heeltap.cost.Costs;
import heeltap.cost.DrinkCost;
import heeltap.quantity.Exact;
import heeltap.source.Problem;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What everything sold and given away should have used, each serve by the spec of its day.
 *
 * @param byIngredient as bought, in the ingredient's measure
 * @param given the part of it that was given away
 * @param byPreparation in the preparation's measure, use inside other preparations included
 * @param byDrink as bought by ingredient, for each drink
 * @param faults of the specs that held on days on which something was sold or given
 */
record Use(
        Map<String, Exact> byIngredient,
        Map<String, Exact> given,
        Map<String, Exact> byPreparation,
        Map<String, Map<String, Exact>> byDrink,
        Set<Problem> faults) {

    static Use of(Costs costs, Map<String, DrinkSales> sales) {
        Map<String, Exact> byIngredient = new TreeMap<>();
        Map<String, Exact> given = new TreeMap<>();
        Map<String, Exact> byPreparation = new TreeMap<>();
        Map<String, Map<String, Exact>> byDrink = new TreeMap<>();
        Set<Problem> faults = new LinkedHashSet<>();
        for (DrinkSales drink : sales.values()) {
            for (Map.Entry<LocalDate, Exact> day : drink.pouredByDay().entrySet()) {
                DrinkCost cost = costs.drinkOn(drink.drink(), day.getKey());
                faults.addAll(cost.faults());
                add(byIngredient, cost.use(), day.getValue());
                add(byPreparation, cost.preparations(), day.getValue());
                add(byDrink.computeIfAbsent(drink.drink(), name -> new TreeMap<>()), cost.use(), day.getValue());
                Exact givenUnits = drink.givenByDay().getOrDefault(day.getKey(), Exact.ZERO);
                add(given, cost.use(), givenUnits);
            }
        }
        return new Use(
                Collections.unmodifiableMap(byIngredient),
                Collections.unmodifiableMap(given),
                Collections.unmodifiableMap(byPreparation),
                Collections.unmodifiableMap(byDrink),
                Collections.unmodifiableSet(faults));
    }

    /** Adds so many times each amount to the sums. */
    static void add(Map<String, Exact> sums, Map<String, Exact> amounts, Exact times) {
        if (!times.isZero()) {
            amounts.forEach((name, amount) -> sums.merge(name, amount.times(times), Exact::plus));
        }
    }
}
