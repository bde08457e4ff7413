package heeltap.load;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Which headings usually stand over which field, in seven languages; the words are data. */
final class HeadingWords {
    private static final Pattern BRACKETS = Pattern.compile("\\s*[(\\[].*?[)\\]]\\s*");
    private static final Set<String> CURRENCIES =
            Set.of("eur", "usd", "gbp", "chf", "euro", "euros", "cad", "aud", "nzd", "brl", "sek", "nok", "dkk", "inr");
    private static final Map<FileKind, Map<String, Match>> WORDS = load();

    private HeadingWords() {}

    /**
     * A field with how usual the heading is.
     *
     * @param rank 0 for the most usual; of two columns for one field the lower rank is taken
     */
    record Match(Field field, int rank) {}

    static @Nullable Match find(FileKind kind, String heading) {
        Map<String, Match> words = WORDS.get(kind);
        if (words == null) {
            return null;
        }
        String folded = TextFold.fold(heading);
        Match match = words.get(folded);
        if (match == null) {
            match = words.get(TextFold.fold(BRACKETS.matcher(heading).replaceAll(" ")));
        }
        return match != null ? match : words.get(withoutCurrency(folded));
    }

    private static String withoutCurrency(String folded) {
        StringBuilder rest = new StringBuilder();
        for (String word : folded.split(" ", -1)) {
            if (!CURRENCIES.contains(word)) {
                rest.append(rest.isEmpty() ? "" : " ").append(word);
            }
        }
        return rest.toString();
    }

    private static Map<FileKind, Map<String, Match>> load() {
        Map<String, List<String>> lists = WordList.read("headings.txt");
        Map<FileKind, Map<String, Match>> all = new EnumMap<>(FileKind.class);
        for (FileKind kind : FileKind.values()) {
            Map<String, Match> words = new HashMap<>();
            for (Map.Entry<String, List<String>> list : lists.entrySet()) {
                String section = list.getKey().substring(0, list.getKey().indexOf(' '));
                if (section.equals(kind.words())) {
                    String field = list.getKey().substring(section.length() + 1);
                    put(words, Field.valueOf(field.replace(' ', '_').toUpperCase(Locale.ROOT)), list.getValue());
                }
            }
            all.put(kind, words);
        }
        return all;
    }

    /** A word of two fields belongs to the one that ranks it higher. */
    private static void put(Map<String, Match> words, Field field, List<String> list) {
        for (int rank = 0; rank < list.size(); rank++) {
            String folded = TextFold.fold(list.get(rank));
            Match before = words.get(folded);
            if (before == null || before.rank() > rank) {
                words.put(folded, new Match(field, rank));
            }
        }
    }
}
