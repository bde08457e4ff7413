package heeltap.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An exact sum of money in the bar's one currency, to any number of decimals. {@link #rounded} is the one place where
 * money is rounded for showing.
 *
 * @param amount in currency units (euros, not cents), unrounded
 */
public record Money(Exact amount) implements Comparable<Money> {
    public static final Money ZERO = new Money(Exact.ZERO);

    public static Money of(BigDecimal amount) {
        return new Money(Exact.of(amount));
    }

    /** @throws NumberFormatException if the text is no plain decimal */
    public static Money of(String amount) {
        return new Money(Exact.of(amount));
    }

    public Money plus(Money other) {
        return new Money(amount.plus(other.amount));
    }

    public Money minus(Money other) {
        return new Money(amount.minus(other.amount));
    }

    public Money times(Exact factor) {
        return new Money(amount.times(factor));
    }

    /** @throws ArithmeticException if the divisor is zero */
    public Money dividedBy(Exact divisor) {
        return new Money(amount.dividedBy(divisor));
    }

    /**
     * How many times the other sum goes into this one.
     *
     * @throws ArithmeticException if the other sum is zero
     */
    public Exact dividedBy(Money other) {
        return amount.dividedBy(other.amount);
    }

    public Money negated() {
        return new Money(amount.negated());
    }

    public Money abs() {
        return new Money(amount.abs());
    }

    /** What a sum with tax is without it: {@code gross / (1 + rate/100)}. */
    public Money withoutTax(Exact taxPercent) {
        return dividedBy(Exact.ONE.plus(taxPercent.percent()));
    }

    /** What a sum without tax is with it: {@code net × (1 + rate/100)}. */
    public Money withTax(Exact taxPercent) {
        return times(Exact.ONE.plus(taxPercent.percent()));
    }

    public int signum() {
        return amount.signum();
    }

    public boolean isZero() {
        return amount.isZero();
    }

    public boolean isPositive() {
        return amount.isPositive();
    }

    public boolean isNegative() {
        return amount.isNegative();
    }

    public Money min(Money other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public Money max(Money other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** In the currency's minor unit, HALF_UP: 0.175 EUR prints as 0.18. */
    public BigDecimal rounded(Currency currency) {
        return amount.round(Math.max(0, currency.getDefaultFractionDigits()), RoundingMode.HALF_UP);
    }

    @Override
    public int compareTo(Money other) {
        return amount.compareTo(other.amount);
    }

    @Override
    public String toString() {
        return amount.toString();
    }
}
