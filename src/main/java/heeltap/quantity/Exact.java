package heeltap.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact rational number. Quotients stay exact, so that a share that lies on a threshold compares as equal to it;
 * only the methods that take a {@link RoundingMode} or a number of digits lose anything.
 */
public final class Exact implements Comparable<Exact> {
    public static final Exact ZERO = new Exact(BigFraction.ZERO);
    public static final Exact ONE = new Exact(BigFraction.ONE);
    public static final Exact HUNDRED = Exact.of(100);

    private final BigFraction value;

    private Exact(BigFraction value) {
        this.value = value;
    }

    public static Exact of(long number) {
        return new Exact(BigFraction.of(number));
    }

    /** The decimal, exactly. */
    public static Exact of(BigDecimal number) {
        BigInteger unscaled = number.unscaledValue();
        return new Exact(
                number.scale() > 0
                        ? BigFraction.of(unscaled, BigInteger.TEN.pow(number.scale()))
                        : BigFraction.of(unscaled.multiply(BigInteger.TEN.pow(-number.scale()))));
    }

    /**
     * A plain decimal such as {@code 12.50} or {@code -3}, exactly.
     *
     * @throws NumberFormatException if the text is no decimal
     */
    public static Exact of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    /**
     * A physical quantity computed in binary floating point, taken to 15 significant digits.
     *
     * @throws NumberFormatException if the number is infinite or not a number
     */
    public static Exact ofPhysical(double number) {
        return of(new BigDecimal(number, new MathContext(15, RoundingMode.HALF_EVEN)));
    }

    public Exact plus(Exact other) {
        return new Exact(value.add(other.value));
    }

    public Exact minus(Exact other) {
        return new Exact(value.subtract(other.value));
    }

    public Exact times(Exact other) {
        return new Exact(value.multiply(other.value));
    }

    /** @throws ArithmeticException if the divisor is zero */
    public Exact dividedBy(Exact divisor) {
        return new Exact(value.divide(divisor.value));
    }

    public Exact negated() {
        return new Exact(value.negate());
    }

    public Exact abs() {
        return new Exact(value.abs());
    }

    /** This number of hundredths: 22.5 gives 0.225. */
    public Exact percent() {
        return dividedBy(HUNDRED);
    }

    public int signum() {
        return value.signum();
    }

    public boolean isZero() {
        return signum() == 0;
    }

    public boolean isPositive() {
        return signum() > 0;
    }

    public boolean isNegative() {
        return signum() < 0;
    }

    public boolean isWhole() {
        return value.getDenominator().equals(BigInteger.ONE);
    }

    public boolean isLessThan(Exact other) {
        return compareTo(other) < 0;
    }

    public boolean isGreaterThan(Exact other) {
        return compareTo(other) > 0;
    }

    public Exact min(Exact other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public Exact max(Exact other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Rounded to so many decimals; the result has exactly that scale. */
    public BigDecimal round(int decimals, RoundingMode mode) {
        return value.bigDecimalValue(decimals, mode);
    }

    /** The nearest multiple of a step in the direction of the mode. */
    public Exact roundToMultiple(Exact step, RoundingMode mode) {
        return of(dividedBy(step).round(0, mode)).times(step);
    }

    /** The largest whole number not above this one. */
    public Exact floor() {
        return of(round(0, RoundingMode.FLOOR));
    }

    /**
     * With at least so many significant digits, HALF_UP, trailing zeros dropped and no exponent: for printing figures
     * that are no money totals.
     */
    public BigDecimal toSignificant(int digits) {
        if (isZero()) {
            return BigDecimal.ZERO;
        }
        MathContext context = new MathContext(digits, RoundingMode.HALF_UP);
        BigDecimal rounded = new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), context)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
    }

    /** The nearest binary number: for statistics, physics and drawing, never for money. */
    public double toDouble() {
        return toSignificant(17).doubleValue();
    }

    @Override
    public int compareTo(Exact other) {
        // not the library's own compareTo: in its version 1.2 that orders two negative fractions the wrong way round
        return value.subtract(other.value).signum();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Exact exact && value.equals(exact.value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    /** For messages and tests: a plain decimal where it ends, else 12 significant digits. */
    @Override
    public String toString() {
        return toSignificant(12).toPlainString();
    }
}
