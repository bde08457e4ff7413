package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;

/**
 * One drink on the menu, for the price range of its group.
 *
 * @param drink name
 * @param group name
 * @param menuPrice as the guest reads it
 * @param sold paid serves
 * @param paid what guests paid for them, on the footing of the menu price: with tax where menu prices include it
 */
public record RangeItem(String drink, String group, Money menuPrice, Exact sold, Money paid) {}
