package heeltap.load;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names of months and weekdays in the languages that exports come in; the words are data. */
final class MonthNames {
    private static final Map<String, Integer> MONTHS = new HashMap<>();
    private static final Set<String> WEEKDAYS = new HashSet<>();

    static {
        WordList.read("dates.txt").forEach((key, words) -> {
            if (key.equals("weekday")) {
                WEEKDAYS.addAll(folded(words));
            } else {
                folded(words).forEach(word -> MONTHS.put(word, Integer.valueOf(key)));
            }
        });
    }

    private MonthNames() {}

    /** 1 to 12, or 0 where the word is no month. */
    static int find(String word) {
        return MONTHS.getOrDefault(TextFold.fold(word), 0);
    }

    static boolean isWeekday(String word) {
        return WEEKDAYS.contains(TextFold.fold(word));
    }

    private static List<String> folded(List<String> words) {
        return words.stream().map(TextFold::fold).toList();
    }
}
