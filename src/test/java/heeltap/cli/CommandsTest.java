package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
    private static final String SAMPLE = "sample-input";

    @Test
    void wrongUsageIsTwo() {
        assertThat(Run.of().code()).isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("brew").code()).isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("review").code()).isEqualTo(ExitCode.USAGE);
        Run month = Run.of("review", SAMPLE, "October");
        assertThat(month.code()).isEqualTo(ExitCode.USAGE);
        assertThat(month.err()).contains("'October' is no month such as 2026-10");
        assertThat(month.out()).isEmpty();
    }

    @Test
    void helpSaysWhatEachCommandDoes() {
        for (String command : new String[] {"review", "check", "start"}) {
            Run run = Run.of(command, "--help");
            assertThat(run.code()).isZero();
            assertThat(run.out()).contains("Usage: heeltap " + command);
        }
        assertThat(Run.of("review", "--help").out()).contains("suggests prices");
    }

    @Test
    void aMonthThatIsNotThereIsOneAndNothingIsWritten(@TempDir Path temp) {
        Path out = temp.resolve("out");
        Run run = Run.of("review", SAMPLE, "2025-01", "--out", out.toString());
        assertThat(run.code()).isEqualTo(ExitCode.INPUT);
        assertThat(run.err()).contains("The bar folder has no such month.", "It has 2026-09 and 2026-10.");
        assertThat(out).doesNotExist();
    }

    @Test
    void anEmptyFolderAndNoFolderAreOne(@TempDir Path temp) {
        assertThat(Run.of("review", temp.toString()).code()).isEqualTo(ExitCode.INPUT);
        assertThat(Run.of("check", temp.resolve("nowhere").toString()).code()).isEqualTo(ExitCode.INPUT);
    }

    @Test
    void everyFatalFaultIsListedAtOnce(@TempDir Path temp) throws IOException {
        Files.createDirectories(temp.resolve("book"));
        Files.writeString(temp.resolve("book/settings.csv"), "Setting,Value\nlanguage,en\n");
        Run run = Run.of("review", temp.toString());
        assertThat(run.code()).isEqualTo(ExitCode.INPUT);
        assertThat(run.err()).contains("currency", "menu prices include tax", "Drinks", "has no month");
    }

    @Test
    void reportsThatCannotBeWrittenAreThree(@TempDir Path temp) throws IOException {
        Path file = Files.writeString(temp.resolve("taken"), "a file");
        Run run = Run.of("review", SAMPLE, "--out", file.resolve("out").toString());
        assertThat(run.code()).isEqualTo(ExitCode.WRITE);
        assertThat(run.err()).contains("could not be written");
        assertThat(file).hasContent("a file");
    }

    @Test
    void checkWritesNothingAndSaysHowEachFileWasUnderstood(@TempDir Path temp) throws IOException {
        Path bar = copy(Path.of(SAMPLE), temp.resolve("bar"));
        String before = listing(temp);
        Run run = Run.of("check", bar.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("2026-10/sales-2026-10.xlsx", "DUNE GARDEN SPRITZ", "Money joined");
        assertThat(listing(temp)).isEqualTo(before);
    }

    @Test
    void reviewNeverWritesIntoTheBarFolder(@TempDir Path temp) throws IOException {
        Path bar = copy(Path.of(SAMPLE), temp.resolve("bar"));
        String before = listing(bar);
        Run run = Run.of("review", bar.toString());
        assertThat(run.code()).isZero();
        assertThat(listing(bar)).isEqualTo(before);
        assertThat(temp.resolve("heeltap-out/2026-10-review.pdf")).isRegularFile();
        assertThat(temp.resolve("heeltap-out/2026-10-review.xlsx")).isRegularFile();
    }

    @Test
    void aSecondRunGivesTheSameBytes(@TempDir Path temp) throws IOException {
        Run.of("review", SAMPLE, "2026-09", "--out", temp.resolve("a").toString());
        Run.of("review", SAMPLE, "2026-09", "--out", temp.resolve("b").toString());
        try (Stream<Path> files = Files.walk(temp.resolve("a"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path other = temp.resolve("b").resolve(temp.resolve("a").relativize(file));
                assertThat(Files.mismatch(file, other)).as(file.toString()).isEqualTo(-1);
            }
        }
    }

    @Test
    void startMakesABlankBarThatSaysWhatItNeeds(@TempDir Path temp) throws IOException {
        Path bar = temp.resolve("my-bar");
        Run start = Run.of("start", bar.toString());
        assertThat(start.code()).isZero();
        assertThat(bar.resolve("book/drinks.csv")).isRegularFile();
        assertThat(Run.of("start", bar.toString()).code()).isEqualTo(ExitCode.INPUT);
        Files.move(bar.resolve("month"), bar.resolve("2026-10"));
        Run check = Run.of("check", bar.toString());
        assertThat(check.code()).isEqualTo(ExitCode.INPUT);
        assertThat(check.err()).contains("currency");
    }

    static Path copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return to;
    }

    private static String listing(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return String.join(
                    "\n",
                    files.sorted()
                            .map(file -> folder.relativize(file) + " "
                                    + file.toFile().length())
                            .toList());
        }
    }
}
