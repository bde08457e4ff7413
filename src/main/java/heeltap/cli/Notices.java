package heeltap.cli;

import heeltap.source.Problem;
import java.util.List;

/** Problems as lines on standard error, the worst first. */
final class Notices {
    private Notices() {}

    static void print(List<Problem> problems, Console console, boolean quiet) {
        for (Problem.Severity severity : Problem.Severity.values()) {
            if (quiet && severity == Problem.Severity.NOTICE) {
                continue;
            }
            problems.stream()
                    .filter(problem -> problem.severity() == severity)
                    .forEach(problem -> console.err().println(word(severity) + ": " + problem));
        }
    }

    private static String word(Problem.Severity severity) {
        return switch (severity) {
            case FATAL -> "stop";
            case FAULT -> "left out";
            case NOTICE -> "note";
        };
    }
}
