package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;

/**
 * A quantity that came in together, and what it cost.
 *
 * @param quantity in the ingredient's base measure; negative for goods sent back
 * @param value without tax and deposit, with its share of delivery; negative for a credit
 */
public record Layer(Exact quantity, Money value) {}
