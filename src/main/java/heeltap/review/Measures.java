package heeltap.review;

import heeltap.document.Card.Measured;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts as a bar's scales and measures show them. */
final class Measures {
    /** Below this many g a scale of hundredths is wanted. */
    private static final Exact FINE = Exact.of(10);

    private Measures() {}

    /** Rounded the same, for programs: a decimal point and nothing between thousands. */
    static String plain(Amount amount) {
        Measured measured = of(amount);
        BigDecimal rounded = measured.amount().round(measured.decimals(), RoundingMode.HALF_UP);
        BigDecimal shown = measured.least() > 0
                ? rounded.setScale(measured.least(), RoundingMode.HALF_UP)
                : Exact.of(rounded).toSignificant(15).stripTrailingZeros();
        return shown.toPlainString();
    }

    /** g to the hundredth below 10 g, else to the tenth; ml to the hundredth, the tenth from 10, the whole from 100; pieces to
     * the hundredth, from ten on whole. */
    static Measured of(Amount amount) {
        Exact value = amount.value();
        Exact size = value.abs();
        if (amount.measure() == Measure.G) {
            int decimals = size.isLessThan(FINE) ? 2 : 1;
            return new Measured(value, decimals, decimals, Measure.G.symbol());
        }
        if (amount.measure() == Measure.EACH) {
            return new Measured(value, size.isLessThan(FINE) ? 2 : 0, 0, "");
        }
        int decimals = size.isLessThan(FINE) ? 2 : size.isLessThan(Exact.HUNDRED) ? 1 : 0;
        return new Measured(value, decimals, 0, Measure.ML.symbol());
    }
}
