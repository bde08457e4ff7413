package heeltap.record;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/** Makes spellings of one name alike: case, accents, punctuation and spacing are folded away, nothing else. */
public final class Folding {
    /** Letters that Unicode does not take apart into a base letter and a mark. */
    private static final Map<Character, String> LETTERS = Map.ofEntries(
            Map.entry('ß', "ss"),
            Map.entry('ø', "o"),
            Map.entry('æ', "ae"),
            Map.entry('œ', "oe"),
            Map.entry('ł', "l"),
            Map.entry('đ', "d"),
            Map.entry('ð', "d"),
            Map.entry('þ', "th"),
            Map.entry('ı', "i"),
            Map.entry('ħ', "h"),
            Map.entry('ŧ', "t"),
            Map.entry('ς', "σ"));

    private Folding() {}

    /**
     * The folded name: letters and digits only. Between two digits a break stays as one space, so that {@code 1.5 l} and
     * {@code 15 l} remain two things. A name without any letter or digit is kept as it is, stripped.
     */
    public static String fold(String name) {
        String plain = letters(name);
        StringBuilder folded = new StringBuilder(plain.length());
        boolean broken = false;
        for (int i = 0; i < plain.length(); ) {
            int c = plain.codePointAt(i);
            i += Character.charCount(c);
            if (!isWordPart(c)) {
                broken = broken || !isApostrophe(c);
                continue;
            }
            if (broken && Character.isDigit(c) && endsInDigit(folded)) {
                folded.append(' ');
            }
            folded.appendCodePoint(c);
            broken = false;
        }
        // marks that come to stand side by side when something between them goes take their usual order
        return folded.isEmpty() ? name.strip() : Normalizer.normalize(folded, Normalizer.Form.NFKD);
    }

    /** The words of a name, each folded, with one space between them: for judging likeness. */
    public static String words(String name) {
        String plain = letters(name);
        StringBuilder words = new StringBuilder(plain.length());
        plain.codePoints().forEach(c -> {
            if (isWordPart(c)) {
                words.appendCodePoint(c);
            } else if (!isApostrophe(c)) {
                words.append(' ');
            }
        });
        return words.toString().strip().replaceAll(" +", " ");
    }

    /** Lower case without accents; marks of scripts in which they spell vowels stay. */
    private static String letters(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (isAscii(lower)) {
            return lower;
        }
        String apart = Normalizer.normalize(lower, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        StringBuilder plain = new StringBuilder(apart.length());
        for (int i = 0; i < apart.length(); i++) {
            char c = apart.charAt(i);
            if (c < '\u0300' || c > '\u036f') {
                String other = LETTERS.get(c);
                plain.append(other == null ? String.valueOf(c) : other);
            }
        }
        return plain.toString();
    }

    private static boolean isAscii(String text) {
        return text.chars().allMatch(c -> c < 0x80);
    }

    private static boolean isWordPart(int c) {
        int type = Character.getType(c);
        return Character.isLetterOrDigit(c)
                || type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK;
    }

    private static boolean isApostrophe(int c) {
        return c == '\'' || c == '\u2019' || c == '\u2018' || c == '`' || c == '\u00b4';
    }

    private static boolean endsInDigit(StringBuilder text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
    }
}
