package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sample bar's October against an independent calculation of the same input: exact fractions in another language,
 * written from the contract alone. Computed, not published; it guards the joining of all parts.
 */
class SampleBarTest {
    @TempDir
    private static Path out;

    private static Run run = new Run(-1, "", "");

    @BeforeAll
    static void review() {
        run = Run.of("review", "sample-input", "2026-10", "--out", out.toString());
    }

    @Test
    void endsBySayingWhatItReadAndWhereTheReportsAre() {
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Money joined  99.85% of €39,063.00")
                .contains("Set aside     6 rows")
                .contains(out.resolve("2026-10-review.pdf").toString())
                .contains(out.resolve("2026-10-review.xlsx").toString());
        assertThat(run.err())
                .contains("DUNE GARDEN SPRITZ", "Paper straws, black", "Sea buckthorn purée")
                .doesNotContain("Exception");
    }

    @ParameterizedTest
    @CsvSource({"drinks,drink", "ingredients,ingredient", "preparations,preparation", "stock,ingredient"})
    void agreesWithTheIndependentCalculation(String table, String key) throws IOException {
        Map<String, CSVRecord> found = new HashMap<>();
        rows(Files.readString(out.resolve("tables/" + table + ".csv"))).forEach(row -> found.put(row.get(key), row));
        List<CSVRecord> expected =
                rows(Files.readString(Path.of("src/test/resources/heeltap/sample/october-" + table + ".csv")));
        assertThat(expected).isNotEmpty();
        for (CSVRecord row : expected) {
            CSVRecord ours = Objects.requireNonNull(found.get(row.get(key)), row.get(key));
            for (String column : row.getParser().getHeaderNames()) {
                assertCell(table, row.get(key), column, row.get(column), ours.get(column));
            }
        }
    }

    /** Printed as the remainder of printed figures (rulings), so a cent from the rounded sum is right. */
    private static final Set<String> REMAINDERS = Set.of("actual_cost");

    /** Money in the currency's decimals here, unrounded in the independent calculation. */
    private static final Set<String> CENTS = Set.of("labour", "total_margin_threshold");

    private static void assertCell(String table, String name, String column, String expected, String ours) {
        String where = table + ", " + name + ", " + column;
        if (!isNumber(expected)) {
            assertThat(ours).as(where).isEqualTo(expected);
            return;
        }
        BigDecimal number = new BigDecimal(expected);
        BigDecimal slack = REMAINDERS.contains(column) || CENTS.contains(column)
                ? new BigDecimal("0.011")
                : number.abs().multiply(new BigDecimal("0.000001")).max(new BigDecimal("0.000001"));
        // yields of salt solutions rest on a rounded published density in the independent calculation
        BigDecimal tolerance = name.contains("alt") ? slack.max(number.abs().multiply(new BigDecimal("0.001"))) : slack;
        assertThat(new BigDecimal(ours)).as(where).isCloseTo(number, within(tolerance));
    }

    private static boolean isNumber(String text) {
        return text.matches("-?\\d+(\\.\\d+)?([Ee]-?\\d+)?");
    }

    private static List<CSVRecord> rows(String csv) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                csv,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords();
        }
    }
}
