package heeltap.review;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;

/**
 * Two ways to the same sum.
 *
 * @param name what must agree
 * @param scope of which file, group or table
 */
record Control(String name, String scope, Money expected, Money found) {
    static Control of(String name, String scope, Money expected, Money found) {
        return new Control(name, scope, expected, found);
    }

    /** Counts stand in the same columns as money. */
    static Control ofNumbers(String name, String scope, Exact expected, Exact found) {
        return new Control(name, scope, new Money(expected), new Money(found));
    }

    Money difference() {
        return found.minus(expected);
    }

    boolean holds() {
        return difference().isZero();
    }
}
