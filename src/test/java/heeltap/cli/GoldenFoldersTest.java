package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.report.ReportDumps;
import heeltap.review.Reviews;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder under {@code golden/} is a case: {@code input/} is a bar folder, {@code expected/} the files that {@code
 * heeltap review} must give: tables, {@code out.txt}, {@code err.txt}. A table that stands in {@code expected/} is
 * compared whole; one that does not stand there is not looked at. {@code review.txt}, {@code review-workbook.txt} and
 * {@code review-pdf.txt} are the neutral report, the workbook's cells and the PDF's bookmarks and text.
 */
class GoldenFoldersTest {
    private static final Path ROOT = Path.of("src/test/resources/heeltap/golden");
    private static final boolean UPDATE = Boolean.getBoolean("heeltap.golden.update");

    static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(ROOT)) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    @Test
    void everyCaseHasBothHalves() throws IOException {
        assertThat(cases()).isNotEmpty().allSatisfy(folder -> {
            assertThat(folder.resolve("input")).isDirectory();
            assertThat(folder.resolve("expected")).isDirectoryContaining("glob:**");
        });
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theReviewIsAsExpected(Path folder, @TempDir Path out) throws IOException {
        Run run = Run.of(
                "review",
                folder.resolve("input").toString(),
                "--out",
                out.resolve("reports").toString(),
                "--quiet");
        TreeMap<String, String> found = new TreeMap<>();
        found.put("out.txt", "exit code " + run.code() + "\n" + neutral(run.out(), folder, out));
        found.put("err.txt", neutral(run.err(), folder, out));
        Path tables = out.resolve("reports/tables");
        if (Files.isDirectory(tables)) {
            try (Stream<Path> files = Files.list(tables)) {
                files.forEach(file -> found.put(file.getFileName().toString(), read(file)));
            }
        }
        Path expected = folder.resolve("expected");
        dumps(folder, expected, out.resolve("reports"), found);
        if (UPDATE) {
            update(expected, found);
        }
        try (Stream<Path> files = Files.list(expected)) {
            for (Path file : files.sorted().toList()) {
                assertThat(found.get(file.getFileName().toString()))
                        .as(file.toString())
                        .isEqualTo(read(file));
            }
        }
    }

    /** The reports as text, where the folder has them. */
    private static void dumps(Path folder, Path expected, Path reports, Map<String, String> found) throws IOException {
        if (!Files.exists(expected.resolve("review.txt"))) {
            return;
        }
        found.put(
                "review.txt",
                BarReading.read(
                                folder.resolve("input"),
                                Optional.empty(),
                                new Progress(
                                        Screen.plain(new PrintStream(
                                                OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8)),
                                        true))
                        .value()
                        .map(input -> ReportDumps.document(Reviews.of(input).document()))
                        .orElse(""));
        try (Stream<Path> files = Files.list(reports)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                byte[] bytes = Files.readAllBytes(file);
                boolean pdf = file.toString().endsWith(".pdf");
                found.put(
                        pdf ? "review-pdf.txt" : "review-workbook.txt",
                        pdf ? ReportDumps.pdf(bytes) : ReportDumps.workbook(bytes));
            }
        }
    }

    /** Only what stands in the folder is written anew; an empty folder starts with everything. */
    private static void update(Path expected, Map<String, String> found) throws IOException {
        List<Path> present;
        try (Stream<Path> files = Files.list(expected)) {
            present = files.toList();
        }
        for (String name : found.keySet()) {
            if (present.isEmpty() || present.contains(expected.resolve(name))) {
                Files.writeString(expected.resolve(name), found.get(name));
            }
        }
    }

    private static String neutral(String text, Path folder, Path out) {
        return text.replace(out.toAbsolutePath().toString(), "OUT")
                .replace(out.toString(), "OUT")
                .replace(folder.toAbsolutePath().toString(), "CASE")
                .replace(folder.toString(), "CASE");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
