package heeltap.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The beginning of a text read under one dialect, and how much it looks like a table then.
 *
 * @param dialect with its usual number of fields
 * @param columns where the columns of a space-aligned text stand; null for a delimited one
 * @param usual the records with the usual number of fields
 * @param score their share of all records that are not blank, less the share of records with stray quotes
 * @param longestRun how many of them follow each other without another one between
 * @param runStart the number of the record that the longest run begins with
 */
record TrialReading(
        Dialect dialect,
        @Nullable SpacedColumns columns,
        List<List<String>> usual,
        double score,
        int longestRun,
        int runStart) {
    private static final double LEAST_SHARE = 0.25;
    private static final int LEAST_RUN = 3;

    /** Two spaces may also stand by chance. */
    private static final double LEAST_SHARE_SPACED = 0.7;

    private static final double LEAST_SHARE_ALIGNED = 0.5;

    static TrialReading delimited(String sample, Dialect dialect) throws IOException {
        QuotedRecords records = new QuotedRecords(new LineReader(new StringReader(sample)), dialect, 0);
        List<List<String>> all = new ArrayList<>();
        int damaged = 0;
        for (List<String> fields = records.next(); fields != null; fields = records.next()) {
            if (!fields.stream().allMatch(Blank::is)) {
                all.add(fields);
                damaged += records.damaged() ? 1 : 0;
            }
        }
        return of(dialect, all, damaged);
    }

    static TrialReading spaced(String sample) throws IOException {
        LineReader lines = new LineReader(new StringReader(sample));
        List<List<String>> all = new ArrayList<>();
        for (String line = lines.next(); line != null; line = lines.next()) {
            if (!Blank.is(line)) {
                all.add(SpacedColumns.pieces(line));
            }
        }
        TrialReading counted = of(Dialect.of(' '), all, 0);
        SpacedColumns columns = SpacedColumns.find(sample, counted.dialect.fields());
        return new TrialReading(
                counted.dialect, columns, counted.usual, counted.score, counted.longestRun, counted.runStart);
    }

    private static TrialReading of(Dialect dialect, List<List<String>> all, int damaged) {
        int fields = usualSize(all);
        List<List<String>> usual =
                all.stream().filter(record -> record.size() == fields).toList();
        int best = 0;
        int bestStart = 0;
        int run = 0;
        for (int i = 0; i < all.size(); i++) {
            run = all.get(i).size() == fields ? run + 1 : 0;
            if (run > best) {
                best = run;
                bestStart = i - run + 1;
            }
        }
        double score = (usual.size() - damaged) / (double) Math.max(1, all.size());
        return new TrialReading(dialect.withFields(fields), null, usual, score, best, bestStart);
    }

    /** The most frequent number of fields of two or more; 1 where no record has two. */
    private static int usualSize(List<List<String>> records) {
        Map<Integer, Integer> counts = new HashMap<>();
        int best = 1;
        for (List<String> record : records) {
            int size = record.size();
            int count = counts.merge(size, 1, Integer::sum);
            if (size > 1 && (best == 1 || count > counts.getOrDefault(best, 0))) {
                best = size;
            }
        }
        return best;
    }

    boolean isTable() {
        if (dialect.delimiter() == ' ') {
            return dialect.fields() > 1
                    && score >= (columns == null ? LEAST_SHARE_SPACED : LEAST_SHARE_ALIGNED)
                    && usual.size() >= LEAST_RUN;
        }
        return dialect.fields() > 1 && (score >= LEAST_SHARE || longestRun >= LEAST_RUN);
    }

    /** Whether the commas that this reading splits at are decimal commas in the fields of the other reading. */
    boolean splitsDecimalsOf(TrialReading other) {
        if (dialect.delimiter() != ',') {
            return false;
        }
        long withComma = 0;
        long decimal = 0;
        for (List<String> record : other.usual) {
            for (String field : record) {
                if (field.indexOf(',') >= 0) {
                    withComma++;
                    decimal += isDecimal(field) ? 1 : 0;
                }
            }
        }
        return withComma > 0 && decimal * 5 >= withComma * 4;
    }

    private static boolean isDecimal(String field) {
        int comma = field.indexOf(',');
        return comma == field.lastIndexOf(',')
                && comma > 0
                && Character.isDigit(field.charAt(comma - 1))
                && comma + 1 < field.length()
                && Character.isDigit(field.charAt(comma + 1));
    }
}
