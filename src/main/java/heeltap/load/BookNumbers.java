package heeltap.load;

import heeltap.quantity.Exact;
import java.text.DecimalFormatSymbols;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How the numbers of one column are written, decided once from all its texts, then its sheet's, then the bar's language.
 *
 * @param decimal {@code .} or {@code ,}
 * @param proven whether a text of the column or its sheet says so
 * @param mixed whether the column has both; then only texts with one reading are read
 */
record BookNumbers(char decimal, boolean proven, boolean mixed) {
    private static final Pattern TOKEN = Pattern.compile("\\d+(?:[.,]\\d+)+|(?<![\\d])[.,]\\d+");
    private static final Pattern OPEN = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:([ .,'\u2019])\\d{3})(?:\\1\\d{3})*");

    /** What texts say about decimals. */
    record Evidence(int points, int commas, int open) {
        static final Evidence NONE = new Evidence(0, 0, 0);

        Evidence plus(Evidence other) {
            return new Evidence(points + other.points, commas + other.commas, open + other.open);
        }
    }

    static Evidence evidence(List<String> texts) {
        Evidence sum = Evidence.NONE;
        for (String text : texts) {
            Matcher matcher = TOKEN.matcher(text);
            while (matcher.find()) {
                sum = sum.plus(evidence(matcher.group()));
            }
        }
        return sum;
    }

    private static Evidence evidence(String token) {
        if (OPEN.matcher(token).matches()) {
            return new Evidence(0, 0, 1);
        }
        char last = token.charAt(Math.max(token.lastIndexOf('.'), token.lastIndexOf(',')));
        boolean groups = token.indexOf(last) != token.lastIndexOf(last);
        boolean point = (last == '.') != groups;
        return point ? new Evidence(1, 0, 0) : new Evidence(0, 1, 0);
    }

    static BookNumbers decide(Evidence column, Evidence sheet, Locale language) {
        if (column.points() > 0 && column.commas() > 0) {
            return new BookNumbers(column.points() >= column.commas() ? '.' : ',', true, true);
        }
        Evidence better = column.points() + column.commas() > 0 ? column : sheet;
        if (better.points() != better.commas()) {
            return new BookNumbers(better.points() > better.commas() ? '.' : ',', true, false);
        }
        char usual = DecimalFormatSymbols.getInstance(language).getDecimalSeparator() == ',' ? ',' : '.';
        return new BookNumbers(usual, false, false);
    }

    /** Whether the text could be read with thousands as well as with decimals: {@code 1.234}. */
    static boolean isOpen(String text) {
        return OPEN.matcher(bare(text)).matches();
    }

    /** The first number inside a text that could be read two ways. */
    static Optional<String> findOpen(String text) {
        return TOKEN.matcher(text)
                .results()
                .map(MatchResult::group)
                .filter(token -> OPEN.matcher(token).matches())
                .findFirst();
    }

    /** The number under the other reading, for the message. */
    BookNumbers other() {
        return new BookNumbers(decimal == '.' ? ',' : '.', proven, mixed);
    }

    /** The number of a text; signs of money and percent are passed over. Null where there is none. */
    @Nullable Exact parse(String text) {
        String bare = bare(text);
        boolean negative = bare.startsWith("-");
        String digits = negative ? bare.substring(1).strip() : bare;
        if (mixed && OPEN.matcher(digits).matches()) {
            return null;
        }
        Exact value = unsigned(digits);
        return value == null || !negative ? value : value.negated();
    }

    private @Nullable Exact unsigned(String digits) {
        char own = mixed ? ownDecimal(digits) : decimal;
        int point = digits.lastIndexOf(own);
        if (point >= 0 && digits.indexOf(own) != point) {
            return null;
        }
        String whole = point < 0 ? digits : digits.substring(0, point);
        String fraction = point < 0 ? "" : digits.substring(point + 1);
        boolean grouped = GROUPED.matcher(whole).matches() && whole.charAt(0) != '0' && whole.indexOf(own) < 0;
        boolean wellFormed = (grouped || whole.matches("\\d{0,15}"))
                && fraction.matches(point < 0 ? "" : "\\d{1,15}")
                && !(whole.isEmpty() && fraction.isEmpty());
        return wellFormed ? Exact.of("0" + whole.replaceAll("\\D", "") + "." + fraction + "0") : null;
    }

    private static char ownDecimal(String digits) {
        return evidence(digits.indexOf('.') < 0 && digits.indexOf(',') < 0 ? "0.0" : digits)
                                .points()
                        > 0
                ? '.'
                : ',';
    }

    /** The text without currency, percent and spaces around it; a minus is {@code -}. */
    private static String bare(String text) {
        String bare = BookText.clean(text).replace('\u2212', '-').replace('\u2013', '-');
        String before;
        do {
            before = bare;
            bare = bare.replaceAll("^\\p{Sc}|\\p{Sc}$|%$", "").strip();
            if (bare.startsWith("-") && bare.length() > 1 && !Character.isDigit(bare.charAt(1))) {
                bare = "-" + bare.substring(1).replaceAll("^\\p{Sc}", "").strip();
            }
            String code = currencyCode(bare);
            bare = code.isEmpty() ? bare : bare.replace(code, "").strip();
        } while (!bare.equals(before));
        return bare.startsWith("+") ? bare.substring(1) : bare;
    }

    /** The currency code before or behind the number; empty for none. */
    static String currencyCode(String text) {
        Matcher matcher =
                Pattern.compile("^[A-Z]{3}(?=[ \\d-])|(?<=[ \\d])[A-Z]{3}$").matcher(BookText.clean(text));
        while (matcher.find()) {
            String code = matcher.group();
            if (Currency.getAvailableCurrencies().stream()
                    .anyMatch(c -> c.getCurrencyCode().equals(code))) {
                return code;
            }
        }
        return "";
    }
}
