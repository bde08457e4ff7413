package heeltap.stock;

import heeltap.quantity.Exact;
import java.util.Optional;

/**
 * What to order so that the coming month ends with the stock to keep. Common practice, no source: par stock ordering,
 * {@code wanted = par + expected use - on hand}, never less than nothing, brought up to whole packs.
 *
 * @param wanted in the ingredient's measure
 * @param packs whole packs; empty where nobody knows what a pack holds
 * @param quantity what those packs hold, else {@code wanted}
 */
public record Reorder(Exact wanted, Optional<Exact> packs, Exact quantity) {
    /**
     * The order for one ingredient; all in its measure.
     *
     * @param par stock to keep
     * @param onHand counted at the month's end
     * @param expectedUse of the coming month, as bought
     * @param pack what one pack holds; empty unknown
     */
    public static Reorder of(Exact par, Exact onHand, Exact expectedUse, Optional<Exact> pack) {
        Exact wanted = par.plus(expectedUse).minus(onHand).max(Exact.ZERO);
        Optional<Exact> packs = pack.filter(Exact::isPositive)
                .map(size -> wanted.dividedBy(size).negated().floor().negated());
        Exact quantity = packs.flatMap(count -> pack.map(count::times)).orElse(wanted);
        return new Reorder(wanted, packs, quantity);
    }
}
