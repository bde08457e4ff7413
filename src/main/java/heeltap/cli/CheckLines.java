package heeltap.cli;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.review.Reviews.Review;
import java.util.List;
import java.util.stream.IntStream;

/** How each file was understood, what was set aside, and the checks that do not hold. */
final class CheckLines {
    private static final List<String> FILE_KEYS = List.of(
            "file",
            "sheet",
            "kind",
            "encoding",
            "delimiter",
            "heading_row",
            "dates",
            "decimals",
            "rows",
            "used",
            "ignored",
            "set_aside",
            "money",
            "set_aside_money",
            "printed_total",
            "holds");
    /** Where there is less room: the sheet stands behind its file, and the encoding behind the kind if it is unusual. */
    private static final List<String> FEWER_FILE_KEYS =
            List.of("file", "kind", "rows", "used", "ignored", "set_aside", "holds");
    /** And how the file was understood in a table of its own. */
    private static final List<String> UNDERSTOOD_KEYS =
            List.of("file", "delimiter", "heading_row", "dates", "decimals", "printed_total");

    private static final int ROOM_FOR_ALL = 200;
    private static final List<String> ASIDE_KEYS =
            List.of("file", "sheet", "row", "text", "reason", "quantity", "money", "nearest");
    private static final List<String> FEWER_ASIDE_KEYS = List.of("file", "row", "text", "reason", "nearest");
    /** Rows to paste into the sheet Names, once they are checked. */
    private static final List<String> NAME_KEYS = List.of("as_written", "means", "in", "times", "rows", "money");

    private static final int MOST_ROWS = 30;

    private CheckLines() {}

    static void print(Review review, Screen screen) {
        SummaryWords words = SummaryWords.in(review.document().language());
        boolean room = !screen.terminal() || screen.width() >= ROOM_FOR_ALL;
        table(find(review, "files"), room ? FILE_KEYS : FEWER_FILE_KEYS, Integer.MAX_VALUE, words, screen);
        if (!room) {
            table(find(review, "files"), UNDERSTOOD_KEYS, Integer.MAX_VALUE, words, screen);
        }
        Table aside = find(review, "set_aside");
        if (!aside.rows().isEmpty()) {
            table(aside, room ? ASIDE_KEYS : FEWER_ASIDE_KEYS, MOST_ROWS, words, screen);
        }
        Table names = find(review, "names_to_add");
        if (!names.rows().isEmpty()) {
            table(names, NAME_KEYS, MOST_ROWS, words, screen);
        }
        Table controls = find(review, "controls");
        for (int row = 0; row < controls.rows().size(); row++) {
            if (controls.cell(row, "holds").equals(CellValue.of(false))) {
                screen.wrapped(
                        words.say(
                                "differs",
                                text(controls.cell(row, "control"), words),
                                text(controls.cell(row, "scope"), words),
                                text(controls.cell(row, "expected"), words),
                                text(controls.cell(row, "found"), words)),
                        0,
                        2);
            }
        }
    }

    private static Table find(Review review, String name) {
        return review.document().tables().stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void table(Table table, List<String> keys, int most, SummaryWords words, Screen screen) {
        screen.heading(table.title());
        int shown = Math.min(most, table.rows().size());
        List<String> headings = keys.stream()
                .map(key -> table.columns().get(table.indexOf(key)).heading())
                .toList();
        List<Boolean> right =
                keys.stream().map(key -> isNumeric(table, key, shown)).toList();
        List<List<String>> rows = IntStream.range(0, shown)
                .mapToObj(row -> keys.stream()
                        .map(key -> cell(table, row, key, keys, words))
                        .toList())
                .toList();
        new TextTable(headings, right, rows).print(screen);
        if (shown < table.rows().size()) {
            screen.println("  " + words.say("more", table.rows().size() - shown));
        }
        screen.println("");
    }

    private static String cell(Table table, int row, String key, List<String> keys, SummaryWords words) {
        String text = text(table.cell(row, key), words);
        if (keys.equals(FEWER_FILE_KEYS) && key.equals("file")) {
            return joined(text, text(table.cell(row, "sheet"), words));
        }
        if (keys.equals(FEWER_FILE_KEYS) && key.equals("kind")) {
            String encoding = text(table.cell(row, "encoding"), words);
            return joined(text, encoding.equals("UTF-8") ? "" : encoding);
        }
        return text;
    }

    private static String joined(String first, String second) {
        return second.isEmpty() ? first : first + ", " + second;
    }

    private static boolean isNumeric(Table table, String key, int rows) {
        return IntStream.range(0, rows)
                .mapToObj(row -> table.cell(row, key))
                .allMatch(value -> value instanceof CellValue.Figure || value instanceof CellValue.Blank);
    }

    private static String text(CellValue value, SummaryWords words) {
        if (value instanceof CellValue.Text text) {
            return text.text().replace('\n', ' ');
        } else if (value instanceof CellValue.Term term) {
            return term.said();
        } else if (value instanceof CellValue.Figure figure) {
            return figure.number().toString();
        } else if (value instanceof CellValue.Sum sum) {
            return sum.money().toString();
        } else if (value instanceof CellValue.YesNo yesNo) {
            return words.say(yesNo.yes() ? "yes" : "no");
        }
        return "";
    }
}
