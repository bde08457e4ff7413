package heeltap.match;

import heeltap.record.Folding;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Folded names of one kind; one that stands for two things finds neither. */
final class NameList {
    private record Entry(String written, String name, Place place) {}

    private final String word;
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Set<String> ambiguous = new HashSet<>();
    private final Map<String, String> meanings = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /** @param word what the names are, for messages */
    NameList(String word) {
        this.word = word;
    }

    /** A blank text is no name. */
    void add(String written, String name, Place place) {
        if (written.isBlank()) {
            return;
        }
        String key = Folding.fold(written);
        Entry earlier = entries.putIfAbsent(key, new Entry(written, name, place));
        if (earlier == null) {
            meanings.put(key, name);
            return;
        }
        ambiguous.add(key);
        meanings.remove(key);
        problems.add(twice(
                written,
                place,
                "The " + word + " stands for the same as \"" + earlier.written() + "\" at " + earlier.place() + "."));
    }

    /** Names that also stand in the other list mean nothing in either. */
    void clashWith(NameList other) {
        entries.forEach((key, entry) -> {
            Entry theirs = other.entries.get(key);
            if (theirs != null) {
                ambiguous.add(key);
                other.ambiguous.add(key);
                meanings.remove(key);
                other.meanings.remove(key);
                problems.add(twice(
                        entry.written(),
                        entry.place(),
                        "The " + word + " bears the name of the " + other.word + " at " + theirs.place() + "."));
            }
        });
    }

    private static Problem twice(String written, Place place, String reason) {
        return Problem.fault(
                ProblemKind.NAME_TWICE,
                place,
                written,
                reason,
                "Give each a name of its own; until then neither is used.");
    }

    Optional<String> find(String written) {
        return written.isBlank() ? Optional.empty() : Optional.ofNullable(meanings.get(Folding.fold(written)));
    }

    boolean isAmbiguous(String written) {
        return ambiguous.contains(Folding.fold(written));
    }

    Collection<String> names() {
        return entries.values().stream().map(Entry::name).distinct().toList();
    }

    List<Problem> problems() {
        return problems;
    }
}
