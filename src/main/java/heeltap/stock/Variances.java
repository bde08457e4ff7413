package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Explains the difference between two months by prices, mix, volume, new and dropped drinks; cost also by invoice prices,
 * specs and what theoretical use does not explain. Each chain adds up to the difference exactly.
 *
 * <p>Standard variance analysis. For drinks sold in both months, with q units and p money a unit in month A and B, Q the
 * sums over those drinks: {@code volume = (Q_B/Q_A - 1) x sum q_A p_A}, {@code mix = sum (q_B - Q_B q_A/Q_A) p_A},
 * {@code price = sum (p_B - p_A) q_B}. Source: ACCA workbook PM, sales mix and quantity variances (worked example 09f); price
 * and volume variances as in the book publisher's case (09i). Quantities are those used (sold), not those bought.
 */
public final class Variances {
    private Variances() {}

    /**
     * One drink in one month.
     *
     * @param drink its name
     * @param sold units paid for
     * @param netSales money without tax
     * @param given units given away
     * @param use as bought, per serve, by ingredient: the spec
     */
    public record DrinkMonth(String drink, Exact sold, Money netSales, Exact given, Map<String, Exact> use) {}

    /**
     * One month.
     *
     * @param drinks every drink sold or given
     * @param unitCosts money of one base unit by ingredient; an ingredient without a price is absent and costs nothing
     * @param fixedCosts money of one serve of bought-in drinks, by drink
     * @param costOfGoods what was used, by the counts where there are any, else in theory
     * @param unexplained the part of it that nothing explains
     * @param losses the part of it that was written down as lost
     */
    public record MonthSide(
            List<DrinkMonth> drinks,
            Map<String, Money> unitCosts,
            Map<String, Money> fixedCosts,
            Money costOfGoods,
            Money unexplained,
            Money losses) {
        /** A month in which all that cost of goods has beyond the drinks' own cost is unexplained. */
        public MonthSide(
                List<DrinkMonth> drinks,
                Map<String, Money> unitCosts,
                Map<String, Money> fixedCosts,
                Money costOfGoods) {
            this(
                    drinks,
                    unitCosts,
                    fixedCosts,
                    costOfGoods,
                    costOfGoods.minus(theoretical(drinks, unitCosts, fixedCosts)),
                    Money.ZERO);
        }
    }

    /** What a step is about. */
    public enum Effect {
        PRICES,
        MIX,
        VOLUME,
        NEW_DRINKS,
        DROPPED_DRINKS,
        INVOICE_PRICES,
        SPECS,
        GIVEN_AWAY,
        UNEXPLAINED_USE,
        RECORDED_LOSSES,
        /** Stock is valued by another price than the drinks are costed by, and other small differences. */
        VALUATION
    }

