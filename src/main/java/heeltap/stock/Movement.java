package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is known of one ingredient's month, all quantities in its base measure as bought.
 *
 * @param ingredient its name
 * @param opening counted at the start; empty: unknown
 * @param openingLayers what the opening count is worth, oldest first; empty with a known count: the fallback price values
 *     it
 * @param purchases in order of date, those of one day as one layer
 * @param transfers net quantity in (positive) or out (negative)
 * @param closing counted at the end; empty: not counted
 * @param theoreticalUse what everything sold and given away should have used
 * @param recordedLosses spills, breakage, staff and complimentary pours that were written down
 * @param fallbackUnit cost of one unit where no layer has a price; empty: none known
 * @param purchasesKnown false where an invoice line of it was set aside
 */
public record Movement(
        String ingredient,
        Optional<Exact> opening,
        List<Layer> openingLayers,
        List<Layer> purchases,
        Exact transfers,
        Optional<Exact> closing,
        Exact theoreticalUse,
        Exact recordedLosses,
        Optional<Money> fallbackUnit,
        boolean purchasesKnown) {
    /** Whether it was counted at both ends and all purchases are understood, so that actual use is known. */
    public boolean isCounted() {
        return opening.isPresent() && closing.isPresent() && purchasesKnown;
    }

    /** Whether anything says what it is worth. */
    boolean isPriced() {
        return fallbackUnit.isPresent()
                || Stream.concat(openingLayers.stream(), purchases.stream())
                        .anyMatch(layer -> !layer.value().isZero());
    }
}
