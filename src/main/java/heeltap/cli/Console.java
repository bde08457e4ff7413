package heeltap.cli;

import java.io.PrintStream;

/**
 * The streams a command talks to.
 *
 * @param out results
 * @param err notices and progress
 * @param terminal whether a person watches: progress and colour only then
 * @param colour whether colour is welcome
 */
record Console(PrintStream out, PrintStream err, boolean terminal, boolean colour) {
    /** Marks a heading of the summary. */
    String strong(String text) {
        return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
    }
}
