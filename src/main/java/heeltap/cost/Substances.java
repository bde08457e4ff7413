package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.record.Ingredient;
import org.jspecify.annotations.Nullable;

/** What ingredients are made of, by the book. */
final class Substances {
    private Substances() {}

    /** g/ml; null unknown. */
    static @Nullable Exact density(Ingredient ingredient) {
        return ingredient.composition().density();
    }
}
