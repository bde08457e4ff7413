package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.PriceRule;
import java.util.List;
import java.util.Optional;

/**
 * One ingredient's month, reconciled. What depends on a count is empty where there is none.
 *
 * <p>{@code actual use = opening + purchases + transfers - closing}; {@code unexplained = actual use - theoretical use -
 * recorded losses}. In money, at the value of one unit used: {@code actual cost = theoretical cost + cost of recorded
 * losses + unexplained cost} exactly. Source: common practice, no source; the cost identity as in the worked example of
 * standard against actual cost (hospitality course quiz HB 267).
 *
 * @param purchases quantity bought, returns taken off
 * @param unexplainedPercent of theoretical use; empty where that is zero
 * @param unitValue cost of goods over actual use; where nothing was used, the value of one unit in stock; empty where it
 *     was not counted
 * @param withinTolerance |unexplained percent| at most the tolerance; where theoretical use is zero, whether nothing is
 *     unexplained
 * @param daysOnHand closing over actual use a day; empty where nothing was used
 * @param valuation the money; empty where it was not counted, or nothing
 *     prices it
 */
public record Reconciliation(
        Movement movement,
        Exact purchases,
        Money purchasesValue,
        Optional<Exact> actualUse,
        Optional<Exact> unexplained,
        Optional<Exact> unexplainedPercent,
        Optional<Money> unitValue,
        Optional<Money> actualCost,
        Optional<Money> theoreticalCost,
        Optional<Money> lossesCost,
        Optional<Money> unexplainedCost,
        Optional<Boolean> withinTolerance,
        Optional<Exact> daysOnHand,
        Optional<Valuation> valuation) {

    /**
     * Reconciles one ingredient.
     *
     * @param rule which price values stock and cost of goods
     * @param tolerancePercent of theoretical use, such as 2
     * @param days calendar days of the month
     */
    public static Reconciliation of(Movement movement, PriceRule rule, Exact tolerancePercent, int days) {
        Exact purchases = Valuation.quantity(movement.purchases());
        Money purchasesValue = Valuation.value(movement.purchases());
        if (!movement.isCounted()) {
            Optional<Money> unit = unitInStock(movement);
            return new Reconciliation(
                    movement,
                    purchases,
                    purchasesValue,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    unit.map(value -> value.times(movement.theoreticalUse())),
                    unit.map(value -> value.times(movement.recordedLosses())),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        Exact opening = movement.opening().orElseThrow();
        Exact closing = movement.closing().orElseThrow();
        // What nothing prices has quantities and no money.
        Optional<Valuation> valuation = movement.isPriced()
                ? Optional.of(Valuation.of(
                        rule,
                        openingLayers(movement),
                        movement.purchases(),
                        movement.transfers(),
                        closing,
                        movement.fallbackUnit()))
                : Optional.empty();
        Exact actualUse = opening.plus(purchases).plus(movement.transfers()).minus(closing);
        Exact theoretical = movement.theoreticalUse();
        Exact unexplained = actualUse.minus(theoretical).minus(movement.recordedLosses());
        Optional<Exact> percent = theoretical.isZero()
                ? Optional.empty()
                : Optional.of(unexplained.times(Exact.HUNDRED).dividedBy(theoretical));
        Optional<Money> unit = actualUse.isZero()
                ? unitInStock(movement)
                : valuation.map(value -> value.costOfGoods().dividedBy(actualUse));
        return new Reconciliation(
                movement,
                purchases,
                purchasesValue,
                Optional.of(actualUse),
                Optional.of(unexplained),
                percent,
                unit,
                valuation.map(Valuation::costOfGoods),
                unit.map(value -> value.times(theoretical)),
                unit.map(value -> value.times(movement.recordedLosses())),
                unit.map(value -> value.times(unexplained)),
                Optional.of(percent.map(value -> value.abs().compareTo(tolerancePercent) <= 0)
                        .orElse(unexplained.isZero())),
                actualUse.isPositive()
                        ? Optional.of(closing.times(Exact.of(days)).dividedBy(actualUse))
                        : Optional.empty(),
                valuation);
    }

    /** The counted opening at its layers' value, else at the fallback price. */
    private static List<Layer> openingLayers(Movement movement) {
        Exact opening = movement.opening().orElse(Exact.ZERO);
        if (opening.isZero() || !movement.openingLayers().isEmpty()) {
            return movement.openingLayers();
        }
        Money unit = movement.fallbackUnit().orElse(Money.ZERO);
        return List.of(new Layer(opening, unit.times(opening)));
    }

    private static Optional<Money> unitInStock(Movement movement) {
        List<Layer> layers = new java.util.ArrayList<>(openingLayers(movement));
        layers.addAll(movement.purchases());
        Exact quantity = Valuation.quantity(layers);
        return quantity.isPositive()
                ? Optional.of(Valuation.value(layers).dividedBy(quantity))
                : movement.fallbackUnit();
    }
}
