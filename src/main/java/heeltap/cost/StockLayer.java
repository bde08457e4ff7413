package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * Goods that came in together at one price.
 *
 * @param quantity in the ingredient's measure, positive
 * @param value what they cost, without tax
 * @param purchase the invoice line that brought them; null for an opening stock of unknown descent
 */
public record StockLayer(
        Exact quantity, Money value, @Nullable Purchase purchase) {
    Money unitCost() {
        return value.dividedBy(quantity);
    }
}
