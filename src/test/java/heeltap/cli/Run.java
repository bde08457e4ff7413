package heeltap.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * The command run as a user runs it, with what it printed.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Run(int code, String out, String err) {
    static Run of(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                new Console(
                        Screen.plain(new PrintStream(out, true, StandardCharsets.UTF_8)),
                        Screen.plain(new PrintStream(err, true, StandardCharsets.UTF_8))),
                args);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The same on a terminal of so many columns. */
    static Run onTerminal(int width, boolean colour, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                new Console(
                        new Screen(new PrintStream(out, true, StandardCharsets.UTF_8), true, colour, width),
                        new Screen(new PrintStream(err, true, StandardCharsets.UTF_8), true, colour, width)),
                args);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
