package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.pricing.GroupDemand;
import heeltap.pricing.PriceResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The live formulas of the what-if sheet give the program's figures to the cent, by POI's evaluator. */
class WhatIfSheetTest {
    private static final double CENT = 0.005;

    @TempDir
    private static Path out;

    private final XSSFWorkbook workbook = open();
    private final XSSFSheet sheet = workbook.getSheet("What if");
    private final XSSFFormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    private final List<Map<String, Cell>> groups = table("Elasticity to try");
    private final List<Map<String, Cell>> drinks = table("Price to try");
    private final List<Map<String, Cell>> totals = table("Cost cut %");

    @BeforeAll
    static void review() {
        assertThat(Run.of("review", "sample-input", "2026-10", "--out", out.toString())
                        .code())
                .isZero();
    }

    private static XSSFWorkbook open() {
        try {
            return new XSSFWorkbook(Files.newInputStream(out.resolve("2026-10-review.xlsx")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void beginsWithTheSuggestedPricesAndTheirFigures() throws IOException {
        Map<String, CSVRecord> prices = csv("prices");
        for (Map<String, Cell> drink : drinks) {
            CSVRecord row = Objects.requireNonNull(prices.get(text(drink, "Drink")));
            assertThat(value(drink, "Price to try")).isEqualTo(number(row, "price_suggested"));
            assertThat(value(drink, "Price now")).isEqualTo(number(row, "price_now"));
            assertThat(value(drink, "Units")).isCloseTo(number(row, "units_expected"), within(1e-6));
            assertThat(value(drink, "Cost %")).isCloseTo(number(row, "cost_percent_new"), within(1e-6));
            assertThat(value(drink, "Margin")).isCloseTo(number(row, "margin_new"), within(1e-6));
            assertThat(value(drink, "Margin change")).isCloseTo(number(row, "expected_margin_change"), within(CENT));
        }
        Map<String, CSVRecord> changes = csv("price_groups");
        for (Map<String, Cell> total : totals) {
            CSVRecord row = Objects.requireNonNull(changes.get(text(total, "Group")));
            assertThat(value(total, "Margin change")).isCloseTo(number(row, "expected_margin_change"), within(CENT));
        }
        assertThat(drinks).hasSizeGreaterThan(20);
        assertThat(totals).hasSize(2);
    }

    @Test
    void followsOtherPricesAndAnotherElasticity() {
        Map<String, Double> before = units();
        for (int i = 0; i < drinks.size(); i++) {
            double now = value(drinks.get(i), "Price now");
            cell(drinks.get(i), "Price to try").setCellValue(now + (i % 4 - 1.5) * 0.75);
        }
        cell(groups.get(0), "Elasticity to try").setCellValue(-2.5);
        evaluator.clearAllCachedResultValues();
        assertThat(units()).isNotEqualTo(before);
        agreesWithTheModel(new double[] {-2.5, value(groups.get(1), "Elasticity estimated")});
    }

    @Test
    void anEmptyPriceIsThePriceNow() {
        drinks.forEach(drink -> cell(drink, "Price to try").setBlank());
        evaluator.clearAllCachedResultValues();
        for (Map<String, Cell> drink : drinks) {
            assertThat(value(drink, "Units")).isCloseTo(value(drink, "Units at price now"), within(1e-9));
            assertThat(value(drink, "Margin change")).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void anElasticityThatIsEmptyOrNotBelowZeroIsTheEstimatedOne() {
        Map<String, Double> before = units();
        for (Map<String, Cell> group : groups) {
            cell(group, "Elasticity to try").setBlank();
        }
        evaluator.clearAllCachedResultValues();
        units().forEach((drink, sold) ->
                assertThat(sold).as(drink).isCloseTo(Objects.requireNonNull(before.get(drink)), within(1e-9)));
        cell(groups.get(0), "Elasticity to try").setCellValue(2.5);
        cell(groups.get(1), "Elasticity to try").setCellValue("so so");
        evaluator.clearAllCachedResultValues();
        units().forEach((drink, sold) ->
                assertThat(sold).as(drink).isCloseTo(Objects.requireNonNull(before.get(drink)), within(1e-9)));
    }

    /** Against the demand model itself, with the parameters that the sheet shows, and classes counted here. */
    private void agreesWithTheModel(double[] elasticities) {
        for (int g = 0; g < groups.size(); g++) {
            Map<String, Cell> group = groups.get(g);
            double number = value(group, "Number");
            List<Map<String, Cell>> members = drinks.stream()
                    .filter(drink -> value(drink, "Group number") == number)
                    .toList();
            double[] units = demand(group, members)
                    .withGroupElasticity(elasticities[g])
                    .unitsAt(column(members, "Price to try"));
            double margin = 0;
            double sum = 0;
            for (int j = 0; j < units.length; j++) {
                Map<String, Cell> drink = members.get(j);
                double net = value(drink, "Net price now") * value(drink, "Price to try") / value(drink, "Price now");
                double cost = value(drink, "Cost");
                assertThat(value(drink, "Units")).isCloseTo(units[j], within(1e-6));
                assertThat(value(drink, "Cost %")).isCloseTo(cost / net * 100, within(1e-9));
                assertThat(value(drink, "Total margin")).isCloseTo(units[j] * (net - cost), within(CENT));
                margin += units[j] * (net - cost);
                sum += units[j];
            }
            assertThat(value(totals.get(g), "Units")).isCloseTo(sum, within(1e-6));
            assertThat(value(totals.get(g), "Total margin")).isCloseTo(margin, within(CENT));
            assertThat(value(totals.get(g), "Margin cut")).isCloseTo(margin / sum, within(1e-9));
            classes(group, members, margin / sum);
            plotted(members, value(totals.get(g), "Margin cut"));
        }
    }

    private void classes(Map<String, Cell> group, List<Map<String, Cell>> members, double average) {
        double all = column(members, "Units").length == 0
                ? 0
                : java.util.Arrays.stream(column(members, "Units")).sum();
        for (Map<String, Cell> drink : members) {
            boolean popular = value(drink, "Units") / all * 100 >= value(group, "Popular from %");
            boolean profitable = value(drink, "Margin") >= average;
            assertThat(text(drink, "Margin class"))
                    .isEqualTo(popular ? profitable ? "star" : "plowhorse" : profitable ? "puzzle" : "dog");
        }
    }

    /** What the charts draw: each mark's two figures and the cut stand on the sheet of plot data. */
    private void plotted(List<Map<String, Cell>> members, double cut) {
        List<Double> figures = new ArrayList<>();
        for (Row row : workbook.getSheet("Plot data")) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA) {
                    figures.add(evaluator.evaluate(cell).getNumberValue());
                }
            }
        }
        assertThat(figures).contains(cut);
        for (Map<String, Cell> drink : members) {
            assertThat(figures).contains(value(drink, "Popularity %"), value(drink, "Cost %"), value(drink, "Margin"));
        }
    }

    private GroupDemand demand(Map<String, Cell> group, List<Map<String, Cell>> members) {
        return GroupDemand.of(
                column(members, "Price now"),
                column(members, "Units at price now"),
                new PriceResponse(
                        value(group, "Response estimated"),
                        value(group, "Group follows"),
                        value(group, "Usual price"),
                        value(group, "Power of price")));
    }

    private Map<String, Double> units() {
        Map<String, Double> units = new HashMap<>();
        drinks.forEach(drink -> units.put(text(drink, "Drink"), value(drink, "Units")));
        return units;
    }

    private double[] column(List<Map<String, Cell>> rows, String heading) {
        return rows.stream().mapToDouble(row -> value(row, heading)).toArray();
    }

    private static Cell cell(Map<String, Cell> row, String heading) {
        return Objects.requireNonNull(row.get(heading), heading);
    }

    private double value(Map<String, Cell> row, String heading) {
        Cell cell = cell(row, heading);
        return cell.getCellType() == CellType.FORMULA
                ? evaluator.evaluate(cell).getNumberValue()
                : cell.getNumericCellValue();
    }

    private String text(Map<String, Cell> row, String heading) {
        Cell cell = cell(row, heading);
        return cell.getCellType() == CellType.FORMULA
                ? evaluator.evaluate(cell).getStringValue()
                : cell.getStringCellValue();
    }

    /** The rows under the heading row that holds this heading, down to the first empty one, by heading. */
    private List<Map<String, Cell>> table(String heading) {
        Row headings = null;
        List<Map<String, Cell>> rows = new ArrayList<>();
        for (Row row : sheet) {
            if (headings == null) {
                for (Cell cell : row) {
                    headings = cell.getCellType() == CellType.STRING
                                    && cell.getStringCellValue().equals(heading)
                            ? row
                            : headings;
                }
            } else if (row.getRowNum() == headings.getRowNum() + rows.size() + 1 && row.getLastCellNum() > 5) {
                Map<String, Cell> cells = new HashMap<>();
                for (Cell cell : row) {
                    cells.put(headings.getCell(cell.getColumnIndex()).getStringCellValue(), cell);
                }
                rows.add(cells);
            }
        }
        return rows;
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static Map<String, CSVRecord> csv(String table) throws IOException {
        Map<String, CSVRecord> rows = new HashMap<>();
        try (CSVParser parser = CSVParser.parse(
                Files.readString(out.resolve("tables/" + table + ".csv")),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            parser.forEach(row -> rows.put(row.get(0), row));
        }
        return rows;
    }
}
