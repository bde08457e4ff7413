package heeltap.cli;

import heeltap.review.Reviews;
import heeltap.source.WithProblems;
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

    Path folder() {
        return folder;
    }

    /** Reads and reviews, and tells every problem; empty where the input cannot be reviewed. */
    Optional<Reviews.Review> review(Console console) {
        try (Progress progress = new Progress(console, quiet)) {
            WithProblems<Optional<Reviews.Input>> input = BarReading.read(folder, Optional.ofNullable(month), progress);
            Optional<Reviews.Review> review = input.value().map(Reviews::of);
            Notices.print(review.map(Reviews.Review::problems).orElse(input.problems()), console, quiet);
            return review;
        }
    }
}
