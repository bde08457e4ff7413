package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published menus through the whole program: from a bar folder whose drinks have a fixed cost to the table of drinks and
 * the workbook. Sources, with what is seen and what is from memory, stand in each JSON file: 01b Dopson, Hayes and Miller
 * (textbook exercise), 01d the ten-item worksheet in the tradition of Kasavana and Smith, 01k slides on menu engineering.
 */
class PublishedMenusTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @CsvSource({"01b-bonisos-cm-and-foodcost-matrix", "01d-ten-item-worksheet-tie", "01k-eleven-pastas"})
    void figuresReachTheTablesAndTheWorkbook(String example, @TempDir Path temp) throws IOException {
        JsonNode json = read(example);
        Path bar = Files.createDirectories(temp.resolve("bar"));
        writeBar(bar, json.get("inputs").get("items"));
        Path out = temp.resolve("out");
        Run run = Run.of("review", bar.toString(), "--out", out.toString());
        assertThat(run.code()).as(run.err()).isZero();

        Map<String, CSVRecord> drinks = byDrink(out.resolve("tables/drinks.csv"));
        JsonNode expected = json.get("recomputed");
        for (JsonNode item : expected.get("items")) {
            CSVRecord drink = Objects.requireNonNull(drinks.get(item.get("name").asText()));
            assertNear(drink, "mix_percent", item.get("mmPct"));
            assertNear(drink, "margin", item.get("cm"));
            assertNear(drink, "cost_percent", item.get("foodCostPct"));
            assertNear(drink, "total_margin", item.get("totalCm"));
            assertNear(drink, "net_sales", item.get("totalSales"));
            assertThat(drink.get("margin_class")).isEqualTo(item.get("cls").asText());
            assertNear(drink, "popularity_threshold_percent", expected.get("Q_pct"));
            assertNear(drink, "margin_threshold", expected.get("O"));
            assertNear(drink, "cost_threshold_percent", expected.get("K_pct"));
        }
        assertWorkbook(out.resolve("2026-05-review.xlsx"), drinks);
    }

    /** Every drink's live formulas give what the table says. */
    private static void assertWorkbook(Path file, Map<String, CSVRecord> drinks) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            Sheet sheet = Objects.requireNonNull(workbook.getSheet("Drinks"));
            Row heading = StreamSupport.stream(sheet.spliterator(), false)
                    .filter(row -> StreamSupport.stream(row.spliterator(), false)
                            .anyMatch(cell -> text(cell).equals("Drink")))
                    .findFirst()
                    .orElseThrow();
            Map<String, Integer> columns = new HashMap<>();
            heading.forEach(cell -> columns.put(text(cell), cell.getColumnIndex()));
            int found = 0;
            for (int i = heading.getRowNum() + 1; i <= sheet.getLastRowNum(); i++) {
                Row row = sheet.getRow(i);
                String name = row == null ? "" : text(row.getCell(column(columns, "Drink")));
                CSVRecord drink = drinks.get(name);
                if (row != null && drink != null) {
                    found++;
                    for (Map.Entry<String, String> pair : Map.of(
                                    "Cost %", "cost_percent", "Margin", "margin", "Total margin", "total_margin")
                            .entrySet()) {
                        Cell cell = row.getCell(column(columns, pair.getKey()));
                        assertThat(cell.getCellType()).as(pair.getKey()).isEqualTo(CellType.FORMULA);
                        double value = evaluator.evaluate(cell).getNumberValue();
                        double shown = pair.getKey().equals("Cost %") && value < 1.5 ? value * 100 : value;
                        assertThat(shown)
                                .as(name + " " + pair.getKey())
                                .isCloseTo(Double.parseDouble(drink.get(pair.getValue())), within(0.005));
                    }
                }
            }
            assertThat(found).isEqualTo(drinks.size());
        }
    }

    private static int column(Map<String, Integer> columns, String heading) {
        return Objects.requireNonNull(columns.get(heading), heading);
    }

    private static String text(Cell cell) {
        return cell == null ? "" : new DataFormatter().formatCellValue(cell);
    }

    private static void assertNear(CSVRecord drink, String column, JsonNode expected) {
        assertThat(new BigDecimal(drink.get(column)))
                .as(drink.get("drink") + " " + column)
                .isCloseTo(expected.decimalValue(), within(new BigDecimal("0.0001")));
    }

    /** Prices without tax, a row a drink with all its units. */
    private static void writeBar(Path bar, JsonNode items) throws IOException {
        Files.createDirectories(bar.resolve("book"));
        Files.createDirectories(bar.resolve("2026-05"));
        Files.writeString(
                bar.resolve("book/settings.csv"),
                "Setting,Value\ncurrency,USD\nmenu prices include tax,no\nsales tax percent,0\n");
        StringBuilder drinks = new StringBuilder("Drink,Price,Category,Fixed cost\n");
        StringBuilder sales = new StringBuilder("Item,Quantity,Net\n");
        for (JsonNode item : items) {
            BigDecimal price = new BigDecimal(item.get("price").asText());
            drinks.append('"').append(item.get("name").asText()).append("\",").append(price);
            drinks.append(",Entrees,").append(item.get("cost").asText()).append('\n');
            sales.append('"')
                    .append(item.get("name").asText())
                    .append("\",")
                    .append(item.get("sold").asInt());
            sales.append(',')
                    .append(price.multiply(item.get("sold").decimalValue()))
                    .append('\n');
        }
        Files.writeString(bar.resolve("book/drinks.csv"), drinks);
        Files.writeString(bar.resolve("2026-05/sales.csv"), sales);
    }

    private static Map<String, CSVRecord> byDrink(Path file) throws IOException {
        Map<String, CSVRecord> drinks = new HashMap<>();
        try (CSVParser parser = CSVParser.parse(
                Files.readString(file),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            List<CSVRecord> records = parser.getRecords();
            records.forEach(row -> drinks.put(row.get("drink"), row));
        }
        return drinks;
    }

    private static JsonNode read(String example) throws IOException {
        try (InputStream stream = PublishedMenusTest.class.getResourceAsStream("/heeltap/menu/" + example + ".json")) {
            return JSON.readTree(Objects.requireNonNull(stream, example));
        }
    }
}
