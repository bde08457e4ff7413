package heeltap.cli;

import java.time.Duration;
import java.util.Locale;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressState;
import org.jspecify.annotations.Nullable;

/** A line of progress on a terminal for a step that takes longer than a second; silent otherwise. */
final class Progress implements AutoCloseable {
    private static final Duration USUAL_PATIENCE = Duration.ofSeconds(1);
    private static final int UPDATE_MILLIS = 250;
    private static final int BAR = 20;
    private static final int BLOCK = 4;

    private final Screen err;
    private final boolean shown;
    private final Duration patience;
    private @Nullable ProgressBar bar;

    Progress(Screen err, boolean quiet) {
        this(err, quiet, USUAL_PATIENCE);
    }

    /** @param patience how long a step may take before it is shown */
    Progress(Screen err, boolean quiet, Duration patience) {
        this.err = err;
        this.shown = err.terminal() && !quiet;
        this.patience = patience;
    }

    /** A new step begins, and the one before it is done. */
    void begin(String step) {
        close();
        if (shown) {
            bar = new ProgressBarBuilder()
                    .setTaskName(step)
                    .setInitialMax(-1)
                    .continuousUpdate()
                    .clearDisplayOnFinish()
                    .setRenderer(Progress::line)
                    .setConsumer(new PatientLine(err, patience))
                    .setUpdateIntervalMillis(UPDATE_MILLIS)
                    .build();
        }
    }

    /** So many rows of the step are done. */
    void done(long rows) {
        if (bar != null) {
            bar.stepTo(rows);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }

    /** {@code Reading 2026-10 [    ====            ] 0:05  163,840 rows}; how much is still to come is not known. */
    private static String line(ProgressState state, int width) {
        Duration time = state.getElapsedAfterStart();
        int free = BAR - BLOCK;
        int swing = (int) (time.toMillis() / UPDATE_MILLIS % (2L * free));
        int at = swing <= free ? swing : 2 * free - swing;
        String rows = state.getCurrent() > 0 ? String.format(Locale.ROOT, "  %,d rows", state.getCurrent()) : "";
        String line = String.format(
                Locale.ROOT,
                "%s [%s%s%s] %d:%02d%s",
                state.getTaskName(),
                " ".repeat(at),
                "=".repeat(BLOCK),
                " ".repeat(free - at),
                time.toMinutes(),
                time.toSecondsPart(),
                rows);
        return line.length() <= width ? line : line.substring(0, width);
    }
}
