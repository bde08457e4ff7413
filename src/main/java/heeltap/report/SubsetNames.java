package heeltap.report;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Replaces the random prefixes of embedded subset fonts by fixed ones of the same length, so that bytes repeat. */
final class SubsetNames {
    /** Font names stand in plain dictionaries: {@code /ABCDEF+LiberationSans}. */
    private static final Pattern PREFIXED = Pattern.compile("/([A-Z]{6})\\+((?:Liberation|DejaVu)[A-Za-z-]*)");

    private SubsetNames() {}

    static byte[] fixed(byte[] pdf) {
        String latin = new String(pdf, StandardCharsets.ISO_8859_1);
        Map<String, String> prefixes = new LinkedHashMap<>();
        Matcher matcher = PREFIXED.matcher(latin);
        StringBuilder fixed = new StringBuilder(latin.length());
        while (matcher.find()) {
            String prefix =
                    prefixes.computeIfAbsent(matcher.group(1), random -> "HEELT" + (char) ('A' + prefixes.size()));
            matcher.appendReplacement(fixed, "/" + prefix + "+" + matcher.group(2));
        }
        matcher.appendTail(fixed);
        return fixed.toString().getBytes(StandardCharsets.ISO_8859_1);
    }
}
