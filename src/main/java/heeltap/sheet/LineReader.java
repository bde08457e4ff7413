package heeltap.sheet;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Physical lines, each with the CR, LF or CRLF that ends it. */
final class LineReader {
    static final int BUFFER = 1 << 16;

    private final Reader in;
    private char[] buffer;
    private int from;
    private int to;
    private boolean ended;

    LineReader(Reader in) {
        this(in, BUFFER);
    }

    LineReader(Reader in, int size) {
        this.in = in;
        this.buffer = new char[Math.max(16, size)];
    }

    /** The next line with its end; null after the last. */
    @Nullable String next() throws IOException {
        int at = from;
        while (at < to || (at = more(at)) >= 0) {
            char c = buffer[at++];
            if (c == '\n') {
                return cut(at);
            }
            if (c == '\r') {
                if (at == to) {
                    int moved = more(at);
                    if (moved < 0) {
                        return cut(to);
                    }
                    at = moved;
                }
                return cut(buffer[at] == '\n' ? at + 1 : at);
            }
        }
        return from == to ? null : cut(to);
    }

    private String cut(int end) {
        String line = new String(buffer, from, end - from);
        from = end;
        return line;
    }

    /** Reads on behind {@code at}; gives its new index, or -1 at the end. */
    private int more(int at) throws IOException {
        if (ended) {
            return -1;
        }
        int moved = at - from;
        if (from > 0) {
            System.arraycopy(buffer, from, buffer, 0, to - from);
            to -= from;
            from = 0;
        }
        if (to == buffer.length) {
            buffer = Arrays.copyOf(buffer, buffer.length * 2);
        }
        int count = in.read(buffer, to, buffer.length - to);
        if (count < 0) {
            ended = true;
            return -1;
        }
        to += count;
        return moved;
    }

    /** The length of a line without its end. */
    static int contentLength(String line) {
        int length = line.length();
        if (length > 0 && line.charAt(length - 1) == '\n') {
            length--;
        }
        if (length > 0 && line.charAt(length - 1) == '\r') {
            length--;
        }
        return length;
    }
}
