package heeltap.cli;

import java.time.Duration;
import me.tongfei.progressbar.ProgressBarConsumer;

/** The last line of a terminal, written over and over, and blank again at the end; nothing for what is soon done. */
final class PatientLine implements ProgressBarConsumer {
    private final Screen screen;
    private final long since = System.nanoTime();
    private final long patienceNanos;
    private int written;

    PatientLine(Screen screen, Duration patience) {
        this.screen = screen;
        this.patienceNanos = patience.toNanos();
    }

    /** One column stays free, for terminals that break a line as soon as it is full. */
    @Override
    public int getMaxRenderedLength() {
        return screen.width() - 1;
    }

    @Override
    public void accept(String line) {
        if (System.nanoTime() - since < patienceNanos) {
            return;
        }
        String rest = " ".repeat(Math.max(0, written - line.length()));
        screen.stream().print("\r" + line + rest);
        screen.stream().flush();
        written = line.length();
    }

    @Override
    public void clear() {
        if (written > 0) {
            screen.stream().print("\r" + " ".repeat(written) + "\r");
            screen.stream().flush();
            written = 0;
        }
    }

    @Override
    public void close() {
        clear();
    }
}
