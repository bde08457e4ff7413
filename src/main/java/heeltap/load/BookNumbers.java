package heeltap.load;

import heeltap.quantity.Exact;
import java.math.BigDecimal;
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
        return new BookNumbers(Decimals.of(language).decimal(), false, false);
    }

    /** Whether the text could be read with thousands as well as with decimals: {@code 1.234}. */
    static boolean isOpen(String text) {
        return NumberText.readings(withoutPercent(text)) == NumberText.Readings.TWO;
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
        String plain = withoutPercent(text);
        NumberText.Readings readings = NumberText.readings(plain);
        Decimals style = decimal == ',' ? Decimals.COMMA : Decimals.POINT;
        if (mixed && readings == NumberText.Readings.TWO) {
            return null;
        }
        if (mixed && readings != NumberText.Readings.SAME) {
            style = readings == NumberText.Readings.COMMA_ONLY ? Decimals.COMMA : Decimals.POINT;
        }
        BigDecimal value = NumberText.parse(plain, style);
        return value == null ? null : Exact.of(value);
    }

    private static String withoutPercent(String text) {
        String clean = BookText.clean(text);
        return clean.endsWith("%") && clean.length() > 1
                ? clean.substring(0, clean.length() - 1).strip()
                : clean;
    }
}
