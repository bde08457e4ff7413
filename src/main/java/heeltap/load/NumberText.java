package heeltap.load;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A number as people and tills write it: grouping of any kind, signs before or behind, accountants' brackets, currency
 * marks, {@code CR}. What it means depends on the decimal style of its whole column.
 */
final class NumberText {
    private static final int MAX_DIGITS = 17;
    private static final Set<String> CURRENCY_WORDS = currencyWords();

    private NumberText() {}

    /** How many ways a text can be read. */
    enum Readings {
        NONE,
        /** The same under both styles. */
        SAME,
        POINT_ONLY,
        COMMA_ONLY,
        TWO
    }

    static Readings readings(String text) {
        int separators = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            separators += c == '.' || c == ',' ? 1 : 0;
        }
        BigDecimal point = parse(text, Decimals.POINT);
        if (separators == 0) {
            return point == null ? Readings.NONE : Readings.SAME;
        }
        BigDecimal comma = parse(text, Decimals.COMMA);
        if (point == null) {
            return comma == null ? Readings.NONE : Readings.COMMA_ONLY;
        }
        if (comma == null) {
            return Readings.POINT_ONLY;
        }
        return point.compareTo(comma) == 0 ? Readings.SAME : Readings.TWO;
    }

    /** The number, or null where the text is none under this style. */
    static @Nullable BigDecimal parse(String text, Decimals style) {
        long digits = 0;
        int count = 0;
        int scale = -1;
        int start = !text.isEmpty() && text.charAt(0) == '-' ? 1 : 0;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9' && count < MAX_DIGITS) {
                digits = digits * 10 + (c - '0');
                count++;
                scale += scale >= 0 ? 1 : 0;
            } else if (c == style.decimal() && scale < 0 && count > 0) {
                scale = 0;
            } else {
                return parseWritten(text, style);
            }
        }
        return count == 0 || scale == 0
                ? parseWritten(text, style)
                : BigDecimal.valueOf(start == 1 ? -digits : digits, Math.max(scale, 0));
    }

    /** The number of a text such as {@code 19 %}, without its sign of percent; null where there is none. */
    static @Nullable BigDecimal parsePercent(String text, Decimals style) {
        String trimmed = TextFold.trim(text);
        if (trimmed.endsWith("%")) {
            return parse(TextFold.trim(trimmed.substring(0, trimmed.length() - 1)), style);
        }
        return trimmed.startsWith("%") ? parse(TextFold.trim(trimmed.substring(1)), style) : null;
    }

    private static @Nullable BigDecimal parseWritten(String text, Decimals style) {
        Stripped stripped = Stripped.of(text);
        if (stripped == null || stripped.core.isEmpty()) {
            return null;
        }
        BigDecimal value = parseCore(stripped.core, style);
        return value != null && stripped.negative ? value.negate() : value;
    }

    private static @Nullable BigDecimal parseCore(String written, Decimals style) {
        String core = withoutDashes(written, style);
        int point = core.indexOf(style.decimal());
        if (point != core.lastIndexOf(style.decimal()) || point == core.length() - 1) {
            return null;
        }
        String whole = point < 0 ? core : core.substring(0, point);
        String fraction = point < 0 ? "" : core.substring(point + 1);
        if (!isDigits(fraction) || (whole.isEmpty() && fraction.isEmpty())) {
            return null;
        }
        String plain = isDigits(whole) ? whole : ungroup(whole, style);
        return plain == null
                ? null
                : new BigDecimal((plain.isEmpty() ? "0" : plain) + (point < 0 ? "" : "." + fraction));
    }

    /** {@code 12.-} and {@code 12,--} are prices without decimals. */
    private static String withoutDashes(String core, Decimals style) {
        int end = core.length();
        while (end > 0 && isDash(core.charAt(end - 1))) {
            end--;
        }
        return end < core.length() && end > 1 && core.charAt(end - 1) == style.decimal()
                ? core.substring(0, end - 1)
                : core;
    }

    /** The digits of {@code 1,234,567} or of {@code 12,34,567} (lakh); null where the groups are no groups. */
    private static @Nullable String ungroup(String whole, Decimals style) {
        char separator = 0;
        StringBuilder plain = new StringBuilder(whole.length());
        int[] lengths = new int[whole.length() + 1];
        int groups = 0;
        for (int i = 0; i < whole.length(); i++) {
            char c = whole.charAt(i);
            if (c >= '0' && c <= '9') {
                plain.append(c);
                lengths[groups]++;
            } else if ((c == style.group() || c == ' ' || c == '\'') && (separator == 0 || separator == c)) {
                separator = c;
                groups++;
            } else {
                return null;
            }
        }
        boolean plausible = lengths[0] > 0 && lengths[0] <= 3 && plain.charAt(0) != '0' && lengths[groups] == 3;
        boolean threes = plausible;
        boolean lakh = plausible && lengths[0] <= 2 && separator != '\'' && style == Decimals.POINT;
        for (int i = 1; i < groups; i++) {
            threes &= lengths[i] == 3;
            lakh &= lengths[i] == 2;
        }
        return threes || lakh ? plain.toString() : null;
    }

    private static boolean isDigits(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    static boolean isDash(char c) {
        return c == '-' || c == '\u2212' || (c >= '\u2010' && c <= '\u2014') || c == '\uFE63' || c == '\uFF0D';
    }

    private static Set<String> currencyWords() {
        Set<String> words = new HashSet<>(Set.of(
                "kr", "kč", "kc", "zł", "zl", "ft", "fr", "sfr", "rs", "r", "us", "a", "c", "nz", "hk", "s", "lei",
                "lv", "tl", "eur", "euro", "euros", "rmb"));
        for (Currency currency : Currency.getAvailableCurrencies()) {
            words.add(currency.getCurrencyCode().toLowerCase(Locale.ROOT));
        }
        return Set.copyOf(words);
    }

    /** A number text without its sign and currency: digits, separators and one kind of space and apostrophe. */
    private record Stripped(String core, boolean negative) {
        static @Nullable Stripped of(String text) {
            String rest = normal(text);
            boolean negative = false;
            boolean signed = false;
            if (rest.startsWith("(") && rest.endsWith(")")) {
                negative = true;
                signed = true;
                rest = rest.substring(1, rest.length() - 1).strip();
            }
            while (!rest.isEmpty()) {
                char first = rest.charAt(0);
                char last = rest.charAt(rest.length() - 1);
                String before = rest;
                if (isDash(first) || first == '+' || (isDash(last) && !endsInDashedDecimals(rest))) {
                    if (signed) {
                        return null;
                    }
                    signed = true;
                    negative = first != '+';
                    rest = isDash(first) || first == '+' ? rest.substring(1) : rest.substring(0, rest.length() - 1);
                } else if (isMark(first)) {
                    rest = rest.substring(1);
                } else if (isMark(last)) {
                    rest = rest.substring(0, rest.length() - 1);
                } else if (last == '.' && rest.length() > 1 && Character.isLetter(rest.charAt(rest.length() - 2))) {
                    rest = rest.substring(0, rest.length() - 1);
                } else if (Character.isLetter(first)) {
                    rest = withoutLeadingWord(rest);
                } else if (Character.isLetter(last)) {
                    String word = trailingWord(rest);
                    rest = rest.substring(0, rest.length() - word.length());
                    boolean credit = word.equalsIgnoreCase("cr");
                    if ((credit && signed) || !(credit || word.equalsIgnoreCase("dr") || isCurrency(word))) {
                        return null;
                    }
                    signed |= credit;
                    negative |= credit;
                } else {
                    return new Stripped(rest, negative);
                }
                rest = rest.strip();
                if (rest.equals(before)) {
                    return null;
                }
            }
            return null;
        }

        private static String normal(String text) {
            StringBuilder normal = new StringBuilder(text.length());
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                if (TextFold.isSpace(c)) {
                    normal.append(Character.getType(c) == Character.FORMAT ? "" : " ");
                } else {
                    normal.append(c == '\u2019' || c == '\u2018' || c == '\u00B4' || c == '`' ? '\'' : c);
                }
            }
            return normal.toString().strip();
        }

        private static boolean isMark(char c) {
            return Character.getType(c) == Character.CURRENCY_SYMBOL || c == '\'';
        }

        private static boolean isCurrency(String word) {
            return CURRENCY_WORDS.contains(word.toLowerCase(Locale.ROOT));
        }

        private static boolean endsInDashedDecimals(String text) {
            int end = text.length();
            while (end > 0 && isDash(text.charAt(end - 1))) {
                end--;
            }
            return end > 1 && (text.charAt(end - 1) == '.' || text.charAt(end - 1) == ',');
        }

        /** Unchanged where the word is no currency, which ends the reading. */
        private static String withoutLeadingWord(String text) {
            int end = 0;
            while (end < text.length() && Character.isLetter(text.charAt(end))) {
                end++;
            }
            if (!isCurrency(text.substring(0, end))) {
                return text;
            }
            return text.substring(end < text.length() && text.charAt(end) == '.' ? end + 1 : end);
        }

        private static String trailingWord(String text) {
            int start = text.length();
            while (start > 0 && Character.isLetter(text.charAt(start - 1))) {
                start--;
            }
            return text.substring(start);
        }
    }
}
