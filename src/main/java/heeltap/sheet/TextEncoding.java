package heeltap.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The character set of a text file, found from all of its bytes.
 *
 * @param charset decodes it
 * @param mark bytes of the byte-order mark at its beginning, which are no text
 */
record TextEncoding(Charset charset, int mark) {
    private static final int CHUNK = 1 << 16;

    /** One malformed place among so many good characters is damage, not another character set. */
    private static final int GOOD_FOR_ONE_BAD = 4;

    String name() {
        return charset.name().startsWith("x-") ? charset.name().substring(2) : charset.name();
    }

    /** Decodes from behind the byte-order mark; undecodable bytes become U+FFFD. */
    Reader open(Path file) throws IOException {
        InputStream in = Files.newInputStream(file);
        in.skipNBytes(mark);
        return new InputStreamReader(in, charset);
    }

    static TextEncoding of(Path file) throws IOException {
        byte[] chunk = new byte[CHUNK];
        long[] zeros = new long[2];
        Utf8Count utf8 = new Utf8Count();
        try (InputStream in = Files.newInputStream(file)) {
            int count = in.readNBytes(chunk, 0, CHUNK);
            TextEncoding marked = byMark(chunk, count);
            if (marked != null) {
                return marked;
            }
            for (; count > 0; count = in.readNBytes(chunk, 0, CHUNK)) {
                for (int i = 0; i < count; i++) {
                    if (chunk[i] == 0) {
                        zeros[i & 1]++;
                    }
                }
                utf8.add(chunk, count);
            }
        }
        return byCounts(file, zeros, utf8);
    }

    private static @Nullable TextEncoding byMark(byte[] head, int count) {
        if (count >= 3 && head[0] == (byte) 0xef && head[1] == (byte) 0xbb && head[2] == (byte) 0xbf) {
            return new TextEncoding(StandardCharsets.UTF_8, 3);
        }
        if (count >= 2 && head[0] == (byte) 0xff && head[1] == (byte) 0xfe) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 2);
        }
        if (count >= 2 && head[0] == (byte) 0xfe && head[1] == (byte) 0xff) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 2);
        }
        return null;
    }

    /** Delimiters, digits and line ends have a zero byte in UTF-16, always on the same side. */
    private static TextEncoding byCounts(Path file, long[] zeros, Utf8Count utf8) throws IOException {
        long pairs = Math.max(1, utf8.bytes / 2);
        if (zeros[1] * 5 >= pairs && zeros[1] >= zeros[0] * 10) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 0);
        }
        if (zeros[0] * 5 >= pairs && zeros[0] >= zeros[1] * 10) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 0);
        }
        utf8.finish();
        if (utf8.bad == 0 || utf8.good >= utf8.bad * GOOD_FOR_ONE_BAD) {
            return new TextEncoding(StandardCharsets.UTF_8, 0);
        }
        return new TextEncoding(SingleByteEvidence.choose(file), 0);
    }

    /** Counts well and badly formed characters beyond ASCII, over chunks. */
    private static final class Utf8Count {
        private final CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        private final ByteBuffer in = ByteBuffer.allocate(CHUNK + 8);
        private final CharBuffer out = CharBuffer.allocate(CHUNK + 8);
        private long bytes;
        private long good;
        private long bad;

        void add(byte[] chunk, int count) {
            bytes += count;
            in.put(chunk, 0, count).flip();
            decode(false);
            in.compact();
        }

        void finish() {
            in.flip();
            decode(true);
        }

        private void decode(boolean last) {
            CoderResult result;
            do {
                result = decoder.decode(in, out, last);
                out.flip();
                while (out.hasRemaining()) {
                    good += out.get() > 0x7f ? 1 : 0;
                }
                out.clear();
                if (result.isError()) {
                    bad++;
                    in.position(in.position() + result.length());
                }
            } while (!result.isUnderflow());
        }
    }
}
