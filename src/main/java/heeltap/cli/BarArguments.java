package heeltap.cli;

import heeltap.report.ReportFiles;
import heeltap.review.Reviews;
import heeltap.source.WithProblems;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands that read a bar folder have in common. */
final class BarArguments {
    @Parameters(index = "0", paramLabel = "BAR_FOLDER", description = "The folder that holds book and the months.")
    private Path folder = Path.of("");

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "MONTH",
            description = "The month, such as 2026-10; the latest where none is named.")
    private @Nullable YearMonth month;

    @Option(names = "--quiet", description = "No progress and no notices; faults are still told.")
    private boolean quiet;

    @Option(names = "--json", description = "Print the summary as JSON for scripts, and nothing else.")
    private boolean json;

    Path folder() {
        return folder;
    }

    boolean json() {
        return json;
    }

    Progress progress(Console console) {
        return new Progress(console.err(), quiet);
    }

    /**
     * Reads and reviews, and tells every problem; empty where the input cannot be reviewed.
     *
     * @param all every notice, however many are alike
     */
    Optional<Reviews.Review> review(Console console, boolean all) {
        WithProblems<Optional<Reviews.Input>> input;
        Optional<Reviews.Review> review;
        try (Progress progress = progress(console)) {
            input = BarReading.read(folder, Optional.ofNullable(month), progress);
            progress.begin("Working it out");
            review = input.value().map(Reviews::of);
        } catch (UncheckedIOException e) {
            console.err().println("stop: " + folder + " could not be read: " + e.getMessage());
            return Optional.empty();
        }
        Notices.print(review.map(Reviews.Review::problems).orElse(input.problems()), console.err(), quiet, all);
        return review;
    }

    /** The end of a command: what was read and, where they were written, where the reports are. */
    void printSummary(String command, Reviews.Review review, Optional<ReportFiles.Written> reports, Console console) {
        if (json) {
            SummaryJson.print(command, review, reports, console.out());
        } else {
            SummaryLines.print(review, reports, console.out());
        }
    }
}
