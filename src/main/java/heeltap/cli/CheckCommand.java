package heeltap.cli;

import heeltap.review.Reviews;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code heeltap check}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Checks a month of a bar and writes nothing.",
            "Reads everything as review does and says how each file was understood, what was set aside and what is"
                    + " wrong, with the place and what to do about it."
        })
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private BarArguments bar = new BarArguments();

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<Reviews.Review> review = bar.review(console, true);
        if (review.isEmpty()) {
            return ExitCode.INPUT;
        }
        if (!bar.json()) {
            CheckLines.print(review.get(), console.out());
        }
        bar.printSummary("check", review.get(), Optional.empty(), console);
        return ExitCode.DONE;
    }
}
