package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person sees on a terminal, and what a script sees in a pipe. */
class TerminalTest {
    private static final String SAMPLE = "sample-input";
    private static final String ESCAPE = "\u001b";

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 132})
    void everyLineFitsTheTerminal(int width) {
        Run run = Run.onTerminal(width, false, "check", SAMPLE, "2026-09");
        assertThat(run.code()).isZero();
        assertThat(run.out().lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.length())
                        .as(line)
                        .isLessThanOrEqualTo(line.contains("brinewater-BW") ? Math.max(46, width) : width));
        assertThat(run.out()).contains("Money joined", "Findings");
    }

    @Test
    void aLongFindingGoesOnUnderItself() {
        List<String> lines =
                Run.onTerminal(80, false, "check", SAMPLE).out().lines().toList();
        int first = lines.indexOf(lines.stream()
                .filter(line -> line.startsWith("  Findings      "))
                .findFirst()
                .orElseThrow());
        assertThat(lines.subList(first + 1, lines.size()))
                .hasSizeGreaterThan(3)
                .allSatisfy(line -> assertThat(line).startsWith(" ".repeat(16)).doesNotMatch(" {17}.*"));
    }

    @Test
    void manyUncountedIngredientsAreToldInOneLine(@TempDir Path temp) throws IOException {
        Path bar = CommandsTest.copy(Path.of(SAMPLE), temp.resolve("bar"));
        Path counts = bar.resolve("2026-10/stock.csv");
        List<String> lines = Files.readAllLines(counts);
        Files.write(counts, lines.subList(0, 4));
        List<String> told = Run.of("check", bar.toString())
                .err()
                .lines()
                .filter(line -> line.contains("not counted"))
                .toList();
        assertThat(told).hasSize(1);
        assertThat(told.get(0))
                .matches(".*: \\d+ ingredients were not counted.*: White rum, house pour; .* and \\d+ more,.*");
    }

    @Test
    void aPathIsNeverBroken(@TempDir Path temp) {
        Path out = temp.resolve("a folder whose name goes on and on, for longer than a terminal is wide");
        Run run = Run.onTerminal(80, false, "review", SAMPLE, "2026-09", "--out", out.toString());
        assertThat(run.out().lines())
                .contains("  PDF           " + out.resolve("2026-09-review.pdf").toAbsolutePath());
    }

    @Test
    void colourOnlyWhereItIsWelcome() {
        assertThat(Run.onTerminal(80, true, "check", SAMPLE).out()).contains(ESCAPE + "[1mFiles read" + ESCAPE + "[0m");
        assertThat(Run.onTerminal(80, false, "check", SAMPLE).out()).doesNotContain(ESCAPE);
        assertThat(new Screen(System.out, false, true, 80).colour()).isFalse();
        Run piped = Run.of("check", SAMPLE);
        assertThat(piped.out() + piped.err()).doesNotContain(ESCAPE, "\r", "Working");
        assertThat(Terminals.wantsColour(Map.of())).isTrue();
        assertThat(Terminals.wantsColour(Map.of("NO_COLOR", ""))).isTrue();
        assertThat(Terminals.wantsColour(Map.of("NO_COLOR", "1"))).isFalse();
        assertThat(Terminals.wantsColour(Map.of("TERM", "dumb"))).isFalse();
    }

    @Test
    void aFileIsNoTerminal(@TempDir Path temp) throws IOException {
        Path file = Files.createFile(temp.resolve("out.txt"));
        assertThat(Terminals.screen(System.out, file, Map.of("COLUMNS", "100")).terminal())
                .isFalse();
        assertThat(Terminals.width(Map.of("COLUMNS", "100"))).isEqualTo(100);
        assertThat(Terminals.width(Map.of("COLUMNS", "wide"))).isGreaterThanOrEqualTo(20);
    }

    @Test
    void progressIsShownOnATerminalAfterAWhileAndWipedAway() throws InterruptedException {
        assertThat(progress(true, false, Duration.ZERO))
                .contains("\rReading 2026-10 [")
                .contains("1,000 rows")
                .endsWith(" \r")
                .doesNotContain("\n");
        assertThat(progress(true, false, Duration.ofHours(1))).isEmpty();
        assertThat(progress(true, true, Duration.ZERO)).isEmpty();
        assertThat(progress(false, false, Duration.ZERO)).isEmpty();
    }

    private static String progress(boolean terminal, boolean quiet, Duration patience) throws InterruptedException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        try (Progress progress = new Progress(new Screen(stream, terminal, false, 80), quiet, patience)) {
            progress.begin("Reading 2026-10");
            progress.done(1000);
            Thread.sleep(10);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void jsonSaysTheSameAndNothingElse(@TempDir Path temp) throws IOException {
        Run run = Run.of("review", SAMPLE, "2026-10", "--json", "--out", temp.toString());
        assertThat(run.code()).isZero();
        JsonNode json = new ObjectMapper().readTree(run.out());
        List<String> keys = new ArrayList<>();
        json.fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactly(
                        "command",
                        "bar",
                        "month",
                        "language",
                        "currency",
                        "files_read",
                        "rows_set_aside",
                        "till_money",
                        "joined_money",
                        "set_aside_money",
                        "joined_percent",
                        "checks",
                        "checks_held",
                        "faults",
                        "notes",
                        "findings",
                        "reports");
        String readme = Files.readString(Path.of("README.md"));
        assertThat(keys).allSatisfy(key -> assertThat(readme).contains("`" + key + "`"));
        // the figures that SampleBarTest holds against an independent calculation
        assertThat(run.out()).contains("\"till_money\": 39063.00,", "\"joined_percent\": 99.854082,");
        assertThat(json.get("month").asText()).isEqualTo("2026-10");
        assertThat(json.get("rows_set_aside").asInt()).isEqualTo(6);
        assertThat(json.get("findings")).hasSize(3);
        assertThat(Path.of(json.get("reports").get("pdf").asText())).isRegularFile();

        Run check = Run.of("check", SAMPLE, "2026-10", "--json");
        JsonNode checked = new ObjectMapper().readTree(check.out());
        assertThat(checked.get("reports").isNull()).isTrue();
        assertThat(checked.get("findings")).isEqualTo(json.get("findings"));
        assertThat(Run.of("check", SAMPLE, "2025-01", "--json").out()).isEmpty();
    }

    @Test
    void theBarsLanguageSpeaksWhateverTheMachines(@TempDir Path temp) throws IOException {
        Path bar = CommandsTest.copy(
                Path.of("src/test/resources/heeltap/golden/nested-preparations/input"), temp.resolve("bar"));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Run english = Run.of("check", bar.toString());
            assertThat(english.out()).contains("Files read").doesNotContain("Dateien");
            Files.writeString(
                    bar.resolve("book/settings.csv"),
                    "Setting,Value\ncurrency,EUR\nlanguage,it\nmenu prices include tax,no\n");
            assertThat(Run.of("check", bar.toString()).out()).contains("File letti", "Denaro unito");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void noticesStandByFileWithWhatToDoOnce() {
        List<Problem> problems = new ArrayList<>();
        for (int row = 2; row < 10; row++) {
            problems.add(Problem.notice(
                    ProblemKind.VALUE_DOUBTFUL,
                    Place.of("book/specs.csv").withRow(row),
                    "Mint " + row,
                    "Odd.",
                    "Look."));
        }
        problems.add(Problem.fatal(ProblemKind.SHEET_MISSING, Place.of("book"), "", "No sheet Drinks.", "Add it."));
        assertThat(notices(problems, true, false)).isEqualTo("""
                Stop: one fault is in the way of a review
                  book
                    No sheet Drinks.
                      -> Add it.

                8 notes
                  book/specs.csv
                    row 2: "Mint 2": Odd.
                    row 3: "Mint 3": Odd.
                    row 4: "Mint 4": Odd.
                    row 5: "Mint 5": Odd.
                    row 6: "Mint 6": Odd.
                    and 3 more like these; heeltap check names them all
                      -> Look.

                """);
        assertThat(notices(problems, true, true))
                .contains("row 9: \"Mint 9\": Odd.")
                .doesNotContain("more like");
        assertThat(notices(problems, false, false).lines())
                .hasSize(9)
                .startsWith(
                        "stop: book: No sheet Drinks. Add it.", "note: book/specs.csv, row 2: \"Mint 2\": Odd. Look.");
    }

    private static String notices(List<Problem> problems, boolean terminal, boolean all) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        Notices.print(problems, new Screen(stream, terminal, false, 80), false, all);
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    @Test
    void monthsAreToldInWords() {
        YearMonth first = YearMonth.of(2025, 1);
        assertThat(BarFolder.inWords(List.of(first))).isEqualTo("2025-01");
        assertThat(BarFolder.inWords(List.of(first, first.plusMonths(1), first.plusMonths(2))))
                .isEqualTo("2025-01, 2025-02 and 2025-03");
        List<YearMonth> many =
                IntStream.range(0, 30).mapToObj(first::plusMonths).toList();
        assertThat(BarFolder.inWords(many)).isEqualTo("30 months, the first 2025-01 and the last 2027-06");
    }
}
