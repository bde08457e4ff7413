package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.stock.MonthSide.DrinkMonth;
import heeltap.stock.Step.Effect;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Explains the difference between two months by prices, mix, volume, new and dropped drinks; cost also by invoice prices,
 * specs, losses, unexplained use and the value of stock. Each chain adds up to the difference exactly.
 *
 * <p>Standard variance analysis. For drinks sold in both months, with q units and p money a unit in month A and B, Q the
 * sums over those drinks: {@code volume = (Q_B/Q_A - 1) x sum q_A p_A}, {@code mix = sum (q_B - Q_B q_A/Q_A) p_A},
 * {@code price = sum (p_B - p_A) q_B}. Source: ACCA workbook PM, sales mix and quantity variances (worked example 09f); price
 * and volume variances as in the book publisher's case (09i). Quantities are those used (sold), not those bought.
 */
public final class Variances {
    private Variances() {}

    /** From the earlier month's net sales to the later month's. */
    public static List<Step> netSales(MonthSide a, MonthSide b) {
        Map<String, DrinkMonth> before = byName(a);
        Map<String, DrinkMonth> after = byName(b);
        Continuing continuing = Continuing.of(before, after);
        Parts prices = new Parts();
        Parts mix = new Parts();
        Parts volume = new Parts();
        Parts added = new Parts();
        Parts dropped = new Parts();
        for (String drink : union(before, after)) {
            DrinkMonth from = before.get(drink);
            DrinkMonth to = after.get(drink);
            if (from != null && to != null && isContinuing(from, to)) {
                Money unitBefore = from.netSales().dividedBy(from.sold());
                prices.drink(drink, to.netSales().minus(unitBefore.times(to.sold())));
                mix.drink(drink, unitBefore.times(continuing.mixUnits(from, to)));
                volume.drink(drink, unitBefore.times(continuing.volumeUnits(from)));
                continue;
            }
            if (to != null) {
                added.drink(drink, to.netSales());
            }
            if (from != null) {
                dropped.drink(drink, from.netSales().negated());
            }
        }
        return List.of(
                prices.step(Effect.PRICES),
                mix.step(Effect.MIX),
                volume.step(Effect.VOLUME),
                added.step(Effect.NEW_DRINKS),
                dropped.step(Effect.DROPPED_DRINKS));
    }

    /**
     * From the earlier month's cost of goods to the later month's. Everything up to drinks given away is theoretical use at
     * the drinks' own prices; what the counts say beyond it follows in {@link BeyondTheory}.
     */
    public static List<Step> costOfGoods(MonthSide a, MonthSide b) {
        Map<String, DrinkMonth> before = byName(a);
        Map<String, DrinkMonth> after = byName(b);
        Continuing continuing = Continuing.of(before, after);
        Parts invoicePrices = new Parts();
        Parts specs = new Parts();
        Parts mix = new Parts();
        Parts volume = new Parts();
        Parts added = new Parts();
        Parts dropped = new Parts();
        Parts given = new Parts();
        for (String drink : union(before, after)) {
            DrinkMonth from = before.get(drink);
            DrinkMonth to = after.get(drink);
            if (to != null) {
                given.serves(to, b, to.given());
            }
            if (from != null) {
                given.serves(from, a, from.given().negated());
            }
            if (from != null && to != null && isContinuing(from, to)) {
                specParts(from, to, a, b, specs);
                mix.serves(from, a, continuing.mixUnits(from, to));
                volume.serves(from, a, continuing.volumeUnits(from));
                invoicePriceParts(from, to, a, b, invoicePrices);
                continue;
            }
            if (to != null) {
                added.serves(to, b, to.sold());
            }
            if (from != null) {
                dropped.serves(from, a, from.sold().negated());
            }
        }
        List<Step> steps = new ArrayList<>(List.of(
                invoicePrices.step(Effect.INVOICE_PRICES),
                specs.step(Effect.SPECS),
                mix.step(Effect.MIX),
                volume.step(Effect.VOLUME),
                added.step(Effect.NEW_DRINKS),
                dropped.step(Effect.DROPPED_DRINKS),
                given.step(Effect.GIVEN_AWAY)));
        steps.addAll(BeyondTheory.steps(a, b));
        return steps;
    }

