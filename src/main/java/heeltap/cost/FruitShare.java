package heeltap.cost;

import heeltap.quantity.Exact;

/**
 * What lines of a fruit bear of its cost and its use, so that no fruit is counted twice and none is forgotten.
 *
 * @param peel of a piece of which a line takes the peel, from 0 to 1
 * @param juice of a piece of which a line takes the juice, from 0 to 1
 */
public record FruitShare(Exact peel, Exact juice) {
    public static final FruitShare WHOLE = new FruitShare(Exact.ONE, Exact.ONE);
    /** To tell how much of a month's use is peel: what is missing against {@link #WHOLE}. */
    public static final FruitShare WITHOUT_PEEL = new FruitShare(Exact.ZERO, Exact.ONE);

    /** The same for its juice. */
    public static final FruitShare WITHOUT_JUICE = new FruitShare(Exact.ONE, Exact.ZERO);

    /**
     * Of a month in which so much was peeled and so much juiced, in one measure. As many pieces as both need are cut once
     * for both: of these the peel bears its share and the juice the rest. What either needs beyond is cut for it alone,
     * and spread over its lines. All lines together bear the greater of the two.
     *
     * @param peelPart of a piece that is peeled and juiced, what its peel bears, from 0 to 1
     */
    public static FruitShare of(Exact peeled, Exact juiced, Exact peelPart) {
        if (!peeled.isPositive() || !juiced.isPositive()) {
            return WHOLE;
        }
        Exact both = peeled.isLessThan(juiced) ? peeled : juiced;
        Exact juicePart = Exact.ONE.minus(peelPart);
        return new FruitShare(
                Exact.ONE.minus(juicePart.times(both).dividedBy(peeled)),
                Exact.ONE.minus(peelPart.times(both).dividedBy(juiced)));
    }
}
