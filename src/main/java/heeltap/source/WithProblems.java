package heeltap.source;

import java.util.List;

/**
 * A value together with what was wrong on the way to it.
 *
 * @param value what could be read
 * @param problems in the order of their places
 */
public record WithProblems<T>(T value, List<Problem> problems) {
    public WithProblems {
        problems = problems.stream().sorted(Problem.ORDER).toList();
    }

    public static <T> WithProblems<T> of(T value) {
        return new WithProblems<>(value, List.of());
    }

    public boolean hasFatal() {
        return problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.FATAL);
    }
}
