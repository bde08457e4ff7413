package heeltap.document;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnDigitsTest {
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "AMOUNT, -4.21 -4.4 -1.5, 2",
        "AMOUNT, 1200 30 0, 0",
        "AMOUNT, 12345.67 3.5, 1",
        "AMOUNT, 12345.67 0.05, 2",
        "AMOUNT, 12345.67 0.004, 1",
        "AMOUNT, 22.5 45, 1",
        "COUNT, 3 4, 0",
        "COUNT, 3 0.5, 1",
        "FINE_MONEY, 0.0214 1.25, 4",
        "FINE_MONEY, 0.00000123 1.25, 6",
        "FINE_MONEY, 3 1, 2",
        "PERCENT, 22.51, 0",
    })
    void oneNumberOfDecimalsForAllRowsOfAColumn(Format format, String numbers, int decimals) {
        List<TableRow> rows = Arrays.stream(numbers.split(" "))
                .map(Exact::of)
                .map(number -> new TableRow(
                        List.of(format == Format.FINE_MONEY ? CellValue.of(new Money(number)) : CellValue.of(number)),
                        Emphasis.PLAIN))
                .toList();
        Table table = new Table("t", "T", "", List.of(Column.of("c", "C", "", format)), rows, Optional.empty());
        assertThat(new ColumnDigits(table, 2).of(0)).isEqualTo(decimals);
    }
}
