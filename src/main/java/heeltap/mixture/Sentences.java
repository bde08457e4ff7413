package heeltap.mixture;

import heeltap.quantity.Exact;

/** Figures in reasons and notices. */
final class Sentences {
    private Sentences() {}

    /** Three significant digits, point as decimal sign. */
    static String figure(double number) {
        return Exact.ofPhysical(number).toSignificant(3).toPlainString();
    }
}
