package heeltap.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Properties;

/** The few words that a report needs beyond those of its document, in the document's language or else in English. */
final class Words {
    static final List<String> LANGUAGES = List.of("en", "fr", "de", "es", "it");

    private final Properties words;
    private final Locale locale;

    private Words(Properties words, Locale locale) {
        this.words = words;
        this.locale = locale;
    }

    static Words of(Locale locale) {
        String language = LANGUAGES.contains(locale.getLanguage()) ? locale.getLanguage() : "en";
        return new Words(read(language), locale);
    }

    /** @throws IllegalArgumentException if the language's file has no such key */
    String get(String key, Object... arguments) {
        String pattern = words.getProperty(key);
        if (pattern == null) {
            throw new IllegalArgumentException("no word for " + key);
        }
        return arguments.length == 0 ? pattern : new MessageFormat(pattern, locale).format(arguments);
    }

    static Properties read(String language) {
        String file = "words_" + language + ".properties";
        try (InputStream stream = Words.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its file " + file);
            }
            Properties properties = new Properties();
            properties.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return properties;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
