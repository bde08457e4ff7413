package heeltap.sheet;

import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How the records of a text are laid out.
 *
 * @param dialect delimiter and quotes
 * @param columns where the columns of a space-aligned text stand; null for a delimited one
 * @param linesBefore lines above the first record that are no rows: a line {@code sep=;}
 */
record TextLayout(Dialect dialect, @Nullable SpacedColumns columns, int linesBefore) {
    private static final Pattern SEPARATOR_LINE =
            Pattern.compile("\\A\"?sep=(.)\"?(?:\\r\\n|\\r|\\n|\\z)", Pattern.CASE_INSENSITIVE);

    /** In the order of preference where two are equally good. */
    private static final List<Character> DELIMITERS = List.of('\t', ';', '|', ',');

    /** A delimiter this much worse than a comma still wins where the commas are decimal commas. */
    private static final double NEAR = 0.6;

    private static final Pattern SINGLE_QUOTED = Pattern.compile("(?:^|[,;|\\t])'[^'\\r\\n]*'(?=[,;|\\t\\r\\n]|$)");
    private static final Pattern DOUBLE_QUOTED = Pattern.compile("(?:^|[,;|\\t\\r\\n])\"");

    static TextLayout of(String sample) throws IOException {
        Matcher separator = SEPARATOR_LINE.matcher(sample);
        if (separator.find()) {
            char delimiter = separator.group(1).charAt(0);
            return new TextLayout(
                    bestQuotes(sample.substring(separator.end()), delimiter).dialect(), null, 1);
        }
        TrialReading best = null;
        for (char delimiter : DELIMITERS) {
            best = better(best, bestQuotes(sample, delimiter));
        }
        best = better(best, TrialReading.spaced(sample));
        return best == null
                ? new TextLayout(bestQuotes(sample, Dialect.NONE).dialect(), null, 0)
                : new TextLayout(best.dialect(), best.columns(), 0);
    }

    boolean isSpaced() {
        return dialect.delimiter() == ' ' && linesBefore == 0;
    }

    String delimiterName() {
        return isSpaced() ? "spaces" : dialect.delimiterName();
    }

    Records plainRecords(Reader text) throws IOException {
        return new PlainRecords(text, dialect);
    }

    QuotedRecords quotedRecords(Reader text) throws IOException {
        LineReader lines = new LineReader(text);
        for (int i = 0; i < linesBefore; i++) {
            lines.next();
        }
        return new QuotedRecords(lines, dialect, linesBefore);
    }

    Records spacedRecords(Reader text) {
        return new SpacedRecords(new LineReader(text), columns);
    }

    TextLayout withBackslash() {
        return new TextLayout(dialect.withBackslash(), columns, linesBefore);
    }

    private static @Nullable TrialReading better(@Nullable TrialReading best, TrialReading next) {
        if (!next.isTable()) {
            return best;
        }
        if (best == null) {
            return next;
        }
        if (best.splitsDecimalsOf(next)) {
            return next.score() >= NEAR * best.score() ? next : best;
        }
        if (next.splitsDecimalsOf(best)) {
            return best.score() >= NEAR * next.score() ? best : next;
        }
        boolean equal = Math.abs(next.score() - best.score()) < 1e-9;
        boolean better = equal ? beginsBefore(next, best) : next.score() > best.score();
        return better ? next : best;
    }

    /** A bar is also a sign inside texts: of two equal readings the one with more fields is right. */
    private static boolean beginsBefore(TrialReading next, TrialReading best) {
        boolean bar = best.dialect().delimiter() == '|' && next.dialect().delimiter() == ',';
        return next.runStart() < best.runStart()
                || (bar
                        && next.runStart() == best.runStart()
                        && next.dialect().fields() > best.dialect().fields());
    }

    private static TrialReading bestQuotes(String sample, char delimiter) throws IOException {
        Dialect usual = Dialect.of(delimiter);
        TrialReading best = TrialReading.delimited(sample, usual);
        if (sample.contains("\\\"")) {
            TrialReading backslash = TrialReading.delimited(sample, usual.withBackslash());
            best = backslash.score() > best.score() ? backslash : best;
        }
        if (isSingleQuoted(sample)) {
            TrialReading single = TrialReading.delimited(sample, usual.withQuote('\''));
            best = single.score() >= best.score() ? single : best;
        }
        return best;
    }

    /** Single quotes are clear where no double quotes are and most lines hold one that fills a field. */
    private static boolean isSingleQuoted(String sample) {
        if (sample.indexOf('\'') < 0 || DOUBLE_QUOTED.matcher(sample).find()) {
            return false;
        }
        List<String> lines = sample.lines().filter(line -> !Blank.is(line)).toList();
        long quoted = lines.stream()
                .filter(line -> SINGLE_QUOTED.matcher(line).find())
                .count();
        return quoted >= 2 && quoted * 5 >= lines.size() * 3L;
    }
}
