package heeltap.load;

import heeltap.load.BookNumbers.Evidence;
import heeltap.record.FileAccount;
import heeltap.record.Folding;
import heeltap.record.SetAside;
import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One sheet of the book: its heading row found, its rows handed out, and the account of what came of them. */
final class BookSheet {
    /** A heading row stands below a title and a few lines of explanation at most. */
    private static final int TITLE_ROWS = 40;

    private final ColumnTable table;
    private final Sheet sheet;
    private final Locale language;
    private final List<Problem> problems = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();
    private final List<Row> data = new ArrayList<>();
    private final Map<Column, Integer> columns = new HashMap<>();
    private final Map<Column, BookNumbers> numbers = new HashMap<>();
    private final Map<Column, BookDates.Order> dates = new HashMap<>();
    private @Nullable Row heading;
    private final List<Row> leftOutRows = new ArrayList<>();
    private boolean refused;
    private int used;
    private int ignored;

    BookSheet(ColumnTable table, Sheet sheet, Locale language) {
        this.table = table;
        this.sheet = sheet;
        this.language = language;
        problems.addAll(sheet.facts().problems());
        List<Row> rows = new ArrayList<>();
        sheet.read(row -> {
            if (!row.isBlank()) {
                rows.add(row);
            }
            return true;
        });
        if (!rows.isEmpty()) {
            findHeading(rows);
        }
        if (!refused) {
            decideForms();
        }
    }

    private void findHeading(List<Row> rows) {
        Row best = null;
        int most = 0;
        for (Row row : rows.subList(0, Math.min(TITLE_ROWS, rows.size()))) {
            int known = (int) row.cells().stream()
                    .filter(cell -> findColumn(cell.text()).isPresent())
                    .count();
            if (known > most) {
                most = known;
                best = row;
            }
        }
        List<Column> missing = new ArrayList<>(table.columns());
        if (best != null) {
            mapColumns(best);
            missing.removeAll(columns.keySet());
        }
        missing.removeIf(column -> column.need() == Column.Need.NOTHING);
        if (!missing.isEmpty() || best == null) {
            Problem problem = BookProblems.columnMissing(place(), table, missing);
            problems.add(problem);
            setAside.add(new SetAside(place(), problem.reason(), "", null, null, List.of()));
            refused = true;
            return;
        }
        heading = best;
        for (Row row : rows) {
            if (row.number() > best.number()) {
                take(row, best);
            }
        }
        nameUnnamedColumns(best);
    }

    private void take(Row row, Row headings) {
        boolean repeated = columns.values().stream()
                .allMatch(column -> Folding.fold(row.text(column)).equals(Folding.fold(headings.text(column))));
        if (repeated) {
            ignored++;
        } else {
            data.add(row);
        }
    }

    private void mapColumns(Row headings) {
        for (Cell cell : headings.cells()) {
            String text = BookText.clean(cell.text());
            Place place = place().withRow(headings.number()).withColumn(cell.column(), text);
            Optional<Column> known = findColumn(text);
            if (known.isEmpty()) {
                problems.add(BookProblems.unknownColumn(place, text, table));
            } else {
                Integer earlier = columns.putIfAbsent(known.get(), cell.column());
                if (earlier != null) {
                    problems.add(BookProblems.repeatedColumn(place, text, Place.columnLetters(earlier)));
                }
            }
        }
    }

