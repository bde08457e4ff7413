package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.source.Place;
import heeltap.source.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The smallest book that causes each problem, and the exact messages. The catalogue {@code book-problems.txt} holds
 * cases of a title, the sheets that differ from the smallest book, and the messages expected.
 */
class BookProblemsTest {
    private static final String CATALOGUE = "book-problems.txt";

    @Test
    void theSmallestBookHasNone() {
        assertThat(new BookBuilder().problems()).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyProblemIsSaidExactly() throws IOException {
        List<List<String>> cases = cases();
        assertThat(cases).hasSizeGreaterThan(40);
        if ("write".equals(System.getProperty("heeltap.catalogue"))) {
            write(cases);
        }
        return cases.stream()
                .map(one -> DynamicTest.dynamicTest(one.get(0), () -> {
                    List<String> found = book(one).problems();
                    assertThat(found).isNotEmpty();
                    assertThat(found)
                            .isEqualTo(one.stream()
                                    .filter(line -> line.startsWith("> "))
                                    .map(line -> line.substring(2))
                                    .toList());
                }));
    }

    private static void write(List<List<String>> cases) throws IOException {
        List<String> lines = new ArrayList<>();
        for (List<String> one : cases) {
            one.stream().filter(line -> !line.startsWith("> ")).forEach(lines::add);
            book(one).problems().forEach(problem -> lines.add("> " + problem));
        }
        Files.write(Path.of("src/test/resources/heeltap/load", CATALOGUE), lines);
    }

    private static List<List<String>> cases() throws IOException {
        List<List<String>> cases = new ArrayList<>();
        try (var in = Objects.requireNonNull(BookProblemsTest.class.getResourceAsStream(CATALOGUE))) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                if (line.startsWith("# ")) {
                    cases.add(new ArrayList<>());
                }
                cases.get(cases.size() - 1).add(line);
            }
        }
        return cases;
    }

    private static BookBuilder book(List<String> lines) {
        BookBuilder builder = new BookBuilder();
        String sheet = "";
        List<String> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            if (line.startsWith("[")) {
                put(builder, sheet, rows);
                sheet = line.substring(1, line.length() - 1);
                rows = new ArrayList<>();
            } else if (!line.startsWith("> ")) {
                rows.add(line);
            }
        }
        put(builder, sheet, rows);
        return builder;
    }

    private static void put(BookBuilder builder, String sheet, List<String> rows) {
        if (rows.equals(List.of("-"))) {
            builder.without(sheet);
        } else if (!rows.isEmpty()) {
            builder.with(sheet, String.join("\n", rows));
        }
    }

    @Test
    void twoBooksAreTheCallersToRefuse() {
        Problem problem = BookProblems.secondBook("book.xlsx", "book");
        assertThat(BookBuilder.text(problem))
                .isEqualTo("FATAL FILE_TWICE book: The bar folder holds two books, book.xlsx and book. "
                        + "Keep the one that holds and move the other out of the folder.");
        assertThat(problem.place()).isEqualTo(Place.of("book"));
    }

    @Test
    void oneSheetInTwoFilesIsRefused() {
        BookBuilder builder = new BookBuilder();
        var sheets = new ArrayList<>(builder.sheets());
        sheets.add(BookBuilder.sheet("book/Drinks.tsv", "Drink|Price\nSidecar|12"));
        assertThat(BookLoader.load("my-bar", sheets).problems())
                .extracting(BookBuilder::text)
                .containsExactly(
                        "FATAL FILE_TWICE book/Drinks.tsv: \"Drinks\": The book has this sheet twice; the other is "
                                + "book/drinks.csv. Keep one of them.");
    }
}
