package heeltap.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Splits a delimited text that may be damaged. A field that begins with a quote must close with a quote before a
 * delimiter or a line end; it may hold line breaks. Where it does not close so, the damage stays inside the physical
 * line: the inner quotes, or else the first one, are ordinary characters, whichever gives the usual number of fields.
 */
final class QuotedRecords implements Records {
    /** More lines than anyone writes into one cell. */
    private static final int MOST_LINES = 100;

    private final LineReader lines;
    private final Dialect dialect;
    private final Deque<String> ahead = new ArrayDeque<>();
    private final StringBuilder value = new StringBuilder();
    private int taken;
    private int number;

    /** The physical lines of the record so far, where the content of the last one begins and ends. */
    private String text = "";

    private int lastLine;
    private int end;

    private boolean closedAtLineStart;
    private boolean damaged;
    private boolean backslashed;
    private boolean plain;

    QuotedRecords(LineReader lines, Dialect dialect, int linesBefore) {
        this.lines = lines;
        this.dialect = dialect;
        this.taken = linesBefore;
    }

    @Override
    public @Nullable List<String> next() throws IOException {
        String first = take();
        if (first == null) {
            return null;
        }
        number = taken;
        plain = true;
        backslashed = false;
        List<String> fields = parse(first, true);
        if (damaged && fields.size() != dialect.fields()) {
            dropAfter(first);
            fields = parse(first, false);
        }
        return fields;
    }

    @Override
    public int line() {
        return number;
    }

    /** Whether a quote of the last record was read as an ordinary character. */
    boolean damaged() {
        return damaged;
    }

    /** Whether such a quote stood behind a backslash. */
    boolean backslashed() {
        return backslashed;
    }

    /** Whether the last record follows the rules that any reader of such files agrees on. */
    boolean plain() {
        return plain && !damaged;
    }

    /** The physical lines of the last record. */
    String text() {
        return text;
    }

    private List<String> parse(String first, boolean lenient) throws IOException {
        text = first;
        lastLine = 0;
        end = LineReader.contentLength(first);
        damaged = false;
        boolean quotes = first.indexOf(dialect.quote()) >= 0;
        List<String> fields = new ArrayList<>(Math.max(8, dialect.fields()));
        int at = 0;
        while (true) {
            int open = quotes ? openingQuote(at) : -1;
            int stop = open < 0 ? -1 : quoted(open, lenient);
            if (stop >= 0) {
                plain &= open == at;
                fields.add(value.toString());
            } else {
                int delimiter = text.indexOf(dialect.delimiter(), at);
                stop = delimiter < 0 ? end : delimiter;
                String field = text.substring(at, stop);
                damaged |= quotes && open < 0 && hasLoneQuote(field);
                fields.add(field);
            }
            if (stop >= end) {
                return fields;
            }
            at = stop + 1;
        }
    }

    private int openingQuote(int at) {
        int start = skipSpaces(at);
        return start < end && text.charAt(start) == dialect.quote() ? start : -1;
    }

    private int skipSpaces(int at) {
        int next = at;
        while (next < end && text.charAt(next) == ' ') {
            next++;
        }
        return next;
    }

    /** Reads a quoted field into {@code value}; gives the index of the delimiter or end behind it, or -1. */
    private int quoted(int open, boolean lenient) throws IOException {
        String textBefore = text;
        int endBefore = end;
        int lineBefore = lastLine;
        int stop = strict(open);
        if (stop >= 0 && (text.length() == textBefore.length() || !linesAreRows(textBefore, lineBefore))) {
            return stop;
        }
        dropAfter(textBefore);
        text = textBefore;
        end = endBefore;
        lastLine = lineBefore;
        damaged = true;
        return lenient ? closedOnLine(open) : -1;
    }

