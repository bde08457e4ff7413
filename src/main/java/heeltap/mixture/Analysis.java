package heeltap.mixture;

import heeltap.quantity.Exact;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is said of an ingredient; null is not said. The contents of an amount follow from it, what is not said counting as
 * none and a density that is not said as the one of the volume model of {@link Mixtures}.
 *
 * <p>Something that is sugar, acid and salt to nine tenths of its mass is a dry solid: its density is that of its bulk,
 * which turns cups and spoons into grams and is never the volume of a solution.
 *
 * @param density g/ml at 20 °C
 * @param abvPercent % vol at 20 °C
 * @param sugar g per 100 ml, or per 100 g where the ingredient is measured in g; so too the acids (other counted as
 *     citric) and salt
 */
public record Analysis(
        @Nullable Exact density,
        @Nullable Exact abvPercent,
        @Nullable Exact sugar,
        @Nullable Exact citric,
        @Nullable Exact malic,
        @Nullable Exact tartaric,
        @Nullable Exact otherAcid,
        @Nullable Exact salt) {
    public static final Analysis UNKNOWN = new Analysis(null, null, null, null, null, null, null, null);

    /** This, with what it does not say taken from another analysis of the same measure. */
    public Analysis orElse(Analysis other) {
        return new Analysis(
                density == null ? other.density : density,
                abvPercent == null ? other.abvPercent : abvPercent,
                sugar == null ? other.sugar : sugar,
                citric == null ? other.citric : citric,
                malic == null ? other.malic : malic,
                tartaric == null ? other.tartaric : tartaric,
                otherAcid == null ? other.otherAcid : otherAcid,
                salt == null ? other.salt : salt);
    }

    /** Whether nothing at all is said. */
    public boolean isUnknown() {
        return equals(UNKNOWN);
    }

    /** Why no liquid measured in ml can be so; empty if one can. A clause without a stop. */
    public Optional<String> faultPerMl() {
        return new AnalysedContents(this).faultPerMl();
    }

    /** Why nothing measured in g can be so; empty if something can. A clause without a stop. */
    public Optional<String> faultPerGram() {
        return new AnalysedContents(this).faultPerGram();
    }

    /**
     * One ml of it as measured out; of a dry solid, what one ml of its bulk weighs.
     *
     * @throws IllegalArgumentException if {@link #faultPerMl} says why
     */
    public Contents ofMl() {
        faultPerMl().ifPresent(Analysis::refuse);
        return new AnalysedContents(this).ofMl();
    }

    /**
     * One g of it.
     *
     * @throws IllegalArgumentException if {@link #faultPerGram} says why
     */
    public Contents ofGram() {
        faultPerGram().ifPresent(Analysis::refuse);
        return new AnalysedContents(this).ofGram();
    }

    private static void refuse(String fault) {
        throw new IllegalArgumentException(fault);
    }
}
