package heeltap.sheet;

import heeltap.source.Cell;
import heeltap.source.Problem;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A small file, written and opened again, as tests look at it. */
record Opened(List<Sheet> sheets, List<Problem> problems) {
    static Opened text(Path folder, String content) {
        return bytes(folder, "export.csv", content.getBytes(StandardCharsets.UTF_8));
    }

    static Opened text(Path folder, String content, Charset charset) {
        return bytes(folder, "export.csv", content.getBytes(charset));
    }

    static Opened bytes(Path folder, String name, byte[] content) {
        try {
            return file(folder, Files.write(folder.resolve(name), content));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Opened file(Path folder, Path file) {
        WithProblems<List<Sheet>> opened = SheetFiles.open(folder, file);
        return new Opened(opened.value(), opened.problems());
    }

    Sheet sheet() {
        return sheets.get(0);
    }

    List<Row> rows() {
        return rows(sheet());
    }

    static List<Row> rows(Sheet sheet) {
        List<Row> rows = new ArrayList<>();
        sheet.read(rows::add);
        return rows;
    }

    /** Each row as its number and its cells between bars, absent ones empty: {@code 3|Gin||5}. */
    List<String> lines() {
        return rows().stream().map(Opened::line).toList();
    }

    static String line(Row row) {
        StringBuilder line = new StringBuilder().append(row.number());
        int next = 0;
        for (Cell cell : row.cells()) {
            line.append("|".repeat(cell.column() - next + 1)).append(cell.text());
            next = cell.column() + 1;
        }
        return line.toString();
    }

    String encoding() {
        return sheet().facts().encoding();
    }

    String delimiter() {
        return sheet().facts().delimiter();
    }

    /** The rows that the sheet's problems name. */
    List<Integer> oddRows() {
        return sheet().facts().problems().stream()
                .map(problem -> problem.place().row())
                .toList();
    }
}
