package heeltap.cost;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.record.Ingredient;
import org.jspecify.annotations.Nullable;

/**
 * What converts an amount of something from one measure to another.
 *
 * @param measure the measure it is costed in
 * @param density g/ml; null unknown
 * @param eachGrams g of one piece; null unknown
 * @param juiceMl ml of juice of one piece; null unknown
 * @param bottleMl ml of one bottle, which is what a piece of a liquid is; null unknown
 */
record Traits(
        Measure measure,
        @Nullable Exact density,
        @Nullable Exact eachGrams,
        @Nullable Exact juiceMl,
        @Nullable Exact bottleMl) {
    static Traits of(Ingredient ingredient) {
        return new Traits(
                ingredient.measure(),
                Substances.of(ingredient).analysis().density(),
                ingredient.eachGrams(),
                ingredient.juiceMl(),
                ingredient.bottleMl());
    }

    static Traits of(Measure measure, @Nullable Exact density) {
        return new Traits(measure, density, null, null, null);
    }

    /**
     * An amount of a thing with these traits in its own measure.
     *
     * @param value null where something is unknown
     * @param missing what is unknown, for a sentence: "a density"
     */
    record Converted(@Nullable Exact value, String missing) {
        private static Converted of(Exact value) {
            return new Converted(value, "");
        }

        private static Converted missing(String what) {
            return new Converted(null, what);
        }
    }

    /** The amount in this thing's measure; mass and volume meet only through a density. */
    Converted toMeasure(Amount amount) {
        Exact value = amount.value();
        if (amount.measure() == measure) {
            return Converted.of(value);
        }
        return switch (amount.measure()) {
            case ML -> fromMl(value);
            case G -> fromGrams(value);
            case EACH -> fromPieces(value);
        };
    }

    private Converted fromMl(Exact ml) {
        if (measure == Measure.EACH) {
            if (juiceMl != null) {
                return Converted.of(ml.dividedBy(juiceMl));
            }
            if (bottleMl != null) {
                return Converted.of(ml.dividedBy(bottleMl));
            }
            return Converted.missing("what one piece yields (Juice ml)");
        }
        return density == null ? Converted.missing("a density") : Converted.of(ml.times(density));
    }

    private Converted fromGrams(Exact grams) {
        if (measure == Measure.EACH) {
            return eachGrams == null
                    ? Converted.missing("what one piece weighs (Each g)")
                    : Converted.of(grams.dividedBy(eachGrams));
        }
        return density == null ? Converted.missing("a density") : Converted.of(grams.dividedBy(density));
    }

    private Converted fromPieces(Exact pieces) {
        if (measure == Measure.G) {
            return eachGrams == null
                    ? Converted.missing("what one piece weighs (Each g)")
                    : Converted.of(pieces.times(eachGrams));
        }
        return bottleMl == null
                ? Converted.missing("what one piece holds (Bottle ml)")
                : Converted.of(pieces.times(bottleMl));
    }
}
