package heeltap.load;

import heeltap.record.ColumnRule;
import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Row;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Finds the heading of a table: one to three rows, below any title and filter lines. */
final class LayoutFinder {
    private static final int MOST_HEADING_ROWS = 3;
    /** Enough rows below the heading to see what an unnamed column holds. */
    private static final int LOOK_AHEAD = 40;

    private final FileKind kind;
    private final List<ColumnRule> rules;

    /** @param rules those of this file */
    LayoutFinder(FileKind kind, List<ColumnRule> rules) {
        this.kind = kind;
        this.rules = rules;
    }

    /** The layout of a sheet that begins with these rows, or null where no row names the fields of the kind. */
    @Nullable Layout find(Place sheet, List<Row> rows) {
        Candidate best = null;
        // of equal candidates the one with the fewest heading rows, then the first
        for (int count = 1; count <= MOST_HEADING_ROWS; count++) {
            for (int first = 0; first + count <= rows.size(); first++) {
                Candidate candidate = isAllText(rows, first, count) ? candidate(rows, first, count) : null;
                if (candidate != null
                        && candidate.isComplete(kind)
                        && (best == null || candidate.score() > best.score())) {
                    best = candidate;
                }
            }
        }
        return best == null ? null : best.layout(sheet, rows);
    }

    /** Whether a row names at least two fields and holds nothing but words: the heading of some table. */
    static boolean isHeadingLike(Row row, FileKind kind) {
        Set<Field> fields = new HashSet<>();
        for (Cell cell : row.cells()) {
            HeadingWords.Match match = HeadingWords.find(kind, cell.text());
            if (match != null) {
                fields.add(match.field());
            }
        }
        return fields.size() >= 2 && isAllText(row);
    }

    /** The fields that the best row names, for the message where some are missing. */
    Set<Field> nearest(List<Row> rows) {
        Set<Field> best = Set.of();
        for (int first = 0; first < rows.size(); first++) {
            Set<Field> fields = candidate(rows, first, 1).columns.keySet();
            best = fields.size() > best.size() ? fields : best;
        }
        return best;
    }

    private static boolean isAllText(List<Row> rows, int first, int count) {
        return rows.subList(first, first + count).stream().allMatch(LayoutFinder::isAllText);
    }

    private static boolean isAllText(Row row) {
        if (row.isBlank()) {
            return false;
        }
        for (Cell cell : row.cells()) {
            if (cell.number() != null
                    || cell.moment() != null
                    || NumberText.readings(cell.text()) != NumberText.Readings.NONE
                    || DateText.parse(cell.text()) != null) {
                return false;
            }
        }
        return true;
    }

    private Candidate candidate(List<Row> rows, int first, int count) {
        Map<Integer, String> headings = new TreeMap<>();
        Set<String> signatures = new HashSet<>();
        for (int i = first; i < first + count; i++) {
            Row row = rows.get(i);
            signatures.add(Layout.signature(row));
            boolean spreads = i < first + count - 1;
            spread(row, spreads ? widest(rows, first, count) : -1)
                    .forEach((column, text) -> headings.merge(column, text, (a, b) -> a + " " + b));
        }
        // a column that has only the upper, spread heading has no heading of its own
        if (count > 1) {
            headings.keySet().removeIf(column -> onlySpread(rows, first, count, column));
        }
        Candidate candidate = new Candidate(first, count, headings, signatures, rules(headings));
        headings.forEach((column, text) -> match(candidate, column, lastOwn(rows, first, count, column), text));
        unnamedFirst(candidate, rows);
        return candidate;
    }

    private static boolean onlySpread(List<Row> rows, int first, int count, int column) {
        for (int i = first; i < first + count; i++) {
            if (rows.get(i).find(column).isPresent()) {
                return false;
            }
        }
        return true;
    }

    private static int widest(List<Row> rows, int first, int count) {
        int widest = -1;
        for (int i = first; i < first + count; i++) {
            List<Cell> cells = rows.get(i).cells();
            widest = Math.max(widest, cells.get(cells.size() - 1).column());
        }
        return widest;
    }

