package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built jar, run as its own process the way a user does. */
class JarIT {
    @Test
    void theJarReviewsTheSample(@TempDir Path temp) throws IOException, InterruptedException {
        Path out = temp.resolve("out.txt");
        Path err = temp.resolve("err.txt");
        // Turkish letters and a far zone must change nothing
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.language=tr",
                        "-Duser.country=TR",
                        "-Duser.timezone=Pacific/Kiritimati",
                        "-jar",
                        "target/heeltap.jar",
                        "review",
                        "sample-input",
                        "--out",
                        temp.resolve("reports").toString()))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue())
                .as(Files.readString(err, StandardCharsets.UTF_8))
                .isZero();
        assertThat(Files.readString(out, StandardCharsets.UTF_8)).contains("Hotel Marévane", "99.85% of €39,063.00");
        assertThat(Files.readString(err, StandardCharsets.UTF_8)).doesNotContain("SLF4J", "WARN", "Exception");

        Run here =
                Run.of("review", "sample-input", "--out", temp.resolve("here").toString());
        assertThat(here.code()).isZero();
        assertThat(Files.mismatch(temp.resolve("reports/2026-10-review.pdf"), temp.resolve("here/2026-10-review.pdf")))
                .isEqualTo(-1);
        assertThat(Files.mismatch(
                        temp.resolve("reports/2026-10-review.xlsx"), temp.resolve("here/2026-10-review.xlsx")))
                .isEqualTo(-1);
    }

    /** Fonts, their configuration and the library that finds them are hidden from the process, where the system lets us. */
    @Test
    void theJarNeedsNoFontsOnTheMachine(@TempDir Path temp) throws IOException, InterruptedException {
        assumeTrue(run(temp, "unshare", "-m", "mount", "-t", "tmpfs", "none", "/mnt") == 0);
        String hide = "for folder in /usr/share/fonts /usr/local/share/fonts /etc/fonts; do"
                + " [ ! -d $folder ] || mount -t tmpfs none $folder || exit 90; done;"
                + " find /usr/lib /lib -name 'libfontconfig.so*' | while read library; do"
                + " mount --bind /dev/null $library; done; exec \"$@\"";
        int code = run(
                temp,
                "unshare",
                "-m",
                "sh",
                "-c",
                hide,
                "sh",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                "target/heeltap.jar",
                "review",
                "sample-input",
                "--out",
                temp.resolve("bare").toString());
        assertThat(code).as(Files.readString(temp.resolve("log.txt"))).isZero();
        assertThat(Run.of(
                                "review",
                                "sample-input",
                                "--out",
                                temp.resolve("here").toString())
                        .code())
                .isZero();
        assertThat(Files.mismatch(temp.resolve("bare/2026-10-review.pdf"), temp.resolve("here/2026-10-review.pdf")))
                .isEqualTo(-1);
    }

    private static int run(Path temp, String... command) throws IOException, InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(temp.resolve("log.txt").toFile())
                    .start();
        } catch (IOException e) {
            // no such command on this system
            return -1;
        }
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }
}
