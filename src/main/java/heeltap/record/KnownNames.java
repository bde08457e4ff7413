package heeltap.record;

import java.util.List;

/** Answers, while a file is being read, whether a name in it means anything to the book. */
@FunctionalInterface
public interface KnownNames {
    /**
     * What the book makes of a name.
     *
     * @param where the kind of file
     * @param name as written; may be empty where there is a code
     * @param code as written; empty where there is none
     */
    Verdict ask(NameRule.Where where, String name, String code);

    /**
     * The book's answer.
     *
     * @param answer whether it is known
     * @param nearest for an unknown name the three nearest known ones, nearest first; else empty
     */
    record Verdict(Answer answer, List<String> nearest) {}

    /** Whether a name is known. */
    enum Answer {
        KNOWN,
        /** The book says to ignore it. */
        IGNORED,
        UNKNOWN
    }
}
