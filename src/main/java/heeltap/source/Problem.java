package heeltap.source;

import java.util.Comparator;

/**
 * Something in the input that its owner should know, with what to do about it.
 *
 * @param kind what sort of problem
 * @param severity how much it costs
 * @param place where
 * @param raw the text as written; empty where something is missing
 * @param reason one sentence in plain words: why this is a problem
 * @param remedy one sentence: what to do about it
 */
public record Problem(ProblemKind kind, Severity severity, Place place, String raw, String reason, String remedy) {
    /** By place, then by kind: an order free of chance. */
    public static final Comparator<Problem> ORDER = Comparator.comparing(Problem::place)
            .thenComparing(Problem::kind)
            .thenComparing(Problem::raw)
            .thenComparing(Problem::reason);

    /** How much a problem costs. */
    public enum Severity {
        /** The whole review is impossible. */
        FATAL,
        /** A row, a file or an item is left out. */
        FAULT,
        /** Everything is used; the reader should know. */
        NOTICE
    }

    public static Problem fatal(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        return new Problem(kind, Severity.FATAL, place, raw, reason, remedy);
    }

    public static Problem fault(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        return new Problem(kind, Severity.FAULT, place, raw, reason, remedy);
    }

    public static Problem notice(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        return new Problem(kind, Severity.NOTICE, place, raw, reason, remedy);
    }

    /** {@code 2026-10/sales.csv, row 14, column C (Qty): "x2": reason Remedy}. */
    @Override
    public String toString() {
        String quoted = raw.isEmpty() ? "" : " \"" + raw + "\":";
        return place + ":" + quoted + " " + reason + " " + remedy;
    }
}
