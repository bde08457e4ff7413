package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * A printed line of goods. Money is as printed; whether it holds tax stands with the invoice.
 *
 * @param product as printed
 * @param pack null where the line has none that can be read
 * @param packText as printed; empty for none
 * @param quantity packs; negative for goods sent back
 * @param goods the line's money before any share of invoice discounts, after the line's own discount; negative for a
 *     credit; zero for free goods
 * @param discount the line's own discount, already taken off {@code goods}; positive
 * @param deposit returnable deposit that stands beside the line; zero for none
 * @param tax tax printed on the line; null for none printed
 * @param printedQuantity with the sign on the paper, for control totals; null where none is printed
 * @param printedMoney the goods with the sign on the paper
 */
public record InvoiceLine(
        String product,
        @Nullable Pack pack,
        String packText,
        Exact quantity,
        Money goods,
        Money discount,
        Money deposit,
        @Nullable Money tax,
        Place place,
        @Nullable Exact printedQuantity,
        Money printedMoney) {
    /** A line that is printed as it is meant. */
    public InvoiceLine(
            String product,
            @Nullable Pack pack,
            String packText,
            Exact quantity,
            Money goods,
            Money discount,
            Money deposit,
            @Nullable Money tax,
            Place place) {
        this(product, pack, packText, quantity, goods, discount, deposit, tax, place, quantity, goods);
    }
}
