package heeltap.report;

import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.Format;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.quantity.Exact;
import java.io.IOException;
import java.io.Writer;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** Tables as plain files for other programs: UTF-8, RFC 4180, point decimals, ISO dates, {@code yes} and {@code no}. */
final class CsvFiles {
    /** Enough to compare with figures worked out elsewhere; at least six are promised. */
    private static final int SIGNIFICANT_DIGITS = 10;

    private static final CSVFormat RFC_4180 = CSVFormat.RFC4180;

    private CsvFiles() {}

    static void write(Table table, Currency currency, Path file) throws IOException {
        try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            RFC_4180.printRecord(
                    writer, table.columns().stream().map(Column::key).toArray());
            for (TableRow row : table.rows()) {
                List<String> texts = new ArrayList<>();
                for (int i = 0; i < table.columns().size(); i++) {
                    texts.add(text(row.cells().get(i), table.columns().get(i).format(), currency));
                }
                RFC_4180.printRecord(writer, texts.toArray());
            }
        }
    }

    static String text(CellValue value, Format format, Currency currency) {
        if (value instanceof CellValue.Blank) {
            return "";
        } else if (value instanceof CellValue.Text text) {
            return text.text();
        } else if (value instanceof CellValue.Term term) {
            return term.published();
        } else if (value instanceof CellValue.Day day) {
            return day.date().toString();
        } else if (value instanceof CellValue.YesNo yesNo) {
            return yesNo.yes() ? "yes" : "no";
        } else if (value instanceof CellValue.Sum sum) {
            return number(sum.money().amount(), format.of(value), currency);
        }
        return number(((CellValue.Figure) value).number(), format.of(value), currency);
    }

    private static String number(Exact number, Format format, Currency currency) {
        return switch (format) {
            case MONEY, MONEY_OR_COUNT ->
                number.round(Math.max(0, currency.getDefaultFractionDigits()), RoundingMode.HALF_UP)
                        .toPlainString();
            case COUNT ->
                number.isWhole()
                        ? number.round(0, RoundingMode.UNNECESSARY).toPlainString()
                        : number.toSignificant(SIGNIFICANT_DIGITS).toPlainString();
            case UNIT_MONEY, FINE_MONEY, PERCENT, AMOUNT, TEXT, DATE, YES_NO ->
                number.toSignificant(SIGNIFICANT_DIGITS).toPlainString();
        };
    }
}