    /** The texts of a row by column; an upper heading holds for the blank cells right of it, as merged cells do. */
    private static Map<Integer, String> spread(Row row, int until) {
        Map<Integer, String> texts = new HashMap<>();
        for (Cell cell : row.cells()) {
            texts.put(cell.column(), TextFold.trim(cell.text()));
        }
        String last = "";
        for (int column = 0; column <= until; column++) {
            last = texts.getOrDefault(column, last);
            if (!last.isEmpty()) {
                texts.putIfAbsent(column, last);
            }
        }
        return texts;
    }

    private static String lastOwn(List<Row> rows, int first, int count, int column) {
        for (int i = first + count - 1; i >= first; i--) {
            String own = TextFold.trim(rows.get(i).text(column));
            if (!own.isEmpty()) {
                return own;
            }
        }
        return "";
    }

    /** What Columns says of this file, where the heading is there. */
    private Map<Field, Integer> rules(Map<Integer, String> headings) {
        Map<Field, Integer> mapped = new EnumMap<>(Field.class);
        for (ColumnRule rule : rules) {
            Field field = kind.field(rule.field());
            String heading = TextFold.fold(rule.heading());
            for (Map.Entry<Integer, String> entry : headings.entrySet()) {
                if (field != null && TextFold.fold(entry.getValue()).equals(heading)) {
                    mapped.putIfAbsent(field, entry.getKey());
                }
            }
        }
        return mapped;
    }

    private void match(Candidate candidate, int column, String own, String joined) {
        if (candidate.mapped.containsValue(column)) {
            return;
        }
        HeadingWords.Match match = HeadingWords.find(kind, joined);
        if (match == null) {
            match = HeadingWords.find(kind, own);
        }
        if (match != null && !candidate.mapped.containsKey(match.field())) {
            Integer rank = candidate.ranks.get(match.field());
            if (rank == null || match.rank() < rank) {
                candidate.ranks.put(match.field(), match.rank());
                candidate.columns.put(match.field(), column);
            }
        }
    }

    /** A first column without a heading holds the names where it holds words and nothing else names them. */
    private void unnamedFirst(Candidate candidate, List<Row> rows) {
        Field name = kind == FileKind.INVOICES ? Field.PRODUCT : Field.ITEM;
        boolean wanted = !candidate.columns.containsKey(name) && candidate.columns.size() >= 1;
        if (!wanted || candidate.headings.containsKey(0)) {
            return;
        }
        int words = 0;
        int filled = 0;
        int end = Math.min(rows.size(), candidate.first + candidate.count + LOOK_AHEAD);
        for (int i = candidate.first + candidate.count; i < end; i++) {
            Row row = rows.get(i);
            filled += row.cells().size() > 1 ? 1 : 0;
            words += row.cells().size() > 1 && isWords(row.find(0).orElse(null)) ? 1 : 0;
        }
        if (words > 0 && words * 2 > filled) {
            candidate.columns.put(name, 0);
        }
    }

    private static boolean isWords(@Nullable Cell cell) {
        return cell != null
                && cell.number() == null
                && cell.moment() == null
                && NumberText.readings(cell.text()) == NumberText.Readings.NONE
                && DateText.parse(cell.text()) == null;
    }

    /** One to three rows that may be the heading. */
    private static final class Candidate {
        private final int first;
        private final int count;
        private final Map<Integer, String> headings;
        private final Set<String> signatures;
        private final Map<Field, Integer> mapped;
        private final Map<Field, Integer> columns = new EnumMap<>(Field.class);
        private final Map<Field, Integer> ranks = new EnumMap<>(Field.class);

        Candidate(
                int first,
                int count,
                Map<Integer, String> headings,
                Set<String> signatures,
                Map<Field, Integer> mapped) {
            this.first = first;
            this.count = count;
            this.headings = headings;
            this.signatures = signatures;
            this.mapped = mapped;
            columns.putAll(mapped);
        }

        /** What Columns names counts double. */
        int score() {
            return columns.size() + mapped.size();
        }

        boolean isComplete(FileKind kind) {
            boolean alone = columns.size() >= 2 || headings.size() == 1;
            return alone
                    && kind.required().stream().allMatch(any -> any.stream().anyMatch(columns::containsKey));
        }

        Layout layout(Place sheet, List<Row> rows) {
            return new Layout(
                    sheet,
                    rows.get(first + count - 1).number(),
                    Map.copyOf(columns),
                    Map.copyOf(headings),
                    Set.copyOf(signatures),
                    new ArrayList<>(rows.subList(0, first)),
                    rows.get(first + count - 1).width());
        }
    }
}
