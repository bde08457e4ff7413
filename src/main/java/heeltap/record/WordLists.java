package heeltap.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Kinds of things with the words that name them, from a resource of lines {@code kind | word, word}. Words are compared
 * whole, without regard to case, accents and punctuation; a line that begins with {@code #} is a remark.
 */
public final class WordLists {
    private final Map<String, Set<String>> kinds = new LinkedHashMap<>();

    private WordLists() {}

    /** @param owner the class beside whose package the resource lies */
    public static WordLists read(Class<?> owner, String resource) {
        WordLists lists = new WordLists();
        try (InputStream stream = owner.getResourceAsStream(resource);
                BufferedReader reader = new BufferedReader(
                        new InputStreamReader(Objects.requireNonNull(stream, resource), StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(lists::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lists;
    }

    private void add(String line) {
        int bar = line.indexOf('|');
        Set<String> words = kinds.computeIfAbsent(line.substring(0, bar).strip(), kind -> new LinkedHashSet<>());
        for (String word : line.substring(bar + 1).split(",", -1)) {
            words.add(Folding.words(word));
        }
    }

    /** The kinds that the whole text names. */
    public Set<String> named(String text) {
        Set<String> found = new LinkedHashSet<>();
        String whole = Folding.words(text);
        kinds.forEach((kind, words) -> {
            if (words.contains(whole)) {
                found.add(kind);
            }
        });
        return found;
    }

    /** The kinds of which the text holds a word, in the order of the resource. */
    public Set<String> in(String text) {
        Set<String> found = new LinkedHashSet<>();
        String padded = " " + Folding.words(text) + " ";
        kinds.forEach((kind, words) -> {
            if (words.stream().anyMatch(word -> padded.contains(" " + word + " "))) {
                found.add(kind);
            }
        });
        return found;
    }
}
