package heeltap.match;

import heeltap.record.Folding;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Orders known names by likeness to an unknown one, to be offered to a person and never to join by. */
final class Likeness {
    private static final JaroWinklerSimilarity SIMILARITY = new JaroWinklerSimilarity();
    private static final int WHOLE = 1_000_000;

    private Likeness() {}

    /** The nearest names, nearest first; of names equally near the alphabetically first. */
    static List<String> nearest(String name, Collection<String> known, int most) {
        String words = Folding.words(name);
        record Scored(String name, int score) {}
        return known.stream()
                .map(candidate -> new Scored(candidate, score(words, Folding.words(candidate))))
                .sorted(Comparator.comparingInt(Scored::score).reversed().thenComparing(Scored::name))
                .limit(most)
                .map(Scored::name)
                .toList();
    }

    /**
     * In millionths: the larger of the likeness of the whole texts (Jaro and Winkler) and that of their words in any
     * order, each word with the likest of the other name, weighted by its length, both ways (Monge and Elkan).
     */
    static int score(String one, String other) {
        int whole = similarity(one, other);
        int inWords = (byWords(one, other) + byWords(other, one)) / 2;
        return Math.max(whole, inWords);
    }

    private static int byWords(String from, String to) {
        long sum = 0;
        long letters = 0;
        String[] targets = to.split(" ", -1);
        for (String word : from.split(" ", -1)) {
            int best = 0;
            for (String target : targets) {
                best = Math.max(best, similarity(word, target));
            }
            sum += (long) best * word.length();
            letters += word.length();
        }
        return letters == 0 ? 0 : (int) (sum / letters);
    }

    private static int similarity(String one, String other) {
        return (int) Math.round(SIMILARITY.apply(one, other) * WHOLE);
    }
}
