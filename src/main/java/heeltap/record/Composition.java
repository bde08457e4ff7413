package heeltap.record;

import heeltap.quantity.Exact;
import org.jspecify.annotations.Nullable;

/**
 * What an ingredient contains, as far as the book says; null is unknown, never none.
 *
 * @param density g/ml
 * @param abvPercent % vol at 20 °C
 * @param sugar g per 100 ml, or per 100 g where the ingredient is measured in g; so too the acids and salt
 */
public record Composition(
        @Nullable Exact density,
        @Nullable Exact abvPercent,
        @Nullable Exact sugar,
        @Nullable Exact citric,
        @Nullable Exact malic,
        @Nullable Exact tartaric,
        @Nullable Exact otherAcid,
        @Nullable Exact salt) {
    public static final Composition UNKNOWN = new Composition(null, null, null, null, null, null, null, null);
}
