package heeltap.review;

import heeltap.document.CellValue;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;

/**
 * Two ways to the same sum.
 *
 * @param name what must agree
 * @param scope of which file, group or table
 * @param isMoney whether the numbers are money; else counts or amounts, in the same columns
 */
record Control(String name, CellValue.Term scope, Exact expected, Exact found, boolean isMoney) {
    static Control of(String name, CellValue.Term scope, Money expected, Money found) {
        return new Control(name, scope, expected.amount(), found.amount(), true);
    }

    /** Of a file, an invoice or a month, which has one name in every language. */
    static Control of(String name, String scope, Money expected, Money found) {
        return of(name, new CellValue.Term(scope, scope), expected, found);
    }

    static Control ofNumbers(String name, CellValue.Term scope, Exact expected, Exact found) {
        return new Control(name, scope, expected, found, false);
    }

    /** The same of numbers. */
    static Control ofNumbers(String name, String scope, Exact expected, Exact found) {
        return ofNumbers(name, new CellValue.Term(scope, scope), expected, found);
    }

    Exact difference() {
        return found.minus(expected);
    }

    boolean holds() {
        return difference().isZero();
    }

    /** One of the numbers as what it is. */
    CellValue cell(Exact number) {
        return isMoney ? CellValue.of(new Money(number)) : CellValue.of(number);
    }

    /** The same in print. */
    String print(Exact number, Words words) {
        return isMoney ? words.money(new Money(number)) : words.count(number);
    }
}
