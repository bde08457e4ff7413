package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
}
