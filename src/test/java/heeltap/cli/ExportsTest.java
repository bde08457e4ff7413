package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.sheet.CellsWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each folder under {@code exports/} is an odd export with what must be made of it. {@code month/} holds the files of
 * October 2026, byte for byte; {@code NAME.xlsx.cells} is made a workbook by {@link CellsWorkbook}. {@code book/}, if
 * it is there, replaces sheets of the book all cases share, {@code exports/book}. {@code expected.txt} says what is
 * read, in the lines of {@link ReadMonth}; {@code …} in it stands for any text.
 *
 * <p>What is expected was written by hand from the contract of inputs, never copied from what the program gave.
 */
class ExportsTest {
    private static final Path ROOT = Path.of("src/test/resources/heeltap/exports");
    private static final Path BOOK = ROOT.resolve("book");

    @TempDir
    Path temp = Path.of("");

    private static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(ROOT)) {
            return folders.filter(Files::isDirectory)
                    .filter(folder -> !folder.equals(BOOK))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void everyCaseHasBothHalves() throws IOException {
        assertThat(cases()).hasSizeGreaterThan(20).allSatisfy(folder -> {
            assertThat(folder.resolve("month")).isDirectory();
            assertThat(folder.resolve("expected.txt")).isNotEmptyFile();
        });
    }

    @TestFactory
    Stream<DynamicTest> exports() throws IOException {
        return cases().stream().map(folder -> DynamicTest.dynamicTest(name(folder), () -> check(folder)));
    }

    private static String name(Path folder) {
        return String.valueOf(folder.getFileName());
    }

    private void check(Path folder) throws IOException {
        Path bar = temp.resolve(name(folder));
        copy(BOOK, bar.resolve("book"));
        if (Files.isDirectory(folder.resolve("book"))) {
            copy(folder.resolve("book"), bar.resolve("book"));
        }
        copy(folder.resolve("month"), bar.resolve("2026-10"));
        PrintStream quiet = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        var read = BarReading.read(bar, Optional.of(YearMonth.of(2026, 10)), new Progress(Screen.plain(quiet), true));
        List<String> found = ReadMonth.lines(read.value().orElseThrow().months().get(0), read.problems());
        List<String> expected = Files.readAllLines(folder.resolve("expected.txt"));
        assertThat(fitted(found, expected)).as(folder.toString()).isEqualTo(String.join("\n", expected));
    }

    /** The lines found, those that an expected line fits put as it puts them, so that only differences show. */
    private static String fitted(List<String> found, List<String> expected) {
        List<String> lines = new ArrayList<>();
        List<String> left = new ArrayList<>(expected);
        for (String line : found) {
            String fit = left.stream()
                    .filter(wanted -> pattern(wanted).matcher(line).matches())
                    .findFirst()
                    .orElse(line);
            left.remove(fit);
            lines.add(fit);
        }
        return String.join("\n", lines);
    }

    private static Pattern pattern(String expected) {
        return Pattern.compile(
                Stream.of(expected.split("…", -1)).map(Pattern::quote).collect(Collectors.joining(".*")));
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        List<Path> entries;
        try (Stream<Path> listed = Files.list(from)) {
            entries = listed.sorted().toList();
        }
        for (Path entry : entries) {
            String name = name(entry);
            if (Files.isDirectory(entry)) {
                copy(entry, to.resolve(name));
            } else if (name.endsWith(".cells")) {
                CellsWorkbook.write(
                        Files.readAllLines(entry), to.resolve(name.substring(0, name.length() - ".cells".length())));
            } else {
                Files.copy(entry, to.resolve(name), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