    private void nameUnnamedColumns(Row headings) {
        TreeSet<Integer> unnamed = data.stream()
                .flatMap(row -> row.cells().stream())
                .map(Cell::column)
                .filter(column -> headings.find(column).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        for (int column : unnamed) {
            problems.add(BookProblems.unnamedColumn(
                    place().withRow(headings.number()).withColumn(column, "")));
        }
    }

    /** A heading may have its unit in brackets behind it. */
    private Optional<Column> findColumn(String text) {
        String whole = Folding.fold(text);
        String bare = Folding.fold(text.replaceAll("[(\\[].*", ""));
        for (String wanted : List.of(whole, bare)) {
            for (Column column : table.columns()) {
                if (Folding.fold(column.heading()).equals(wanted)) {
                    return Optional.of(column);
                }
            }
        }
        return Optional.empty();
    }

    /** Decides for each column how its numbers and dates are written. */
    private void decideForms() {
        Map<Column, Evidence> evidence = new HashMap<>();
        Evidence all = Evidence.NONE;
        for (Column column : columns.keySet()) {
            if (column.type().isNumeric() || column.equals(BookTables.VALUE)) {
                Evidence one = BookNumbers.evidence(texts(column));
                evidence.put(column, one);
                all = all.plus(one);
            }
            if (column.type() == Column.Type.DATE) {
                dates.put(column, BookDates.Order.of(texts(column)));
            }
        }
        for (Map.Entry<Column, Evidence> entry : evidence.entrySet()) {
            numbers.put(entry.getKey(), BookNumbers.decide(entry.getValue(), all, language));
        }
    }

    private List<String> texts(Column column) {
        return cells(column)
                .filter(cell -> cell.number() == null)
                .map(Cell::text)
                .toList();
    }

    private Stream<Cell> cells(Column column) {
        Integer index = columns.get(column);
        return index == null ? Stream.empty() : data.stream().flatMap(row -> row.find(index).stream());
    }

    /** Reads every row; a row that is left out is set aside with its reasons. */
    <T> List<T> read(Function<BookRow, @Nullable T> reader) {
        List<T> records = new ArrayList<>();
        for (Row row : data) {
            BookRow bookRow = new BookRow(this, row);
            T record = reader.apply(bookRow);
            if (record == null || bookRow.isLeftOut()) {
                setAside.add(bookRow.setAside());
                leftOutRows.add(row);
            } else {
                used++;
                records.add(record);
            }
        }
        return records;
    }

    /** The folded names in the rows that were left out, with why. */
    Map<String, String> leftOut(Column name) {
        Map<String, String> reasons = new HashMap<>();
        Integer index = columns.get(name);
        for (int i = 0; index != null && i < leftOutRows.size(); i++) {
            reasons.put(
                    Folding.fold(leftOutRows.get(i).text(index)),
                    setAside.get(i).reason());
        }
        return reasons;
    }

    Sheet source() {
        return sheet;
    }

    boolean isRefused() {
        return refused;
    }

    @Nullable Integer index(Column column) {
        return columns.get(column);
    }

    BookNumbers numbers(Column column) {
        return numbers.getOrDefault(column, new BookNumbers('.', false, false));
    }

    BookDates.Order dates(Column column) {
        return dates.getOrDefault(column, BookDates.Order.UNKNOWN);
    }

    Place place() {
        return sheet.facts().place();
    }

    /** Where a cell of a column is, whether the row has it or not. */
    Place place(Row row, Column column) {
        Integer index = columns.get(column);
        Place place = place().withRow(row.number());
        if (index == null) {
            return place;
        }
        String written = heading == null ? column.heading() : BookText.clean(heading.text(index));
        return place.withColumn(index, written);
    }

    void add(Problem problem) {
        problems.add(problem);
    }

    List<Problem> problems() {
        return problems;
    }

    List<SetAside> setAside() {
        return setAside;
    }

    FileAccount account() {
        return new FileAccount(
                place(),
                refused ? "refused" : table.name().toLowerCase(Locale.ROOT),
                sheet.facts().encoding(),
                sheet.facts().delimiter(),
                heading == null ? 0 : heading.number(),
                dateForms(),
                decimalForms(),
                refused ? 0 : data.size() + ignored,
                used,
                ignored,
                refused ? 0 : setAside.size(),
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    private String dateForms() {
        TreeSet<String> forms = new TreeSet<>();
        dates.forEach((column, order) ->
                cells(column).map(cell -> BookDates.form(cell, order)).forEach(forms::add));
        forms.remove("");
        return String.join("; ", forms);
    }

    private String decimalForms() {
        TreeSet<String> forms = new TreeSet<>();
        numbers.forEach((column, form) -> cells(column).forEach(cell -> {
            if (cell.number() != null) {
                forms.add("stored");
            } else if (cell.text().chars().anyMatch(Character::isDigit)) {
                forms.add(form.mixed() ? "mixed" : form.decimal() == '.' ? "point" : "comma");
            }
        }));
        return String.join("; ", forms);
    }
}
