package heeltap.cli;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words around the summary, in the bar's language or else in English. */
final class SummaryWords {
    private final ResourceBundle bundle;
    private final Locale locale;

    private SummaryWords(Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle(
                "heeltap.cli.summary",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    static SummaryWords in(Locale locale) {
        return new SummaryWords(locale);
    }

    /** Counts are handed in as numbers, for the choice between one and many; everything else as printed text. */
    String say(String key, Object... arguments) {
        return new MessageFormat(bundle.getString(key), locale).format(arguments);
    }
}
