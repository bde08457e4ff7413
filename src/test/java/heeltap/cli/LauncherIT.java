package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The application folder, unpacked somewhere else and run the way somebody without Java does: no JAVA_HOME, no PATH to
 * a Java of the machine's own.
 */
class LauncherIT {
    @TempDir
    private static Path temp;

    private static Path launcher = Path.of("");

    @BeforeAll
    static void unpack() throws IOException {
        assumeFalse(
                Files.exists(Path.of("target/application/not-made.txt")), "this JDK cannot make an application folder");
        Path built = Path.of("target/application");
        Path elsewhere = CommandsTest.copy(built, temp.resolve("some where else"));
        try (Stream<Path> files = Files.walk(elsewhere, 4)) {
            launcher = files.filter(Files::isRegularFile)
                    .filter(file ->
                            file.toString().replace('\\', '/').matches(".*/(bin|MacOS|heeltap)/heeltap(\\.exe)?"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void startsChecksAndReviews() throws IOException, InterruptedException {
        Path bar = temp.resolve("my-bar");
        assertThat(run("start", bar.toString()).code()).isZero();
        assertThat(bar.resolve("book/drinks.csv")).isRegularFile();
        Run check = run("check", bar.toString());
        assertThat(check.code()).isEqualTo(ExitCode.INPUT);
        assertThat(check.err()).contains("stop: book/settings.csv");
        assertThat(run("brew").code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void writesTheSameBytesAsHere() throws IOException, InterruptedException {
        Run there = run(
                "review",
                Path.of("sample-input").toAbsolutePath().toString(),
                "--out",
                temp.resolve("there").toString());
        assertThat(there.code()).as(there.err()).isZero();
        assertThat(there.err()).doesNotContain("SLF4J", "WARN", "Exception", "[cds]");
        assertThat(there.out()).contains("Hotel Marévane", "99.85% of €39,063.00");
        Run here =
                Run.of("review", "sample-input", "--out", temp.resolve("here").toString());
        assertThat(here.code()).isZero();
        try (Stream<Path> files = Files.walk(temp.resolve("here"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path other = temp.resolve("there").resolve(temp.resolve("here").relativize(file));
                assertThat(Files.mismatch(file, other)).as(file.toString()).isEqualTo(-1);
            }
        }
    }

    @Test
    void aDroppedFolderIsReviewedBesideItself() throws IOException, InterruptedException {
        Path bar = CommandsTest.copy(
                Path.of("src/test/resources/heeltap/golden/nested-preparations/input"), temp.resolve("dropped/bar"));
        assertThat(run(bar.toString()).code()).isZero();
        assertThat(temp.resolve("dropped/heeltap-out/tables/drinks.csv")).isRegularFile();
    }

    @Test
    void theSharedClassesFitTheRuntimeWhereverTheFolderIs() throws IOException, InterruptedException {
        Path archive = find("heeltap.jsa");
        assertThat(find("heeltap.cfg")).content().contains("-XX:SharedArchiveFile=$APPDIR/heeltap.jsa");
        // with -Xshare:on the runtime refuses to start on an archive that does not fit
        Run with = run(List.of(
                find("java(\\.exe)?").toString(),
                "-Xshare:on",
                "-XX:+UseSerialGC",
                "-XX:SharedArchiveFile=" + archive,
                "-Xlog:class+load:stdout",
                "-version"));
        assertThat(with.code()).as(with.err()).isZero();
        assertThat(with.out()).contains("java.lang.Object source: shared objects file");
        Files.move(archive, archive.resolveSibling("away"));
        Run without = run("--version");
        Files.move(archive.resolveSibling("away"), archive);
        assertThat(without).isEqualTo(new Run(0, Main.VERSION + System.lineSeparator(), ""));
    }

    private static Path find(String name) throws IOException {
        try (Stream<Path> files = Files.walk(temp.resolve("some where else"))) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.getFileName().toString().matches(name))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static Run run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        return run(command);
    }

    private static Run run(List<String> command) throws IOException, InterruptedException {
        Path out = temp.resolve("out.txt");
        Path err = temp.resolve("err.txt");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().keySet().removeIf(name -> name.contains("JAVA") || name.equals("PATH"));
        Process process = builder.start();
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        return new Run(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
