package heeltap.sheet;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Leaves out the characters that are no text. */
final class CleanText extends FilterReader {
    CleanText(Reader in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int c = super.read();
        while (c >= 0 && TextSurvey.isDropped((char) c)) {
            c = super.read();
        }
        return c;
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int count = super.read(target, offset, length);
        while (count > 0) {
            int kept = keep(target, offset, count);
            if (kept > 0) {
                return kept;
            }
            count = super.read(target, offset, length);
        }
        return count;
    }

    private static int keep(char[] target, int offset, int count) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
            char c = target[offset + i];
            if (!TextSurvey.isDropped(c)) {
                target[offset + kept++] = c;
            }
        }
        return kept;
    }
}
