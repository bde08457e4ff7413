package heeltap.quantity;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The units in which people write amounts, under all their spellings. Immutable.
 *
 * <p>Factors are exact: metric by definition; US customary and avoirdupois from the inch of 2.54 cm, the gallon of 231
 * cubic inches and the pound of 0.45359237 kg, imperial from the gallon of 4.54609 l (NIST Handbook 44, Appendix C).
 * Measures without a standard (dash, drop, bar spoon, splash, shot, jigger, pinch) are common practice, no source, and
 * settable.
 */
public final class Units {
    private static final Units STANDARD = new Units(UnitWords.standard());
    private static final String FLUID_OUNCE = "floz";

    /** Folded spelling to unit. */
    private final Map<String, Unit> words;

    private Units(Map<String, Unit> words) {
        this.words = Map.copyOf(words);
    }

    public static Units standard() {
        return STANDARD;
    }

    /**
     * These units with the bar's own size of one of them, or with a new one.
     *
     * @param name any spelling of a settable unit, or a new word
     * @param factor ml; for a unit that measures mass, such as pinch, g
     * @throws IllegalArgumentException if the size of that unit is fixed, or the factor is not positive
     */
    public Units with(String name, Exact factor) {
        if (!isSettable(name) || !factor.isPositive()) {
            throw new IllegalArgumentException("cannot set " + name + " to " + factor);
        }
        String key = UnitWords.isOunce(fold(name)) ? FLUID_OUNCE : fold(name);
        Unit known = words.get(key);
        Map<String, Unit> copy = new HashMap<>(words);
        if (known == null || known.kind() == Unit.Kind.COUNT) {
            copy.put(key, new Unit(name.strip().toLowerCase(Locale.ROOT), Unit.Kind.VOLUME, factor));
        } else {
            Unit resized = new Unit(known.name(), known.kind(), factor);
            copy.replaceAll((word, unit) -> unit.equals(known) ? resized : unit);
        }
        return new Units(copy);
    }

    /** Whether {@link #with} takes the name: measures that are not fixed by a standard, and words that are no unit yet. */
    public boolean isSettable(String name) {
        String key = fold(name);
        Unit known = UnitWords.isOunce(key) ? words.get(FLUID_OUNCE) : words.get(key);
        return !key.isEmpty() && (known == null || !UnitWords.isFixed(key, known));
    }

    /**
     * The unit of that spelling, in any case, singular or plural, with or without dots and inner spaces.
     *
     * @param text such as {@code cL}, {@code fl. oz}, {@code Tablespoons}
     * @param ingredientMeasure decides {@code oz}: an avoirdupois ounce for {@link Measure#G}, else a US fluid ounce
     */
    public Optional<Unit> find(String text, Measure ingredientMeasure) {
        String key = fold(text);
        if (UnitWords.isOunce(key)) {
            return Optional.ofNullable(ingredientMeasure == Measure.G ? UnitWords.MASS_OUNCE : words.get(FLUID_OUNCE));
        }
        Unit unit = words.get(key);
        if (unit == null && key.endsWith("s")) {
            unit = words.get(key.substring(0, key.length() - 1));
        }
        return Optional.ofNullable(unit);
    }

    /** Whether the unit means whole pieces, as {@code each} does and {@code slice} does not. */
    public static boolean isWholePiece(String text) {
        return UnitWords.isPlainPiece(fold(text));
    }

    /** Whether the unit means the peel of a fruit: peel, zest or twist. */
    public static boolean isPeel(String text) {
        String key = fold(text);
        return UnitWords.isPeel(key) || (key.endsWith("s") && UnitWords.isPeel(key.substring(0, key.length() - 1)));
    }

    /** Lower case letters and digits only, without accents. */
    static String fold(String text) {
        String plain = Normalizer.normalize(text.replace("ß", "ss"), Normalizer.Form.NFKD);
        return plain.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]", "");
    }
}