    /**
     * One step of a chain.
     *
     * @param amount what it adds to the later month
     * @param largest the drink or ingredient with the largest part in it, by absolute money; empty where it has none
     * @param largestAmount that part
     */
    public record Step(Effect effect, Money amount, Optional<String> largest, Money largestAmount) {}

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
                prices.add(drink, to.netSales().minus(unitBefore.times(to.sold())));
                mix.add(drink, unitBefore.times(continuing.mixUnits(from, to)));
                volume.add(drink, unitBefore.times(continuing.volumeUnits(from)));
                continue;
            }
            if (to != null) {
                added.add(drink, to.netSales());
            }
            if (from != null) {
                dropped.add(drink, from.netSales().negated());
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
     * From the earlier month's cost of goods to the later month's. What it has beyond the theoretical cost at the drinks'
     * own prices is unexplained use, recorded losses, and for the rest the difference of the prices that value stock.
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
            Money costBefore = from == null ? Money.ZERO : serveCost(from, a);
            Money costAfter = to == null ? Money.ZERO : serveCost(to, b);
            given.add(
                    drink,
                    costAfter
                            .times(to == null ? Exact.ZERO : to.given())
                            .minus(costBefore.times(from == null ? Exact.ZERO : from.given())));
            if (from != null && to != null && isContinuing(from, to)) {
                Money newSpecOldPrices = newSpecOldPrices(to, a, b);
                specs.add(drink, newSpecOldPrices.minus(costBefore).times(to.sold()));
                mix.add(drink, costBefore.times(continuing.mixUnits(from, to)));
                volume.add(drink, costBefore.times(continuing.volumeUnits(from)));
                invoicePriceParts(to, a, b, invoicePrices);
                continue;
            }
            if (to != null) {
                added.add(drink, costAfter.times(to.sold()));
            }
            if (from != null) {
                dropped.add(drink, costBefore.times(from.sold()).negated());
            }
        }
        Money beyond =
                b.costOfGoods().minus(theoretical(b)).minus(a.costOfGoods().minus(theoretical(a)));
        Money unexplained = b.unexplained().minus(a.unexplained());
        Money losses = b.losses().minus(a.losses());
        return List.of(
                invoicePrices.step(Effect.INVOICE_PRICES),
                specs.step(Effect.SPECS),
                mix.step(Effect.MIX),
                volume.step(Effect.VOLUME),
                added.step(Effect.NEW_DRINKS),
                dropped.step(Effect.DROPPED_DRINKS),
                given.step(Effect.GIVEN_AWAY),
                plain(Effect.UNEXPLAINED_USE, unexplained),
                plain(Effect.RECORDED_LOSSES, losses),
                plain(Effect.VALUATION, beyond.minus(unexplained).minus(losses)));
    }

    private static Step plain(Effect effect, Money amount) {
        return new Step(effect, amount, Optional.empty(), Money.ZERO);
    }

    /** Cost of everything sold and given at the drinks' own prices. */
    public static Money theoretical(MonthSide month) {
        return theoretical(month.drinks(), month.unitCosts(), month.fixedCosts());
    }

    private static Money theoretical(
            List<DrinkMonth> drinks, Map<String, Money> unitCosts, Map<String, Money> fixedCosts) {
        Money sum = Money.ZERO;
        for (DrinkMonth drink : drinks) {
            sum = sum.plus(
                    serveCost(drink, unitCosts, fixedCosts).times(drink.sold().plus(drink.given())));
        }
        return sum;
    }

    private static Money serveCost(DrinkMonth drink, MonthSide month) {
        return serveCost(drink, month.unitCosts(), month.fixedCosts());
    }

    private static Money serveCost(DrinkMonth drink, Map<String, Money> unitCosts, Map<String, Money> fixedCosts) {
        Money cost = fixedCosts.getOrDefault(drink.drink(), Money.ZERO);
        for (Map.Entry<String, Exact> use : drink.use().entrySet()) {
            cost = cost.plus(unitCosts.getOrDefault(use.getKey(), Money.ZERO).times(use.getValue()));
        }
        return cost;
    }

    /** The later spec at the earlier prices; an ingredient the earlier month had no price for keeps the later one. */
    private static Money newSpecOldPrices(DrinkMonth to, MonthSide a, MonthSide b) {
        Money cost = oldPrice(to.drink(), a.fixedCosts(), b.fixedCosts());
        for (Map.Entry<String, Exact> use : to.use().entrySet()) {
            cost = cost.plus(
                    oldPrice(use.getKey(), a.unitCosts(), b.unitCosts()).times(use.getValue()));
        }
        return cost;
    }

    private static void invoicePriceParts(DrinkMonth to, MonthSide a, MonthSide b, Parts parts) {
        parts.add(
                to.drink(),
                priceMove(to.drink(), a.fixedCosts(), b.fixedCosts()).times(to.sold()));
        for (Map.Entry<String, Exact> use : to.use().entrySet()) {
            parts.add(
                    use.getKey(),
                    priceMove(use.getKey(), a.unitCosts(), b.unitCosts())
                            .times(use.getValue().times(to.sold())));
        }
    }

    private static Money priceMove(String name, Map<String, Money> a, Map<String, Money> b) {
        return b.getOrDefault(name, Money.ZERO).minus(oldPrice(name, a, b));
    }

    private static Money oldPrice(String name, Map<String, Money> a, Map<String, Money> b) {
        return a.getOrDefault(name, b.getOrDefault(name, Money.ZERO));
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

    /** The parts of one step by name. */
    private static final class Parts {
        private final Map<String, Money> parts = new TreeMap<>();

        void add(String name, Money part) {
            parts.merge(name, part, Money::plus);
        }

        Step step(Effect effect) {
            Money sum = parts.values().stream().reduce(Money.ZERO, Money::plus);
            Optional<Map.Entry<String, Money>> largest = parts.entrySet().stream()
                    .filter(part -> !part.getKey().isEmpty() && !part.getValue().isZero())
                    .max(Comparator.comparing((Map.Entry<String, Money> part) ->
                                    part.getValue().abs())
                            .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())));
            return new Step(
                    effect,
                    sum,
                    largest.map(Map.Entry::getKey),
                    largest.map(Map.Entry::getValue).orElse(Money.ZERO));
        }
    }
}
