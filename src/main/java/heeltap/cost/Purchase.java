package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.source.Place;
import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * An invoice line joined to the ingredient it bought.
 *
 * @param place its row
 * @param date null where the file does not say
 * @param creditNote whether it stands on one
 * @param product as printed
 * @param ingredient as the book spells it; null where nothing in the book claims the line
 * @param ignored whether the book says to leave the product aside
 * @param quantity packs as printed; negative for goods sent back
 * @param pack what one of them holds: the line's own, else the ingredient's list pack; null unknown
 * @param packText as printed; empty for none
 * @param baseQuantity what was bought in the ingredient's measure, negative for goods sent back; null unknown
 * @param goods money without tax, after the line's share of invoice discounts, before delivery and deposits
 * @param delivery the line's share of delivery, without tax
 */
public record Purchase(
        Place place,
        String supplier,
        String invoice,
        @Nullable LocalDate date,
        boolean creditNote,
        String product,
        @Nullable String ingredient,
        boolean ignored,
        Exact quantity,
        @Nullable Pack pack,
        String packText,
        @Nullable Exact baseQuantity,
        Money goods,
        Money delivery) {
    /** By day, then by place: the last is the latest purchase. Undated lines come first. */
    public static final Comparator<Purchase> BY_TIME = Comparator.comparing(
                    Purchase::date, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(Purchase::place);

    /** What the goods cost with their share of delivery, without tax and deposit. */
    public Money cost() {
        return goods.plus(delivery);
    }

    /** Cost for one of the ingredient's measure (ml, g or piece) as bought, unrounded; null where the amount is unknown. */
    public @Nullable Money unitCost() {
        return baseQuantity == null || baseQuantity.isZero() ? null : cost().dividedBy(baseQuantity);
    }

    /** Whether it is of an ingredient and nothing says how much of it: the line is set aside. */
    public boolean isSetAside() {
        return ingredient != null && baseQuantity == null;
    }

    /** Whether it says what the ingredient costs: goods received for money, neither returned nor free. */
    public boolean isPriced() {
        return ingredient != null
                && !creditNote
                && baseQuantity != null
                && baseQuantity.isPositive()
                && goods.isPositive();
    }
}
