package heeltap.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows of text under headings, aligned. On a terminal the widest columns give way and their cells go on in further
 * lines; where even that is too wide, each row is told as a list of its headings.
 *
 * @param right whether a column's cells are numbers, which stand at the right
 * @param rows cells by row
 */
record TextTable(List<String> headings, List<Boolean> right, List<List<String>> rows) {
    private static final int GAP = 2;
    private static final int LEAST_COLUMN = 12;

    void print(Screen screen) {
        List<Integer> widths = widths(screen);
        int spare = screen.width() - GAP - GAP * (widths.size() - 1);
        if (screen.terminal()) {
            narrow(widths, spare);
            if (sum(widths) > spare) {
                rows.forEach(row -> stacked(row, screen));
                return;
            }
        }
        line(headings, widths, screen);
        rows.forEach(row -> line(row, widths, screen));
    }

    private List<Integer> widths(Screen screen) {
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < headings.size(); column++) {
            String heading = headings.get(column);
            int widest = screen.terminal() ? longestWord(heading) : heading.length();
            for (List<String> row : rows) {
                widest = Math.max(widest, row.get(column).length());
            }
            widths.add(widest);
        }
        return widths;
    }

    /** Headings are broken between words, so that a column of small numbers stays small. */
    private static int longestWord(String heading) {
        return Arrays.stream(heading.split(" ", -1))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    /** Takes a column at a time from the widest text, as long as it can give. */
    private void narrow(List<Integer> widths, int spare) {
        while (sum(widths) > spare) {
            int widest = -1;
            for (int column = 0; column < widths.size(); column++) {
                boolean canGive = !right.get(column) && widths.get(column) > LEAST_COLUMN;
                if (canGive && (widest < 0 || widths.get(column) > widths.get(widest))) {
                    widest = column;
                }
            }
            if (widest < 0) {
                return;
            }
            widths.set(widest, widths.get(widest) - 1);
        }
    }

    private void line(List<String> cells, List<Integer> widths, Screen screen) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int column = 0; column < cells.size(); column++) {
            List<String> lines = Screen.broken(cells.get(column), Math.max(1, widths.get(column)), true);
            broken.add(lines);
            height = Math.max(height, lines.size());
        }
        for (int i = 0; i < height; i++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < cells.size(); column++) {
                String text = i < broken.get(column).size() ? broken.get(column).get(i) : "";
                String space = " ".repeat(Math.max(0, widths.get(column) - text.length()));
                line.append(" ".repeat(GAP)).append(right.get(column) ? space + text : text + space);
            }
            screen.println(line.toString().stripTrailing());
        }
    }

    private void stacked(List<String> cells, Screen screen) {
        screen.wrapped(cells.get(0), GAP, GAP);
        List<String> told = new ArrayList<>();
        for (int column = 1; column < cells.size(); column++) {
            if (!cells.get(column).isEmpty()) {
                told.add(headings.get(column) + ": " + cells.get(column));
            }
        }
        screen.wrapped(String.join("; ", told), 2 * GAP, 2 * GAP);
    }

    private static int sum(List<Integer> widths) {
        return widths.stream().mapToInt(Integer::intValue).sum();
    }
}