    /**
     * The later spec less the earlier one, both at the earlier prices. An ingredient that is new to the drink and had no
     * price before has the later one; one that the drink used before, at no known price, changed its price and not the spec.
     */
    private static void specParts(DrinkMonth from, DrinkMonth to, MonthSide a, MonthSide b, Parts specs) {
        Money fixed = oldPrice(to.drink(), a.fixedCosts(), b.fixedCosts())
                .minus(a.fixedCosts().getOrDefault(from.drink(), Money.ZERO));
        specs.drink(to.drink(), fixed.times(to.sold()));
        to.use()
                .forEach((name, use) ->
                        specs.both(to.drink(), name, oldPrice(name, from, a, b).times(use.times(to.sold()))));
        from.use()
                .forEach((name, use) -> specs.both(
                        to.drink(),
                        name,
                        a.unitCost(name).times(use.times(to.sold())).negated()));
    }

    private static void invoicePriceParts(DrinkMonth from, DrinkMonth to, MonthSide a, MonthSide b, Parts parts) {
        parts.drink(
                to.drink(),
                priceMove(to.drink(), a.fixedCosts(), b.fixedCosts()).times(to.sold()));
        to.use()
                .forEach((name, use) -> parts.both(
                        to.drink(),
                        name,
                        b.unitCost(name).minus(oldPrice(name, from, a, b)).times(use.times(to.sold()))));
    }

    private static Money priceMove(String name, Map<String, Money> a, Map<String, Money> b) {
        return b.getOrDefault(name, Money.ZERO).minus(oldPrice(name, a, b));
    }

    private static Money oldPrice(String name, Map<String, Money> a, Map<String, Money> b) {
        return a.getOrDefault(name, b.getOrDefault(name, Money.ZERO));
    }

    private static Money oldPrice(String ingredient, DrinkMonth from, MonthSide a, MonthSide b) {
        return from.use().containsKey(ingredient)
                ? a.unitCost(ingredient)
                : oldPrice(ingredient, a.unitCosts(), b.unitCosts());
    }

    private static boolean isContinuing(DrinkMonth from, DrinkMonth to) {
        return from.sold().isPositive() && to.sold().isPositive();
    }

    private static Map<String, DrinkMonth> byName(MonthSide month) {
        Map<String, DrinkMonth> map = new TreeMap<>();
        month.drinks().forEach(drink -> map.put(drink.drink(), drink));
        return map;
    }

    private static List<String> union(Map<String, DrinkMonth> a, Map<String, DrinkMonth> b) {
        List<String> names = new ArrayList<>(a.keySet());
        b.keySet().stream().filter(name -> !a.containsKey(name)).forEach(names::add);
        return names;
    }

    /**
     * Units of the drinks sold in both months.
     *
     * @param soldBefore Q_A
     * @param soldAfter Q_B
     */
    private record Continuing(Exact soldBefore, Exact soldAfter) {
        static Continuing of(Map<String, DrinkMonth> a, Map<String, DrinkMonth> b) {
            Exact before = Exact.ZERO;
            Exact after = Exact.ZERO;
            for (Map.Entry<String, DrinkMonth> entry : a.entrySet()) {
                DrinkMonth to = b.get(entry.getKey());
                if (to != null && isContinuing(entry.getValue(), to)) {
                    before = before.plus(entry.getValue().sold());
                    after = after.plus(to.sold());
                }
            }
            return new Continuing(before, after);
        }

        /** Q_B q_A / Q_A: the later month's volume at the earlier month's mix. */
        private Exact atOldMix(DrinkMonth from) {
            return soldAfter.times(from.sold()).dividedBy(soldBefore);
        }

        Exact mixUnits(DrinkMonth from, DrinkMonth to) {
            return to.sold().minus(atOldMix(from));
        }

        Exact volumeUnits(DrinkMonth from) {
            return atOldMix(from).minus(from.sold());
        }
    }

    /** The parts of one step, by drink and by ingredient; the drinks' add up to the step. */
    private static final class Parts {
        private final Map<String, Money> drinks = new TreeMap<>();
        private final Map<String, Money> ingredients = new TreeMap<>();

        void drink(String name, Money part) {
            drinks.merge(name, part, Money::plus);
        }

        void both(String drink, String ingredient, Money part) {
            drink(drink, part);
            ingredients.merge(ingredient, part, Money::plus);
        }

        /** So many serves at a month's cost. */
        void serves(DrinkMonth drink, MonthSide month, Exact units) {
            drink(
                    drink.drink(),
                    month.fixedCosts().getOrDefault(drink.drink(), Money.ZERO).times(units));
            drink.use()
                    .forEach((name, use) ->
                            both(drink.drink(), name, month.unitCost(name).times(use.times(units))));
        }

        Step step(Effect effect) {
            Money sum = drinks.values().stream().reduce(Money.ZERO, Money::plus);
            return new Step(effect, sum, drinks, ingredients);
        }
    }
}
