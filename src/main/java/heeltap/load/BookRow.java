package heeltap.load;

import heeltap.load.Column.Need;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Folding;
import heeltap.record.SetAside;
import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A row of the book read by column. What cannot be read becomes a problem of its cell; what follows depends
 * on the column.
 */
final class BookRow {
    private final BookSheet sheet;
    private final Row row;
    private final List<String> reasons = new ArrayList<>();
    private String spoiled = "";

    BookRow(BookSheet sheet, Row row) {
        this.sheet = sheet;
        this.row = row;
    }

    Place place() {
        return sheet.place().withRow(row.number());
    }

    Place place(Column column) {
        return sheet.place(row, column);
    }

    Optional<Cell> cell(Column column) {
        Integer index = sheet.index(column);
        return index == null
                ? Optional.empty()
                : row.find(index).filter(cell -> !BookText.clean(cell.text()).isEmpty());
    }

    /** The text of a cell; where it is blank, what an empty cell means. A required one that is blank leaves the row out. */
    String text(Column column) {
        Optional<Cell> cell = cell(column);
        if (cell.isEmpty() && column.need() == Need.VALUE) {
            fault(ProblemKind.VALUE_MISSING, column, "This cell must not be empty.", "Fill it in");
        }
        return cell.map(found -> BookText.clean(found.text())).orElse(column.standard());
    }

    /** The text of a cell, empty where it is blank; says nothing. */
    String peekText(Column column) {
        return cell(column).map(cell -> BookText.clean(cell.text())).orElse("");
    }

    /** The number of a cell, within its column's bounds; null where it is blank or cannot be read. */
    @Nullable Exact number(Column column) {
        Optional<Cell> cell = cell(column);
        if (cell.isEmpty()) {
            String standard = text(column);
            return standard.isEmpty() ? null : Exact.of(standard);
        }
        Exact value = read(cell.get(), column);
        if (value == null) {
            return null;
        }
        if (!column.bounds().allow(value)) {
            fault(
                    ProblemKind.VALUE_INVALID,
                    column,
                    column.heading() + " must be " + column.bounds().words() + ".",
                    "Correct it");
            return null;
        }
        return value;
    }

    /** A spreadsheet stores 22 % as 0.22. */
    private static Exact stored(Cell cell, Column column) {
        Exact stored = Exact.of(Objects.requireNonNull(cell.number()));
        boolean percent = column.type() == Column.Type.PERCENT && cell.text().contains("%");
        return percent ? stored.times(Exact.HUNDRED) : stored;
    }

    /** As {@link #number(Column)}, with a value in place of none. */
    Exact number(Column column, Exact otherwise) {
        Exact value = number(column);
        return value == null ? otherwise : value;
    }

    private @Nullable Exact read(Cell cell, Column column) {
        if (cell.number() != null) {
            return stored(cell, column);
        }
        BookNumbers numbers = sheet.numbers(column);
        Exact value = numbers.parse(cell.text());
        if (value == null) {
            boolean open = BookNumbers.isOpen(cell.text());
            fault(
                    open ? ProblemKind.VALUE_AMBIGUOUS : ProblemKind.VALUE_INVALID,
                    column,
                    open
                            ? "The column has decimal points and decimal commas, so this could be two numbers."
                            : "This is no number.",
                    "Type a number such as 12" + numbers.decimal() + "5");
            return null;
        }
        noteDoubt(cell, column, numbers);
        return value;
    }

    private void noteDoubt(Cell cell, Column column, BookNumbers numbers) {
        if (BookNumbers.isOpen(cell.text()) && !numbers.proven()) {
            noteOpen(column, numbers, cell.text());
        }
    }

    /** Says how a number was read that could be two. */
    void noteOpen(Column column, BookNumbers numbers, String number) {
        sheet.add(Problem.notice(
                ProblemKind.VALUE_AMBIGUOUS,
                place(column),
                peekText(column),
                "This is read as " + numbers.parse(number) + ", as the bar's language writes numbers; it could mean "
                        + numbers.other().parse(number) + ".",
                "Write it without a sign for thousands, or with other decimals."));
    }

    @Nullable Money money(Column column) {
        Exact value = number(column);
        return value == null ? null : new Money(value);
    }

    @Nullable LocalDate date(Column column) {
        Optional<Cell> cell = cell(column);
        if (cell.isEmpty()) {
            text(column);
            return null;
        }
        BookDates.Order order = sheet.dates(column);
        Optional<LocalDate> date = BookDates.parse(cell.get(), order);
        if (date.isEmpty()) {
            boolean ambiguous = BookDates.isAmbiguous(cell.get().text(), order);
            fault(
                    ambiguous ? ProblemKind.VALUE_AMBIGUOUS : ProblemKind.VALUE_INVALID,
                    column,
                    ambiguous ? "Day and month cannot be told apart." : "This is no date.",
                    "Type a date such as 2026-09-01");
        }
        return date.orElse(null);
    }

    @Nullable Boolean yesNo(Column column) {
        String text = text(column);
        Boolean value = text.isEmpty() ? null : BookText.yesNo(text);
        if (value == null && !text.isEmpty()) {
            fault(ProblemKind.VALUE_INVALID, column, "This is neither yes nor no.", "Type yes or no");
        }
        return value;
    }

    /** The choice as its column spells it; null where the cell is blank and has no default, or cannot be read. */
    @Nullable String choice(Column column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        for (String choice : column.choices()) {
            if (Folding.fold(choice).equals(Folding.fold(text))) {
                return choice;
            }
        }
        fault(
                ProblemKind.VALUE_INVALID,
                column,
                column.heading() + " must be one of: " + String.join(", ", column.choices()) + ".",
                "Choose one of them");
        return null;
    }

    /** Reports a cell; what follows from it depends on the column. */
    void fault(ProblemKind kind, Column column, String reason, String remedy) {
        String until = switch (column.onFault()) {
            case ROW -> "the row is left out.";
            case ITEM -> "the item is left out, and what it is in.";
            case CELL -> column.standard().isEmpty() ? "the cell counts as empty." : column.standard() + " is used.";
        };
        String then = remedy + "; until then " + until;
        sheet.add(Problem.fault(kind, place(column), peekText(column), reason, then));
        if (column.onFault() == Column.OnFault.ROW) {
            reasons.add(reason);
        } else if (column.onFault() == Column.OnFault.ITEM) {
            spoiled = spoiled.isEmpty() ? column.heading() + ": " + reason : spoiled;
        }
    }

    /** Reports a problem as it stands, and leaves the row out. */
    void leaveOut(Problem problem) {
        sheet.add(problem);
        reasons.add(problem.reason());
    }

    /** Why the row's drink or preparation cannot be costed; empty where nothing says so. */
    String spoiled() {
        return spoiled;
    }

    boolean isLeftOut() {
        return !reasons.isEmpty();
    }

    SetAside setAside() {
        String text =
                row.cells().stream().map(cell -> BookText.clean(cell.text())).collect(Collectors.joining(", "));
        return new SetAside(place(), String.join(" ", reasons), text, null, null, List.of());
    }
}
