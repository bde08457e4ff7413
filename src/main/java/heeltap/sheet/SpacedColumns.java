package heeltap.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the columns of a text that is aligned with spaces stand.
 *
 * @param starts the first character of each column over all of its lines
 * @param ends the character behind the last one
 */
record SpacedColumns(List<Integer> starts, List<Integer> ends) {
    /** The texts of a line that two or more spaces part. */
    static List<String> pieces(String line) {
        return spans(line).stream()
                .map(span -> line.substring(span[0], span[1]))
                .toList();
    }

    /** The columns of the lines with that many pieces; null where they overlap, so that nothing is aligned. */
    static @Nullable SpacedColumns find(String sample, int count) throws IOException {
        List<Integer> starts = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        LineReader lines = new LineReader(new StringReader(sample));
        for (String line = lines.next(); line != null; line = lines.next()) {
            List<int[]> spans = spans(line);
            if (spans.size() != count) {
                continue;
            }
            for (int i = 0; i < count; i++) {
                if (starts.size() < count) {
                    starts.add(spans.get(i)[0]);
                    ends.add(spans.get(i)[1]);
                } else {
                    starts.set(i, Math.min(starts.get(i), spans.get(i)[0]));
                    ends.set(i, Math.max(ends.get(i), spans.get(i)[1]));
                }
            }
        }
        for (int i = 1; i < starts.size(); i++) {
            if (starts.get(i) < ends.get(i - 1)) {
                return null;
            }
        }
        return starts.isEmpty() ? null : new SpacedColumns(List.copyOf(starts), List.copyOf(ends));
    }

    /** The line's texts, each in the column it stands under. */
    List<String> split(String line) {
        List<String> fields = new ArrayList<>();
        for (int[] span : spans(line)) {
            int column = Math.max(fields.size(), columnOf(span));
            while (fields.size() < column) {
                fields.add("");
            }
            fields.add(line.substring(span[0], span[1]));
        }
        return fields;
    }

    private int columnOf(int[] span) {
        for (int i = 0; i < starts.size(); i++) {
            if (span[0] < ends.get(i) && starts.get(i) < span[1]) {
                return i;
            }
        }
        return 0;
    }

    private static List<int[]> spans(String line) {
        List<int[]> spans = new ArrayList<>();
        int length = LineReader.contentLength(line);
        int start = -1;
        int end = 0;
        for (int i = 0; i < length; i++) {
            if (line.charAt(i) == ' ') {
                continue;
            }
            if (start >= 0 && i - end >= 2) {
                spans.add(new int[] {start, end});
                start = i;
            }
            start = start < 0 ? i : start;
            end = i + 1;
        }
        if (start >= 0) {
            spans.add(new int[] {start, end});
        }
        return spans;
    }
}
