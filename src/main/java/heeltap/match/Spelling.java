package heeltap.match;

import heeltap.record.Folding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Tells a name that is only spelt otherwise from one that differs in a word, which may be another drink. */
public final class Spelling {
    private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();
    private static final int LEAST_FOR_ONE = 5;
    private static final int LEAST_FOR_TWO = 7;
    private static final int LEAST_PREFIX = 3;

    private Spelling() {}

    /**
     * Whether each word of one name has its counterpart in the other, in any order: the same word, the beginning of it (three
     * letters at least), or one that begins alike and differs in one letter of five or two of seven. To be offered to a
     * person and never to join by.
     */
    public static boolean isVariant(String written, String known) {
        List<String> left = new ArrayList<>(Arrays.asList(Folding.words(known).split(" ", -1)));
        for (String word : Folding.words(written).split(" ", -1)) {
            String match = left.contains(word)
                    ? word
                    : left.stream()
                            .filter(other -> isVariantOf(word, other))
                            .findFirst()
                            .orElse("");
            if (match.isEmpty() || !left.remove(match)) {
                return false;
            }
        }
        return left.isEmpty();
    }

    private static boolean isVariantOf(String word, String other) {
        int length = Math.min(word.length(), other.length());
        boolean alike = length > 0 && word.charAt(0) == other.charAt(0);
        boolean digits =
                word.chars().anyMatch(Character::isDigit) || other.chars().anyMatch(Character::isDigit);
        if (!alike || digits) {
            return false;
        }
        int most = length >= LEAST_FOR_TWO ? 2 : length >= LEAST_FOR_ONE ? 1 : 0;
        boolean begins = word.length() >= LEAST_PREFIX && other.startsWith(word);
        return begins || DISTANCE.apply(word, other) <= most;
    }
}
