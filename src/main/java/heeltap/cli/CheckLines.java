package heeltap.cli;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.review.Reviews.Review;
import java.util.List;
import java.util.Locale;

/** How each file was understood, as an aligned table of text. */
final class CheckLines {
    private static final List<String> FILE_KEYS =
            List.of("file", "sheet", "kind", "encoding", "rows", "used", "ignored", "set_aside", "holds");
    private static final List<String> ASIDE_KEYS = List.of("file", "row", "text", "reason", "nearest");
    private static final int MOST_ROWS = 30;

    private CheckLines() {}

    static void print(Review review, Console console) {
        table(find(review, "files"), FILE_KEYS, Integer.MAX_VALUE, console);
        Table aside = find(review, "set_aside");
        if (!aside.rows().isEmpty()) {
            table(aside, ASIDE_KEYS, MOST_ROWS, console);
        }
        Table controls = find(review, "controls");
        for (int row = 0; row < controls.rows().size(); row++) {
            if (!text(controls.cell(row, "holds")).equals("yes")) {
                console.out()
                        .println("Does not hold: " + text(controls.cell(row, "control")) + " ("
                                + text(controls.cell(row, "scope")) + "): " + text(controls.cell(row, "expected"))
                                + " expected, " + text(controls.cell(row, "found")) + " found");
            }
        }
    }

    private static Table find(Review review, String name) {
        return review.document().tables().stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void table(Table table, List<String> keys, int most, Console console) {
        console.out().println(console.strong(table.title()));
        int[] widths = keys.stream()
                .mapToInt(key -> Math.max(heading(table, key).length(), widest(table, key, most)))
                .toArray();
        line(keys.stream().map(key -> heading(table, key)).toList(), widths, console);
        int rows = Math.min(most, table.rows().size());
        for (int row = 0; row < rows; row++) {
            int index = row;
            line(keys.stream().map(key -> text(table.cell(index, key))).toList(), widths, console);
        }
        if (rows < table.rows().size()) {
            console.out().println("  and " + (table.rows().size() - rows) + " more; the review lists them all");
        }
        console.out().println();
    }

    private static void line(List<String> cells, int[] widths, Console console) {
        StringBuilder line = new StringBuilder("  ");
        for (int i = 0; i < widths.length; i++) {
            line.append(String.format(Locale.ROOT, "%-" + Math.max(1, widths[i]) + "s  ", cells.get(i)));
        }
        console.out().println(line.toString().stripTrailing());
    }

    private static String heading(Table table, String key) {
        return table.columns().get(table.indexOf(key)).heading();
    }

    private static int widest(Table table, String key, int most) {
        int widest = 0;
        for (int row = 0; row < Math.min(most, table.rows().size()); row++) {
            widest = Math.max(widest, text(table.cell(row, key)).length());
        }
        return widest;
    }

    private static String text(CellValue value) {
        if (value instanceof CellValue.Text text) {
            return text.text().replace('\n', ' ');
        } else if (value instanceof CellValue.Figure figure) {
            return figure.number().toString();
        } else if (value instanceof CellValue.Sum sum) {
            return sum.money().toString();
        } else if (value instanceof CellValue.YesNo yesNo) {
            return yesNo.yes() ? "yes" : "no";
        }
        return "";
    }
}
