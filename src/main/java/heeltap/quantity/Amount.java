package heeltap.quantity;

/**
 * A physical amount in a base measure.
 *
 * @param value in ml, g or pieces; may be negative for a return
 * @param measure the unit of {@code value}
 */
public record Amount(Exact value, Measure measure) {
    public static Amount of(String value, Measure measure) {
        return new Amount(Exact.of(value), measure);
    }

    /** @throws IllegalArgumentException if the measures differ: converting needs a density */
    public Amount plus(Amount other) {
        if (measure != other.measure) {
            throw new IllegalArgumentException("cannot add " + other + " to " + this);
        }
        return new Amount(value.plus(other.value), measure);
    }

    public Amount times(Exact factor) {
        return new Amount(value.times(factor), measure);
    }

    @Override
    public String toString() {
        return value + " " + measure.symbol();
    }
}
