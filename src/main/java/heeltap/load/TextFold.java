package heeltap.load;

import java.text.Normalizer;
import java.util.Locale;

/** Brings headings and marker words to one spelling: case, accents, punctuation and spacing do not matter. */
final class TextFold {
    private TextFold() {}

    /** {@code "  Prix  unitaire (€) " -> "prix unitaire"}; {@code %} becomes the word percent, {@code #} stays. */
    static String fold(String text) {
        String plain = Normalizer.normalize(text.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD);
        StringBuilder folded = new StringBuilder(plain.length());
        boolean gap = false;
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (Character.getType(c) == Character.NON_SPACING_MARK) {
                continue;
            }
            if (c == '%' || c == '#') {
                folded.append(folded.isEmpty() ? "" : " ").append(c == '%' ? "percent" : "#");
                gap = true;
            } else if (Character.isLetterOrDigit(c)) {
                folded.append(gap && !folded.isEmpty() ? " " : "").append(c == 'ı' ? 'i' : c);
                gap = false;
            } else {
                gap = true;
            }
        }
        return folded.toString();
    }

    /** White space of any kind at both ends, invisible marks included. */
    static String trim(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && isSpace(text.charAt(start))) {
            start++;
        }
        while (end > start && isSpace(text.charAt(end - 1))) {
            end--;
        }
        return start == 0 && end == text.length() ? text : text.substring(start, end);
    }

    /** Any white space, no-break and narrow spaces and zero-width marks included. */
    static boolean isSpace(char c) {
        return c == ' ' || (c > 127 ? Character.isSpaceChar(c) || Character.getType(c) == Character.FORMAT : c < ' ');
    }
}