    private int strict(int open) throws IOException {
        value.setLength(0);
        int from = open + 1;
        int extra = 0;
        while (true) {
            int mark = nextMark(from);
            if (mark < 0) {
                String more = extra++ < MOST_LINES ? take() : null;
                if (more == null) {
                    return -1;
                }
                value.append(text, from, text.length());
                from = text.length();
                lastLine = text.length();
                text += more;
                end = lastLine + LineReader.contentLength(more);
                continue;
            }
            char after = mark + 1 < end ? text.charAt(mark + 1) : 0;
            boolean escape = text.charAt(mark) != dialect.quote();
            if (after == dialect.quote() || (escape && after == '\\')) {
                value.append(text, from, mark).append(after);
                from = mark + 2;
            } else if (escape) {
                value.append(text, from, mark + 1);
                from = mark + 1;
            } else if (closes(mark)) {
                value.append(text, from, mark);
                closedAtLineStart = mark == lastLine;
                int stop = skipSpaces(mark + 1);
                plain &= stop == mark + 1 && !dialect.backslash();
                return stop;
            } else {
                backslashed |= text.charAt(mark - 1) == '\\';
                return -1;
            }
        }
    }

    private int nextMark(int from) {
        int quote = text.indexOf(dialect.quote(), from);
        if (!dialect.backslash()) {
            return quote;
        }
        int backslash = text.indexOf('\\', from);
        return backslash < 0 || (quote >= 0 && quote < backslash) ? quote : backslash;
    }

    private boolean closes(int quote) {
        int stop = skipSpaces(quote + 1);
        return stop == end || text.charAt(stop) == dialect.delimiter();
    }

    /** Closes at the first quote before a delimiter or the line's end, whatever stands between. */
    private int closedOnLine(int open) {
        String quote = String.valueOf(dialect.quote());
        for (int at = text.indexOf(dialect.quote(), open + 1); at >= 0; at = text.indexOf(dialect.quote(), at + 1)) {
            if (closes(at)) {
                value.setLength(0);
                value.append(text.substring(open + 1, at).replace(quote + quote, quote));
                return skipSpaces(at + 1);
            }
        }
        return -1;
    }

    /** Whether each line that a quoted field spans is a whole row by itself: then its opening quote is a stray one. */
    private boolean linesAreRows(String before, int lineBefore) throws IOException {
        if (dialect.fields() < 2 || lineBefore > 0 || closedAtLineStart) {
            return false;
        }
        if (countAlone(before) != dialect.fields()) {
            return false;
        }
        LineReader rest = new LineReader(new StringReader(text.substring(before.length())), text.length());
        for (String line = rest.next(); line != null; line = rest.next()) {
            if (countAlone(line) != dialect.fields()) {
                return false;
            }
        }
        return true;
    }

    private int countAlone(String line) throws IOException {
        LineReader one = new LineReader(new StringReader(line), line.length() + 1);
        List<String> fields = new QuotedRecords(one, dialect.withFields(0), 0).next();
        return fields == null ? 0 : fields.size();
    }

    /** An odd number of quotes that are no inch marks. */
    private boolean hasLoneQuote(String field) {
        int count = 0;
        boolean inch = false;
        for (int at = field.indexOf(dialect.quote()); at >= 0; at = field.indexOf(dialect.quote(), at + 1)) {
            count++;
            inch |= at > 0 && Character.isDigit(field.charAt(at - 1));
        }
        return count % 2 == 1 && !inch && dialect.quote() == '"';
    }

    private @Nullable String take() throws IOException {
        String line = ahead.isEmpty() ? lines.next() : ahead.pop();
        if (line != null) {
            taken++;
        }
        return line;
    }

    /** Gives back the lines behind the first part of the record. */
    private void dropAfter(String part) throws IOException {
        if (text.length() == part.length()) {
            return;
        }
        LineReader rest = new LineReader(new StringReader(text.substring(part.length())), text.length());
        List<String> back = new ArrayList<>();
        for (String line = rest.next(); line != null; line = rest.next()) {
            back.add(line);
        }
        for (int i = back.size() - 1; i >= 0; i--) {
            ahead.push(back.get(i));
            taken--;
        }
    }
}
