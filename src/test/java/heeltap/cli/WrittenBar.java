package heeltap.cli;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.quantity.Exact;
import heeltap.review.Reviews;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** A bar folder in memory: comma-separated files with one heading row each, written and reviewed as a user would. */
final class WrittenBar {
    private final Map<String, List<List<String>>> files = new TreeMap<>();

    /** Rows as {@code a|b|c}; the first is the heading. Empty cells stay empty. */
    WrittenBar file(String path, String... rows) {
        List<List<String>> cells = new ArrayList<>();
        for (String row : rows) {
            cells.add(List.of(row.split("\\|", -1)));
        }
        files.put(path, cells);
        return this;
    }

    WrittenBar row(String path, String row) {
        rows(path).add(List.of(row.split("\\|", -1)));
        return this;
    }

    private List<List<String>> rows(String path) {
        return Optional.ofNullable(files.get(path)).orElseThrow(() -> new IllegalArgumentException(path));
    }

    /** Body rows. */
    List<List<String>> body(String path) {
        List<List<String>> rows = rows(path);
        return List.copyOf(rows.subList(1, rows.size()));
    }

    WrittenBar copy() {
        WrittenBar copy = new WrittenBar();
        files.forEach((path, rows) -> copy.files.put(path, new ArrayList<>(rows)));
        return copy;
    }

    /** Every body row of a file replaced by some others. */
    WrittenBar replaced(String path, java.util.function.Function<List<String>, List<List<String>>> change) {
        WrittenBar copy = copy();
        List<List<String>> rows = new ArrayList<>();
        rows.add(rows(path).get(0));
        body(path).forEach(row -> rows.addAll(change.apply(row)));
        copy.files.put(path, rows);
        return copy;
    }

    WrittenBar changed(String path, UnaryOperator<List<String>> change) {
        return replaced(path, row -> List.of(change.apply(row)));
    }

    /** The body rows of the months' files in another order, and half of each in a second file. */
    WrittenBar shuffled(Random random) {
        WrittenBar copy = new WrittenBar();
        files.forEach((path, rows) -> {
            List<List<String>> body = new ArrayList<>(rows.subList(1, rows.size()));
            if (path.startsWith("book/")) {
                copy.files.put(path, new ArrayList<>(rows));
                return;
            }
            Collections.shuffle(body, random);
            int half = body.size() / 2;
            copy.put(path.replace(".csv", "-b.csv"), rows.get(0), body.subList(0, half));
            copy.put(path.replace(".csv", "-a.csv"), rows.get(0), body.subList(half, body.size()));
        });
        return copy;
    }

    private void put(String path, List<String> heading, List<List<String>> body) {
        if (!body.isEmpty()) {
            List<List<String>> rows = new ArrayList<>();
            rows.add(heading);
            rows.addAll(body);
            files.put(path, rows);
        }
    }

    Path write(Path folder) {
        files.forEach((path, rows) -> {
            try {
                Path file = folder.resolve(path);
                Files.createDirectories(file.getParent());
                Files.write(file, rows.stream().map(WrittenBar::line).toList());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return folder;
    }

    private static String line(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.contains(",") ? '"' + cell + '"' : cell)
                .collect(Collectors.joining(","));
    }

    /** The review of a month; the latest where none is named. */
    Reviewed review(Path emptyFolder, String... month) {
        Optional<YearMonth> wanted = month.length == 0 ? Optional.empty() : Optional.of(YearMonth.parse(month[0]));
        return Reviewed.of(write(emptyFolder), wanted);
    }

    /** A finished review with its tables by name. */
    record Reviewed(Reviews.Review review) {
        /** The latest month of a folder. */
        static Reviewed of(Path folder) {
            return of(folder, Optional.empty());
        }

        private static Reviewed of(Path folder, Optional<YearMonth> wanted) {
            PrintStream stream = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
            try (Progress progress = new Progress(Screen.plain(stream), true)) {
                return new Reviewed(Reviews.of(
                        BarReading.read(folder, wanted, progress).value().orElseThrow()));
            }
        }

        Table table(String name) {
            return review.document().tables().stream()
                    .filter(table -> table.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(name));
        }

        /** The rows of a table, some columns left out. */
        List<Map<String, CellValue>> rows(String name, String... without) {
            Table table = table(name);
            List<Map<String, CellValue>> rows = new ArrayList<>();
            for (int i = 0; i < table.rows().size(); i++) {
                Map<String, CellValue> row = new TreeMap<>();
                for (var column : table.columns()) {
                    if (!List.of(without).contains(column.key())) {
                        row.put(column.key(), published(table.cell(i, column.key())));
                    }
                }
                rows.add(row);
            }
            return rows;
        }

        /** The first row whose first column says so. */
        Map<String, CellValue> row(String name, String key) {
            Table table = table(name);
            for (int i = 0; i < table.rows().size(); i++) {
                if (published(table.rows().get(i).cells().get(0)).equals(CellValue.of(key))) {
                    return rows(name).get(i);
                }
            }
            throw new IllegalArgumentException(key);
        }

        /** A word of a closed set as the CSV says it. */
        private static CellValue published(CellValue cell) {
            return cell instanceof CellValue.Term term ? CellValue.of(term.published()) : cell;
        }

        /** A number of a row; zero where the cell is blank. */
        static Exact number(Map<String, CellValue> row, String column) {
            CellValue cell = Optional.ofNullable(row.get(column)).orElseThrow();
            if (cell instanceof CellValue.Figure figure) {
                return figure.number();
            }
            return cell instanceof CellValue.Sum sum ? sum.money().amount() : Exact.ZERO;
        }

        static boolean isBlank(Map<String, CellValue> row, String column) {
            return Optional.ofNullable(row.get(column)).orElseThrow().equals(CellValue.BLANK);
        }

        List<String> findings() {
            return review.summary().findings().stream()
                    .map(finding -> finding.sentence())
                    .toList();
        }
    }
}
