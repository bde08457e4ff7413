package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Row;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What stands above the lines of an invoice: {@code Invoice no: 124}, or the label in one cell and the value in the
 * next.
 *
 * @param date null where none is said; so too the total
 */
record InvoiceHeader(
        String supplier,
        String number,
        @Nullable LocalDate date,
        String currency,
        boolean creditNote,
        @Nullable BigDecimal total) {
    static final InvoiceHeader NONE = new InvoiceHeader("", "", null, "", false, null);

    private static final List<String> LABELS =
            List.of("label supplier", "label invoice", "label date", "label currency", "label total");

    /**
     * With what a row says; null where the row says nothing of the kind.
     *
     * @param style of the money in the lines, which a total above them has too
     */
    @Nullable InvoiceHeader with(Row row, Locale language, Decimals style, YearMonth month) {
        InvoiceHeader header = this;
        boolean said = false;
        List<Cell> cells = row.cells();
        for (int i = 0; i < cells.size(); i++) {
            String text = TextFold.trim(cells.get(i).text());
            int colon = text.indexOf(':');
            String label = labelOf(colon < 0 ? text : text.substring(0, colon));
            String value = colon < 0 ? "" : TextFold.trim(text.substring(colon + 1));
            Cell cell = colon < 0 || value.isEmpty()
                    ? (i + 1 < cells.size() ? cells.get(i + 1) : null)
                    : Cell.text(0, value);
            if (!label.isEmpty() && cell != null) {
                header = header.with(label, cell, language, style, month);
                said = true;
            }
            if (RowWords.is("credit note", colon < 0 ? text : text.substring(0, colon)) || startsAsCredit(text)) {
                header = header.asCreditNote();
                said = true;
            }
        }
        return said ? header : null;
    }

    private static boolean startsAsCredit(String text) {
        String folded = TextFold.fold(text);
        for (int end = folded.length(); end > 0; end = folded.lastIndexOf(' ', end - 1)) {
            String start = folded.substring(0, end);
            if (start.indexOf(' ') > 0 && RowWords.isFolded("credit note", start)) {
                return true;
            }
        }
        return false;
    }

    static boolean isLabel(String text) {
        return !labelOf(text).isEmpty();
    }

    private static String labelOf(String text) {
        String folded = TextFold.fold(text);
        for (String label : LABELS) {
            if (RowWords.isFolded(label, folded)) {
                return label;
            }
        }
        return "";
    }

    private InvoiceHeader with(String label, Cell cell, Locale language, Decimals style, YearMonth month) {
        String value = TextFold.trim(cell.text());
        return switch (label) {
            case "label supplier" -> new InvoiceHeader(value, number, date, currency, creditNote, total);
            case "label invoice" ->
                value.equals(number) ? this : new InvoiceHeader(supplier, value, date, currency, creditNote, total);
            case "label date" ->
                new InvoiceHeader(supplier, number, dateOf(cell, language, month), currency, creditNote, total);
            case "label currency" -> new InvoiceHeader(supplier, number, date, value, creditNote, total);
            default -> new InvoiceHeader(supplier, number, date, currency, creditNote, numberOf(cell, style));
        };
    }

    private InvoiceHeader asCreditNote() {
        return new InvoiceHeader(supplier, number, date, currency, true, total);
    }

    private static @Nullable BigDecimal numberOf(Cell cell, Decimals style) {
        if (cell.number() != null) {
            return cell.number();
        }
        BigDecimal value = NumberText.parse(cell.text(), style);
        return value != null ? value : NumberText.parse(cell.text(), style.other());
    }

    /** A single date has no column beside it: the month of the folder decides, then the language. */
    static @Nullable LocalDate dateOf(Cell cell, Locale language, YearMonth month) {
        if (cell.moment() != null) {
            return cell.moment().toLocalDate();
        }
        DateText text = DateText.parse(cell.text());
        if (text == null) {
            return null;
        }
        LocalDate taken = text.date(DateOrder.of(language));
        for (DateOrder order : DateOrder.values()) {
            LocalDate date = text.date(order);
            boolean inMonth = date != null && YearMonth.from(date).equals(month);
            boolean better = taken == null || !YearMonth.from(taken).equals(month);
            taken = date != null && (taken == null || (inMonth && better)) ? date : taken;
        }
        return taken;
    }
}
