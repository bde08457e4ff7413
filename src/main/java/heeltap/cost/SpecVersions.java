package heeltap.cost;

import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.record.Book;
import heeltap.record.SpecLine;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** The rows of the sheet Specs by item and by the day from which they hold. */
final class SpecVersions {
    private final Map<Item, NavigableMap<LocalDate, List<SpecLine>>> versions = new HashMap<>();
    private final NavigableSet<LocalDate> days = new TreeSet<>();
    private final List<Problem> problems = new ArrayList<>();

    /** A drink or a preparation; both may bear the same name only at the price of neither having a spec. */
    record Item(Match.Kind kind, String name) {}

    SpecVersions(Book book, NameBook names) {
        for (SpecLine line : book.specs()) {
            Optional<Match> item = names.findItem(line.item());
            LocalDate from = line.from() == null ? LocalDate.MIN : line.from();
            if (item.isPresent()) {
                Item key = new Item(item.get().kind(), item.get().name());
                days.add(from);
                versions.computeIfAbsent(key, absent -> new TreeMap<>())
                        .computeIfAbsent(from, absent -> new ArrayList<>())
                        .add(line);
            } else {
                problems.add(Problem.fault(
                        ProblemKind.NAME_UNKNOWN,
                        line.place(),
                        line.item(),
                        "The spec line belongs to no drink or preparation of the book, or to both, so it is not used.",
                        "Give the item a row of its own on the sheet Drinks or Preparations."));
            }
        }
        versions.values()
                .forEach(byDay -> byDay.values().forEach(lines -> lines.sort(Comparator.comparing(SpecLine::place))));
    }

    /** The lines that hold on a day, by place; none where there is no spec yet. */
    List<SpecLine> on(Item item, LocalDate day) {
        NavigableMap<LocalDate, List<SpecLine>> byDay = versions.get(item);
        Map.Entry<LocalDate, List<SpecLine>> version = byDay == null ? null : byDay.floorEntry(day);
        return version == null ? List.of() : version.getValue();
    }

    /** Whether there is a spec, though perhaps not yet. */
    Optional<LocalDate> findFirst(Item item) {
        NavigableMap<LocalDate, List<SpecLine>> byDay = versions.get(item);
        return byDay == null ? Optional.empty() : Optional.of(byDay.firstKey());
    }

    /** The first of the days on which all specs are as on this day: two days with the same are alike. */
    LocalDate epoch(LocalDate day) {
        LocalDate floor = days.floor(day);
        return floor == null ? LocalDate.MIN : floor;
    }

    List<Problem> problems() {
        return problems;
    }
}
