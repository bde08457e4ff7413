package heeltap.cli;

/** The exit codes of every command. */
final class ExitCode {
    static final int DONE = 0;
    /** The input cannot be reviewed. */
    static final int INPUT = 1;
    /** Wrong usage. */
    static final int USAGE = 2;
    /** Could not write. */
    static final int WRITE = 3;

    private ExitCode() {}
}
