package heeltap.load;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Words in the rows of exports: totals, kinds of sale, reasons, charges; the words are data. */
final class RowWords {
    private static final Map<String, Set<String>> LISTS = load();

    private RowWords() {}

    /** Whether the text is one of a list's words and nothing else. */
    static boolean is(String list, String text) {
        return isFolded(list, TextFold.fold(text));
    }

    static boolean isFolded(String list, String folded) {
        Set<String> words = LISTS.get(list);
        if (words == null) {
            throw new IllegalArgumentException("no list of words: " + list);
        }
        return words.contains(folded);
    }

    private static Map<String, Set<String>> load() {
        Map<String, Set<String>> lists = new HashMap<>();
        WordList.read("words.txt").forEach((key, words) -> {
            Set<String> folded = new HashSet<>();
            words.forEach(word -> folded.add(word.equals("-") || word.equals("✓") ? word : TextFold.fold(word)));
            lists.put(key, Set.copyOf(folded));
        });
        return Map.copyOf(lists);
    }
}
