package heeltap.cli;

import java.io.PrintStream;
import java.time.Duration;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** A line of progress on standard error for a step that takes longer than a second; silent otherwise. */
final class Progress implements AutoCloseable {
    private static final long PATIENCE_NANOS = Duration.ofSeconds(1).toNanos();

    private final PrintStream err;
    private final boolean shown;
    private long started = System.nanoTime();
    private String step = "";
    private @Nullable ProgressBar bar;

    Progress(Console console, boolean quiet) {
        this.err = console.err();
        this.shown = console.terminal() && !quiet;
    }

    /** A new step begins. */
    void begin(String name) {
        close();
        step = name;
        started = System.nanoTime();
    }

    /** So many rows, pages or items of the step are done. */
    void done(long count) {
        if (!shown) {
            return;
        }
        if (bar == null && System.nanoTime() - started > PATIENCE_NANOS) {
            bar = new ProgressBarBuilder()
                    .setTaskName(step)
                    .setInitialMax(-1)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setConsumer(new ConsoleProgressBarConsumer(err))
                    .setUpdateIntervalMillis(500)
                    .build();
        }
        if (bar != null) {
            bar.stepTo(count);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }
}
