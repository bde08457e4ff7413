package heeltap.cli;

import heeltap.source.Place;
import heeltap.source.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Problems on standard error, the worst first. In a file each is one line that says everything, for search; a person at
 * a terminal gets them by file, with what to do once under those that need the same.
 */
final class Notices {
    /** So many of a kind are enough beside a review; check names all. */
    private static final int MOST_OF_A_KIND = 5;

    private final Screen err;
    private final int most;

    private Notices(Screen err, int most) {
        this.err = err;
        this.most = most;
    }

    /** Faults that stop are always told; notices are not where the reader wants quiet. */
    static void print(List<Problem> problems, Screen err, boolean quiet, boolean all) {
        Notices notices = new Notices(err, all ? Integer.MAX_VALUE : MOST_OF_A_KIND);
        for (Problem.Severity severity : Problem.Severity.values()) {
            List<Problem> these = problems.stream()
                    .filter(problem -> problem.severity() == severity)
                    .toList();
            if (these.isEmpty() || (quiet && severity == Problem.Severity.NOTICE)) {
                continue;
            }
            if (err.terminal()) {
                notices.group(severity, these);
            } else {
                these.forEach(problem -> err.println(word(severity) + ": " + problem));
            }
        }
    }

    private void group(Problem.Severity severity, List<Problem> problems) {
        err.heading(heading(severity, problems.size()));
        Map<String, List<Problem>> byFile = by(problems, Notices::sheetOf);
        byFile.forEach((file, these) -> {
            err.wrapped(file, 2, 4);
            by(these, Problem::remedy).forEach((remedy, alike) -> alike(severity, remedy, alike));
        });
        err.println("");
    }

    private void alike(Problem.Severity severity, String remedy, List<Problem> problems) {
        int shown = severity == Problem.Severity.FATAL ? problems.size() : Math.min(most, problems.size());
        // one more line says no less than "and one more"
        int told = shown == problems.size() - 1 ? problems.size() : shown;
        problems.subList(0, told).forEach(problem -> err.wrapped(sentence(problem), 4, 6));
        if (told < problems.size()) {
            err.wrapped("and " + (problems.size() - told) + " more like these; heeltap check names them all", 4, 6);
        }
        err.wrapped("-> " + remedy, 6, 9);
    }

    private static String sentence(Problem problem) {
        Place place = problem.place();
        List<String> parts = new ArrayList<>();
        String cell = new Place("", "", place.row(), place.column(), place.heading()).toString();
        if (!cell.isEmpty()) {
            parts.add(cell.replaceFirst("^[, ]+", ""));
        }
        if (!problem.raw().isEmpty()) {
            parts.add("\"" + problem.raw() + "\"");
        }
        parts.add(problem.reason());
        return String.join(": ", parts);
    }

    private static String sheetOf(Problem problem) {
        return Place.of(problem.place().file(), problem.place().sheet()).toString();
    }

    /** In the order of the first of each. */
    private static Map<String, List<Problem>> by(List<Problem> problems, Function<Problem, String> key) {
        return problems.stream().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
    }

    private static String word(Problem.Severity severity) {
        return switch (severity) {
            case FATAL -> "stop";
            case FAULT -> "left out";
            case NOTICE -> "note";
        };
    }

    private static String heading(Problem.Severity severity, int count) {
        return switch (severity) {
            case FATAL -> "Stop: " + (count == 1 ? "one fault is" : count + " faults are") + " in the way of a review";
            case FAULT -> "Left out because of " + (count == 1 ? "one fault" : count + " faults");
            case NOTICE -> count == 1 ? "One note" : count + " notes";
        };
    }
}
