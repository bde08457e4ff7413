package heeltap.match;

import heeltap.record.Folding;
import heeltap.record.NameRule;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The rules of the sheet Names that hold for one kind of file. */
final class RuleList {
    private final Map<String, NameRule> rules = new HashMap<>();
    private final Set<String> ambiguous = new HashSet<>();

    /** The problem, where another rule gives the same spelling another meaning: then neither holds. */
    Optional<Problem> add(NameRule rule) {
        String key = Folding.fold(rule.asWritten());
        NameRule earlier = rules.putIfAbsent(key, rule);
        if (earlier == null || sameMeaning(earlier, rule)) {
            return Optional.empty();
        }
        ambiguous.add(key);
        return Optional.of(Problem.fault(
                ProblemKind.NAME_TWICE,
                rule.place(),
                rule.asWritten(),
                "It means \"" + rule.means() + "\" here and \"" + earlier.means() + "\" at " + earlier.place()
                        + ", or another number of it.",
                "Keep one of the two rows; until then neither is used."));
    }

    private static boolean sameMeaning(NameRule one, NameRule other) {
        return one.times().equals(other.times()) && Folding.fold(one.means()).equals(Folding.fold(other.means()));
    }

    Optional<NameRule> find(String name) {
        return name.isBlank() || isAmbiguous(name)
                ? Optional.empty()
                : Optional.ofNullable(rules.get(Folding.fold(name)));
    }

    boolean isAmbiguous(String name) {
        return ambiguous.contains(Folding.fold(name));
    }

    static Problem unknown(NameRule rule, List<String> nearest) {
        return Problem.fault(
                ProblemKind.NAME_UNKNOWN,
                rule.place(),
                rule.means(),
                "The book has nothing of that name that " + place(rule.where())
                        + " could mean, so the row has no effect.",
                nearest.isEmpty()
                        ? "Write a name of the book under Means."
                        : "Write a name of the book under Means; the nearest are: " + String.join("; ", nearest) + ".");
    }

    static Problem needless(NameRule rule) {
        return Problem.notice(
                ProblemKind.NAME_TWICE,
                rule.place(),
                rule.asWritten(),
                "The book itself has this name, which comes before the sheet Names, so the row has no effect.",
                "Take the row out, or rename one of the two.");
    }

    private static String place(NameRule.Where where) {
        return switch (where) {
            case SALES -> "a sale";
            case INVOICES -> "an invoice line";
            case STOCK -> "a count";
            case LOSSES -> "a loss";
            case ANY -> "any file";
        };
    }
}
