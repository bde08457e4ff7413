package heeltap.load;

import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Problems found while reading; the same fault in many rows of one column is told once, with how many rows. */
final class ProblemLog {
    private final List<Problem> single = new ArrayList<>();
    private final Map<String, Repeated> repeated = new LinkedHashMap<>();

    /** The first of a fault's rows and how many there are. */
    private record Repeated(Problem first, int rows) {}

    void add(Problem problem) {
        single.add(problem);
    }

    void notice(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        add(Problem.notice(kind, place, raw, reason, remedy));
    }

    void fault(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        add(Problem.fault(kind, place, raw, reason, remedy));
    }

    /** A fault that costs one row. */
    void row(ProblemKind kind, Place place, String raw, String reason, String remedy) {
        String key = kind + "|" + place.file() + "|" + place.sheet() + "|" + place.column() + "|" + reason;
        Problem problem = Problem.fault(kind, place, raw, reason, remedy);
        repeated.merge(
                key,
                new Repeated(problem, 1),
                (old, now) -> new Repeated(
                        now.first.place().row() < old.first.place().row() ? now.first : old.first, old.rows + 1));
    }

    List<Problem> all() {
        List<Problem> all = new ArrayList<>(single);
        for (Repeated fault : repeated.values()) {
            Problem first = fault.first;
            String reason = fault.rows == 1
                    ? first.reason()
                    : first.reason() + " So too " + (fault.rows - 1) + " more " + (fault.rows == 2 ? "row" : "rows")
                            + " of this sheet.";
            all.add(Problem.fault(first.kind(), first.place(), first.raw(), reason, first.remedy()));
        }
        return all;
    }
}
