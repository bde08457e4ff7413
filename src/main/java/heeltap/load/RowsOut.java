package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.SetAside;
import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Rows set aside so far, with the problems that go with them. */
final class RowsOut {
    private final ProblemLog log;
    private final List<SetAside> setAside = new ArrayList<>();

    RowsOut(ProblemLog log) {
        this.log = log;
    }

    ProblemLog log() {
        return log;
    }

    List<SetAside> setAside() {
        return setAside;
    }

    void addAll(RowsOut other) {
        setAside.addAll(other.setAside);
        other.log.all().forEach(log::add);
    }

    /** Sets a row aside for a cell, or for the row where the place has no column. */
    void setAside(
            Place cell,
            ProblemKind kind,
            String reason,
            String text,
            @Nullable BigDecimal quantity,
            @Nullable BigDecimal money,
            List<String> nearest) {
        setAside(cell, kind, reason, text, quantity, money, nearest, "");
    }

    /** The same for a row that is known to be about an item. */
    void setAside(
            Place cell,
            ProblemKind kind,
            String reason,
            String text,
            @Nullable BigDecimal quantity,
            @Nullable BigDecimal money,
            List<String> nearest,
            String item) {
        setAside.add(new SetAside(
                cell.withRow(cell.row()),
                withHeading(cell, reason),
                text,
                quantity == null ? null : Exact.of(quantity),
                money == null ? null : Money.of(money),
                nearest,
                item));
        log.row(kind, cell, text, reason, remedy(kind));
    }

    /** {@code The quantity cannot be read (column C, Qty).} */
    private static String withHeading(Place cell, String reason) {
        if (cell.column().isEmpty()) {
            return reason;
        }
        String heading = cell.heading().isEmpty() ? "" : ", " + cell.heading();
        return reason.substring(0, reason.length() - 1) + " (column " + cell.column() + heading + ").";
    }

    private static String remedy(ProblemKind kind) {
        return switch (kind) {
            case NAME_UNKNOWN -> "Add the name to the sheet Names of the book, or (ignore) it there.";
            case DATE_OUTSIDE -> "Move the row to its month's folder if it is not there already.";
            case ROW_REPEATED -> "Remove one of the two files if they hold the same rows.";
            case CURRENCY_OTHER -> "Enter it in the bar's currency.";
            default -> "Mend the cell in the file, or export it again; the row is left out until then.";
        };
    }

    /** The row as one line. */
    static String text(Row row) {
        StringBuilder text = new StringBuilder();
        for (Cell cell : row.cells()) {
            text.append(text.isEmpty() ? "" : " | ").append(TextFold.trim(cell.text()));
        }
        return text.toString();
    }
}
