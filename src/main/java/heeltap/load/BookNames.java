package heeltap.load;

import heeltap.record.Folding;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Names already seen in a sheet, alike after folding. */
final class BookNames {
    private final Map<String, Place> places = new HashMap<>();

    /** Takes a name of a row; a name seen before is a fault and leaves the row out. */
    boolean take(BookRow row, Column column, String name) {
        Place earlier = places.putIfAbsent(Folding.fold(name), row.place(column));
        if (earlier == null) {
            return true;
        }
        row.leaveOut(Problem.fault(
                ProblemKind.NAME_TWICE,
                row.place(column),
                name,
                "The same " + column.heading() + " stands at " + earlier + ".",
                "Keep one of the two rows; until then the first is used and this one is left out."));
        return false;
    }

    boolean has(String name) {
        return places.containsKey(Folding.fold(name));
    }

    Optional<Place> find(String name) {
        return Optional.ofNullable(places.get(Folding.fold(name)));
    }
}
