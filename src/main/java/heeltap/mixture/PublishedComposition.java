package heeltap.mixture;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What published tables say of an ingredient. They are means: a bar's own figures are better.
 *
 * @param name as the built-in table has it; of a spirit with its strength
 * @param measure whether {@code values} are for ml or for g
 * @param values what is said
 * @param sources for each value said, by its heading in the book ({@code Density}, {@code Citric acid}), where it is from
 */
public record PublishedComposition(String name, Measure measure, Analysis values, Map<String, String> sources) {
    public PublishedComposition {
        sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
    }

    /**
     * The entry of the built-in table with this name. The whole name must be one of the entry's names after folding case,
     * accents, punctuation and spacing: nothing is found by likeness or by a part of a name. A spirit is found only if
     * its name states its strength, as in {@code Gin 43 % vol}.
     */
    public static Optional<PublishedComposition> find(String name) {
        return PublishedTable.BUILT_IN.find(name);
    }

    /**
     * The values for an ingredient that is measured so, turned by the density where need be.
     *
     * @throws IllegalArgumentException for pieces, which nothing is known of
     */
    public Analysis in(Measure wanted) {
        if (wanted == Measure.EACH) {
            throw new IllegalArgumentException("published values are for ml or g");
        }
        if (wanted == measure) {
            return values;
        }
        Exact density = density();
        Exact factor = wanted == Measure.ML ? density : Exact.ONE.dividedBy(density);
        return new Analysis(
                values.density(),
                values.abvPercent(),
                scaled(values.sugar(), factor),
                scaled(values.citric(), factor),
                scaled(values.malic(), factor),
                scaled(values.tartaric(), factor),
                scaled(values.otherAcid(), factor),
                scaled(values.salt(), factor));
    }

    /** All sources, each once, joined by semicolons. */
    public String source() {
        return String.join("; ", new LinkedHashSet<>(sources.values()));
    }

    private Exact density() {
        Exact said = values.density();
        if (said != null) {
            return said;
        }
        Contents one = measure == Measure.ML ? values.ofMl() : values.ofGram();
        return Exact.ofPhysical(one.density());
    }

    private static @Nullable Exact scaled(@Nullable Exact value, Exact factor) {
        return value == null ? null : value.times(factor);
    }
}
