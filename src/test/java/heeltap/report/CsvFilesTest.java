package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.Format;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvFilesTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "MONEY, 0.175, EUR, 0.18",
        "MONEY, -0.175, EUR, -0.18",
        "MONEY, 12, EUR, 12.00",
        "MONEY, 1234567.894, EUR, 1234567.89",
        "MONEY, 99.5, JPY, 100",
        "MONEY, 1.23456, KWD, 1.235",
        "UNIT_MONEY, 1.4375, EUR, 1.4375",
        "UNIT_MONEY, 0.00000123456789, EUR, 0.00000123456789",
        "FINE_MONEY, 0.0123456789012, EUR, 0.0123456789",
        "PERCENT, 22.5, EUR, 22.5",
        "PERCENT, 33.333333333333, EUR, 33.33333333",
        "AMOUNT, 123456789012, EUR, 123456789000",
        "COUNT, 123456789012345, EUR, 123456789012345",
        "COUNT, 2.5, EUR, 2.5",
        "COUNT, 0, EUR, 0"
    })
    void writesNumbersPlain(Format format, String number, String currency, String expected) {
        assertThat(CsvFiles.text(CellValue.of(Exact.of(number)), format, Currency.getInstance(currency)))
                .isEqualTo(expected);
        assertThat(CsvFiles.text(CellValue.of(Money.of(number)), format, Currency.getInstance(currency)))
                .isEqualTo(expected);
    }

    @Test
    void writesTheRestAsPromised() {
        assertThat(CsvFiles.text(CellValue.BLANK, Format.MONEY, EUR)).isEmpty();
        assertThat(CsvFiles.text(CellValue.of(true), Format.YES_NO, EUR)).isEqualTo("yes");
        CellValue.Term term = new CellValue.Term("list", "Listenpreis");
        assertThat(CsvFiles.text(term, Format.TEXT, EUR)).isEqualTo("list");
        assertThat(new Printing(Locale.GERMANY, EUR).cell(term, Format.TEXT)).isEqualTo("Listenpreis");
        assertThat(CsvFiles.text(CellValue.of(false), Format.YES_NO, EUR)).isEqualTo("no");
        assertThat(CsvFiles.text(CellValue.of(LocalDate.of(2026, 3, 9)), Format.DATE, EUR))
                .isEqualTo("2026-03-09");
    }

    @Test
    void keepsRfc4180() throws IOException {
        Table table = new Table(
                "t",
                "T",
                "",
                List.of(Column.of("a", "A", "", Format.TEXT), Column.of("b", "B", "", Format.TEXT)),
                List.of(
                        new TableRow(List.of(CellValue.of("say \"yes\", now"), CellValue.of("=1+1")), Emphasis.PLAIN),
                        new TableRow(List.of(CellValue.of("two\nlines"), CellValue.BLANK), Emphasis.FAINT)),
                Optional.of(new TableRow(List.of(CellValue.of("Total"), CellValue.BLANK), Emphasis.PLAIN)));
        Path file = folder.resolve("t.csv");
        CsvFiles.write(table, EUR, file);
        assertThat(Files.readString(file)).isEqualTo("a,b\r\n\"say \"\"yes\"\", now\",=1+1\r\n\"two\nlines\",\r\n");
    }

    @Test
    void everyValueReadsBack() throws IOException {
        Table table = SampleDocument.drinks();
        Path file = folder.resolve("drinks.csv");
        CsvFiles.write(table, EUR, file);
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            List<CSVRecord> records = CSVFormat.RFC4180.parse(reader).getRecords();
            assertThat(records).hasSize(1 + table.rows().size());
            assertThat(records.get(0).toList())
                    .isEqualTo(table.columns().stream().map(Column::key).toList());
            for (int r = 0; r < table.rows().size(); r++) {
                for (int c = 0; c < table.columns().size(); c++) {
                    compare(
                            table.rows().get(r).cells().get(c),
                            table.columns().get(c).format(),
                            records.get(r + 1).get(c));
                }
            }
        }
    }

    private static void compare(CellValue value, Format format, String text) {
        if (value instanceof CellValue.Text expected) {
            assertThat(text).isEqualTo(expected.text());
        } else if (value instanceof CellValue.Figure || value instanceof CellValue.Sum) {
            double number = SampleDocument.number(value).toDouble();
            double error = format == Format.MONEY ? 0.005 : Math.abs(number) * 1e-9;
            assertThat(Double.parseDouble(text)).isBetween(number - error - 1e-12, number + error + 1e-12);
        } else if (value instanceof CellValue.Blank) {
            assertThat(text).isEmpty();
        }
    }
}
