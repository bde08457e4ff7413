package heeltap.review;

import heeltap.document.CellValue;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Pattern;

/** The words of the report in the bar's language. Numbers are handed in already printed. */
final class Texts {
    private static final String BUNDLE = "heeltap.review.texts";
    private static final Pattern NO_KEY = Pattern.compile("[^a-z0-9]+");

    private final ResourceBundle bundle;
    private final Locale locale;

    private Texts(ResourceBundle bundle, Locale locale) {
        this.bundle = bundle;
        this.locale = locale;
    }

    /** The language's own words, else English. */
    static Texts in(Locale locale) {
        ResourceBundle.Control noDefault =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Texts(ResourceBundle.getBundle(BUNDLE, locale, noDefault), locale);
    }

    /**
     * A sentence with its figures.
     *
     * @throws java.util.MissingResourceException if the language has no such text
     */
    String say(String key, Object... printed) {
        return format(bundle.getString(key), printed);
    }

    Optional<String> find(String key) {
        return bundle.containsKey(key) ? Optional.of(format(bundle.getString(key))) : Optional.empty();
    }

    /** Always through MessageFormat, so that one rule holds for apostrophes in every text. */
    private String format(String pattern, Object... printed) {
        return new MessageFormat(pattern, locale)
                .format(Arrays.stream(printed).map(String::valueOf).toArray());
    }

    /**
     * A word of a closed set as a table's cell.
     *
     * @param set which set, the beginning of the word's key
     * @param published the word as the CSV tables print it; its letters and figures, joined by hyphens, end the key
     * @throws java.util.MissingResourceException if the language has no such word
     */
    CellValue.Term term(String set, String published) {
        String word = NO_KEY.matcher(published.toLowerCase(Locale.ROOT)).replaceAll("-");
        return new CellValue.Term(published, say(set + "." + word));
    }

    /** The heading of a column: its own in this table, else the one that all tables share. */
    String heading(String table, String key) {
        return find("column." + table + "." + key).orElseGet(() -> say("column." + key));
    }

    /** The explanation of a column: its own in this table, else the one that all tables share. */
    String note(String table, String key) {
        return find("note." + table + "." + key).or(() -> find("note." + key)).orElse("");
    }
}
