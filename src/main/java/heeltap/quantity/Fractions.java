package heeltap.quantity;

import java.text.Normalizer;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fractions as people type them: {@code 3/4}, {@code 1 1/2}, {@code 1½}. */
public final class Fractions {
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,6})\\s+)?(\\d{1,4})\\s?/\\s?(\\d{1,4})");

    private Fractions() {}

    /** One-character fractions and fraction slashes as ASCII: {@code 1½} becomes {@code 1 1/2}. */
    public static String spellOut(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String plain = c < 128 ? "" : Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
            if (plain.length() > 1 && plain.indexOf('\u2044') > 0) {
                out.append(out.length() == 0 ? "" : " ").append(plain.replace('\u2044', '/'));
            } else {
                out.append(c == '\u2044' || c == '\u2215' ? '/' : c);
            }
        }
        return out.toString();
    }

    /**
     * The value of a fraction or mixed number; empty for any other text and for a zero below the line. The fraction of a
     * mixed number must be below one.
     */
    public static Optional<Exact> parse(String text) {
        Matcher matcher = FRACTION.matcher(spellOut(text).strip());
        if (!matcher.matches() || Long.parseLong(matcher.group(3)) == 0) {
            return Optional.empty();
        }
        Exact fraction =
                Exact.of(Long.parseLong(matcher.group(2))).dividedBy(Exact.of(Long.parseLong(matcher.group(3))));
        if (matcher.group(1) == null) {
            return Optional.of(fraction);
        }
        return fraction.isLessThan(Exact.ONE)
                ? Optional.of(fraction.plus(Exact.of(Long.parseLong(matcher.group(1)))))
                : Optional.empty();
    }
}
