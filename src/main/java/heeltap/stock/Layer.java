package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A quantity that came in together, and what it cost.
 *
 * @param quantity in the ingredient's base measure; negative for goods sent back
 * @param value without tax and deposit, with its share of delivery; negative for a credit
 * @param day of the purchase that brought it; null where it is of several or unknown
 */
public record Layer(Exact quantity, Money value, @Nullable LocalDate day) {
    /** Goods of which nobody knows when they came. */
    public Layer(Exact quantity, Money value) {
        this(quantity, value, null);
    }
}
