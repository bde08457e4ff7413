package heeltap.cli;

import heeltap.review.Reviews;
import heeltap.source.WithProblems;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code heeltap check}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Reads everything as review does and says how each file was understood, what was set aside and what is"
                    + " wrong, with the place and what to do about it. Writes nothing."
        })
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "BAR_FOLDER", description = "The folder that holds book and the months.")
    private Path folder = Path.of("");

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "MONTH",
            description = "The month to check, such as 2026-10; the latest where none is named.")
    private @Nullable YearMonth month;

    @Option(names = "--quiet", description = "No progress and no notices; faults are still told.")
    private boolean quiet;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        try (Progress progress = new Progress(console, quiet)) {
            WithProblems<Optional<Reviews.Input>> input = BarReading.read(folder, Optional.ofNullable(month), progress);
            if (input.value().isEmpty()) {
                Notices.print(input.problems(), console, quiet);
                return ExitCode.INPUT;
            }
            Reviews.Review review = Reviews.of(input.value().get());
            Notices.print(review.problems(), console, quiet);
            CheckLines.print(review, console);
            SummaryLines.print(review, List.of(), console);
            return ExitCode.DONE;
        }
    }
}
