package heeltap.cost;

import heeltap.record.Ingredient;
import heeltap.record.WordLists;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The words of the book against the list of Regulation (EU) 1169/2011, Annex II. */
public final class Allergens {
    private static final WordLists LIST = WordLists.read(Allergens.class, "allergens.txt");

    private Allergens() {}

    /** The entries of the list that a word of the book names, such as {@code sulphites}; none for a word not on it. */
    public static Set<String> listed(String word) {
        Set<String> found = new LinkedHashSet<>(LIST.named(word));
        // "Nuts (almond)" names the group and the kind
        int bracket = word.indexOf('(');
        if (bracket > 0) {
            found.addAll(LIST.named(word.substring(0, bracket)));
        }
        return found;
    }

    /** A notice for each word of an ingredient that the list does not have. */
    static List<Problem> notListed(Ingredient ingredient) {
        List<Problem> notices = new ArrayList<>();
        for (String word : ingredient.allergens()) {
            if (listed(word).isEmpty()) {
                notices.add(Problem.notice(
                        ProblemKind.VALUE_DOUBTFUL,
                        ingredient.place(),
                        word,
                        "\"" + word + "\" is none of the fourteen allergens of Regulation (EU) 1169/2011, Annex II.",
                        "Correct the word, or keep it where your local list has it; it is printed as written."));
            }
        }
        return notices;
    }
}
