package heeltap.load;

import heeltap.source.MemorySheet;
import heeltap.source.Problem;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A small book written as text, a row a line with {@code |} between cells; it loads without a problem as it stands. */
final class BookBuilder {
    private final Map<String, String> sheets = new LinkedHashMap<>();

    BookBuilder() {
        sheets.put("settings", "Setting|Value\ncurrency|EUR\nmenu prices include tax|yes");
        sheets.put("drinks", "Drink|Price\nGimlet|11.50");
    }

    BookBuilder with(String sheet, String rows) {
        sheets.put(sheet, rows);
        return this;
    }

    BookBuilder without(String sheet) {
        sheets.remove(sheet);
        return this;
    }

    List<Sheet> sheets() {
        List<Sheet> list = new ArrayList<>();
        sheets.forEach((name, rows) -> list.add(sheet("book/" + name.toLowerCase(Locale.ROOT) + ".csv", rows)));
        return list;
    }

    static Sheet sheet(String file, String rows) {
        List<List<String>> cells = Arrays.stream(rows.split("\n", -1))
                .map(row -> Arrays.asList(row.split("\\|", -1)))
                .toList();
        return MemorySheet.of(file, "", cells);
    }

    WithProblems<LoadedBook> load() {
        return BookLoader.load("my-bar", sheets());
    }

    /** The problems, each as its severity and its message. */
    List<String> problems() {
        return load().problems().stream().map(BookBuilder::text).toList();
    }

    static String text(Problem problem) {
        return problem.severity() + " " + problem.kind() + " " + problem;
    }
}
