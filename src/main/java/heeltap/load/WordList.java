package heeltap.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Word lists kept as data beside the classes: lines {@code key: word; word}, several lines a key, {@code #} opens a
 * comment.
 */
final class WordList {
    private WordList() {}

    static Map<String, List<String>> read(String resource) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        try (InputStream stream = Objects.requireNonNull(WordList.class.getResourceAsStream(resource), resource);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                int colon = line.indexOf(':');
                if (colon > 0 && !line.startsWith("#")) {
                    List<String> words =
                            lists.computeIfAbsent(line.substring(0, colon).strip(), k -> new ArrayList<>());
                    for (String word : line.substring(colon + 1).split(";", -1)) {
                        if (!word.isBlank()) {
                            words.add(word.strip());
                        }
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lists;
    }
}
