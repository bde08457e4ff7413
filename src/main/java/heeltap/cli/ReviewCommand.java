package heeltap.cli;

import heeltap.report.ReportFiles;
import heeltap.review.Reviews;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code heeltap review}. */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = {
            "Reads a month's sales and invoices, works out what every drink costs and earns, suggests prices,"
                    + " reconciles the stock, and writes a PDF for the meeting, a workbook to work in and plain tables.",
            "The bar folder is only read. Either all reports are written or none; reports of an earlier run of the same"
                    + " month are replaced."
        })
final class ReviewCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "BAR_FOLDER", description = "The folder that holds book and the months.")
    private Path folder = Path.of("");

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "MONTH",
            description = "The month to review, such as 2026-10; the latest where none is named.")
    private @Nullable YearMonth month;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the reports go; by default the folder heeltap-out beside the bar folder.")
    private @Nullable Path out;

    @Option(names = "--quiet", description = "No progress and no notices; faults are still told.")
    private boolean quiet;

    ReviewCommand(Console console) {
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
            Path target = target();
            ReportFiles.Written written;
            try {
                written = ReportFiles.write(
                        review.document(), stamp(review.document().month()), target);
            } catch (IOException e) {
                console.err().println("stop: the reports could not be written to " + target + ": " + e.getMessage());
                return ExitCode.WRITE;
            }
            SummaryLines.print(review, List.of(written.pdf(), written.workbook(), written.tables()), console);
            return ExitCode.DONE;
        }
    }

    /** The day after the month, unless the environment fixes another moment for reproducible builds. */
    private static Instant stamp(YearMonth month) {
        String epoch = System.getenv("SOURCE_DATE_EPOCH");
        return epoch != null && epoch.matches("\\d{1,12}")
                ? Instant.ofEpochSecond(Long.parseLong(epoch))
                : ReportFiles.stampOf(month);
    }

    private Path target() {
        if (out != null) {
            return out.toAbsolutePath().normalize();
        }
        Path root = folder.toAbsolutePath().normalize();
        Path parent = root.getParent();
        return (parent == null ? root : parent).resolve("heeltap-out");
    }
}
