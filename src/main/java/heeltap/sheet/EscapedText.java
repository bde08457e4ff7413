package heeltap.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Characters that XML cannot hold stand in a workbook as {@code _x000D_} (ECMA-376 Part 1, 22.9.2.19 ST_Xstring). */
final class EscapedText {
    private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private EscapedText() {}

    static String decode(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        return ESCAPE.matcher(text)
                .replaceAll(
                        match -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(match.group(1), 16))));
    }
}
