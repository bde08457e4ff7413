package heeltap.pricing;

/**
 * How guests of one group answer its prices; see {@link GroupDemand}.
 *
 * @param within {@code b}: fall of a drink's log share within the group for a unit of currency more, at the usual price
 * @param follow {@code λ}: how far the group's total follows, from 0 to 1
 * @param usualPrice {@code m}: average price paid, in currency units as the guest reads it
 * @param power {@code k}, above 0 to 1
 */
public record PriceResponse(double within, double follow, double usualPrice, double power) {
    /** {@code h(p) = m ((p/m)^k - 1) / k}. */
    double hurt(double price) {
        return usualPrice * (Math.pow(price / usualPrice, power) - 1) / power;
    }

    /** {@code p h'(p) = p (p/m)^(k-1)}. */
    double slope(double price) {
        return usualPrice * Math.pow(price / usualPrice, power);
    }

    PriceResponse withPower(double other) {
        return new PriceResponse(within, follow, usualPrice, other);
    }
}
