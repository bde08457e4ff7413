package heeltap.load;

import heeltap.record.Folding;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.jspecify.annotations.Nullable;

/** Words of the book compared without regard to case, accents, punctuation and spacing. */
final class BookText {
    private static final Map<String, Boolean> YES_NO = Map.ofEntries(
            Map.entry("yes", true),
            Map.entry("y", true),
            Map.entry("true", true),
            Map.entry("1", true),
            Map.entry("x", true),
            Map.entry("ja", true),
            Map.entry("oui", true),
            Map.entry("si", true),
            Map.entry("no", false),
            Map.entry("n", false),
            Map.entry("false", false),
            Map.entry("0", false),
            Map.entry("nein", false),
            Map.entry("non", false));

    private BookText() {}

    /** White space of any kind at both ends removed, and made one plain space inside. */
    static String clean(String text) {
        return text.replaceAll("[\\s\\p{Z}\\uFEFF\\u200B]+", " ").strip();
    }

    /** yes or no in English, German, French, Spanish and Italian; null where it is neither. */
    static @Nullable Boolean yesNo(String text) {
        return YES_NO.get(Folding.fold(text));
    }

    /** The known word most like an unknown one; empty where none is much like it. */
    static Optional<String> nearest(String word, List<String> known) {
        JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();
        String folded = Folding.fold(word);
        return known.stream()
                .filter(candidate -> likeness.apply(folded, Folding.fold(candidate)) >= 0.8)
                .max(Comparator.comparing((String candidate) -> likeness.apply(folded, Folding.fold(candidate)))
                        .thenComparing(Comparator.reverseOrder()));
    }
}
