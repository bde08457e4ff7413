package heeltap.cli;

import heeltap.report.ReportFiles;
import heeltap.review.Reviews;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code heeltap review}. */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = {
            "Reviews a month of a bar and writes the reports.",
            "Reads a month's sales and invoices, works out what every drink costs and earns, suggests prices,"
                    + " reconciles the stock, and writes a PDF for the meeting, a workbook to work in and plain tables.",
            "The bar folder is only read. Either all reports are written or none; reports of an earlier run of the same"
                    + " month are replaced."
        })
final class ReviewCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private BarArguments bar = new BarArguments();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the reports go; by default the folder heeltap-out beside the bar folder.")
    private @Nullable Path out;

    ReviewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<Reviews.Review> review = bar.review(console, false);
        if (review.isEmpty()) {
            return ExitCode.INPUT;
        }
        Path target = target();
        ReportFiles.Written written;
        try (Progress progress = bar.progress(console)) {
            progress.begin("Writing the reports");
            written = ReportFiles.write(
                    review.get().document(), stamp(review.get().document().month()), target);
        } catch (IOException e) {
            console.err().println("stop: the reports could not be written to " + target + ": " + e.getMessage());
            return ExitCode.WRITE;
        }
        bar.printSummary("review", review.get(), Optional.of(written), console);
        return ExitCode.DONE;
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
        Path root = bar.folder().toAbsolutePath().normalize();
        Path parent = root.getParent();
        return (parent == null ? root : parent).resolve("heeltap-out");
    }
}
