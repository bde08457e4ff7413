package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every formula of the sample's workbook, worked out by others, against the figure that the program wrote beside it.
 * LibreOffice is asked where {@code -Dheeltap.soffice=/usr/bin/soffice} says where it is.
 */
class SampleWorkbookTest {
    /** Far less than a cent, far more than what binary numbers lose on the way. */
    private static final double SLACK = 0.000001;

    private static final int LEAST_FORMULAS = 1_000;

    @TempDir
    private static Path temp;

    private static Path written = Path.of("");

    @BeforeAll
    static void review() {
        assertThat(Run.of("review", "sample-input", "2026-10", "--out", temp.toString(), "--quiet")
                        .code())
                .isZero();
        written = temp.resolve("2026-10-review.xlsx");
    }

    @Test
    void evaluatorAgreesWithEveryFigure() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written))) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            List<Cell> formulas = formulas(workbook);
            assertThat(formulas).hasSizeGreaterThan(LEAST_FORMULAS);
            for (Cell cell : formulas) {
                CellValue found = evaluator.evaluate(cell);
                assertSame(cell, found.getCellType(), found.getNumberValue(), found.getStringValue());
            }
            assertThat(formulas.stream()
                            .map(cell -> cell.getSheet().getSheetName())
                            .distinct())
                    .contains(
                            "Summary",
                            "What if",
                            "Drinks",
                            "Prices",
                            "Price review by group",
                            "Price range",
                            "Ingredients",
                            "Preparations",
                            "Stock",
                            "Stock by group",
                            "Invoices",
                            "Journal",
                            "Set aside",
                            "Names to add",
                            "Checks",
                            "What to order",
                            "Purchases by supplier and group",
                            "Returnable deposits",
                            "Use by drink",
                            "Recorded losses",
                            "Where a price will not mend it");
        }
    }

    /** Bars with odd months: uncounted goods, unknown packs, other currencies and languages. */
    @ParameterizedTest
    @MethodSource("goldenBars")
    void evaluatorAgreesWithEveryFigureOfOtherBars(Path bar, @TempDir Path out) throws IOException {
        Run run = Run.of("review", bar.toString(), "--out", out.toString(), "--quiet");
        assertThat(run.code()).as(run.err()).isZero();
        List<Path> workbooks;
        try (Stream<Path> files = Files.list(out)) {
            workbooks = files.filter(file -> file.toString().endsWith(".xlsx")).toList();
        }
        assertThat(workbooks).hasSize(1);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(workbooks.get(0)))) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            assertThat(formulas(workbook)).isNotEmpty().allSatisfy(cell -> {
                CellValue found = evaluator.evaluate(cell);
                assertSame(cell, found.getCellType(), found.getNumberValue(), found.getStringValue());
            });
        }
    }

    /** Names in which a formula could see a pattern or a comparison. */
    @Test
    void namesMeanThemselvesInFormulas(@TempDir Path folder) throws IOException {
        Path bar = new WrittenBar()
                .file("book/settings.csv", "Setting|Value", "currency|EUR", "menu prices include tax|no")
                .file(
                        "book/ingredients.csv",
                        "Ingredient|Measure|List price|List pack|Group",
                        "Gin?|ml|14|70cl|>5",
                        "Gin1|ml|20|70cl|>5",
                        "<3|ml|10|70cl|~")
                .file("book/drinks.csv", "Drink|Price|Category", "A*|10|?x", "AB|10|yx", "Quiet|9|>2")
                .file(
                        "book/specs.csv",
                        "Item|Ingredient|Amount|Unit",
                        "A*|Gin?|50|ml",
                        "AB|Gin1|50|ml",
                        "AB|Gin?|10|ml",
                        "A*|<3|5|ml",
                        "Quiet|<3|50|ml")
                .file("2026-10/sales.csv", "Date|Item|Quantity|Net", "2026-10-02|A*|10|100", "2026-10-03|AB|5|50")
                .file(
                        "2026-10/losses.csv",
                        "Date|Item|Quantity|Unit|Reason",
                        "2026-10-02|Gin?|10|ml|spill",
                        "2026-10-02|Gin1|20|ml|spill",
                        "2026-10-02|Gin?|30|ml|breakage")
                .write(folder.resolve("bar"));
        evaluatorAgreesWithEveryFigureOfOtherBars(bar, folder.resolve("out"));
    }

    private static List<Path> goldenBars() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("src/test/resources/heeltap/golden"))) {
            return folders.filter(folder -> !folder.endsWith("every-fatal-fault"))
                    .map(folder -> folder.resolve("input"))
                    .filter(Files::isDirectory)
                    .sorted()
                    .toList();
        }
    }

    @Test
    void noCellHoldsAnError() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written))) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    assertThat(row).noneMatch(cell -> cell.getCellType() == CellType.ERROR);
                }
            }
        }
    }

    @Test
    void libreOfficeAgreesWithEveryFigure() throws IOException, InterruptedException {
        String office = System.getProperty("heeltap.soffice", "");
        assumeTrue(!office.isEmpty());
        Path bare = temp.resolve("bare.xlsx");
        Path out = Files.createDirectories(temp.resolve("recalculated"));
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written))) {
            for (Cell cell : formulas(workbook)) {
                // without its value, so that none can be taken over
                cell.setCellFormula(cell.getCellFormula());
            }
            try (OutputStream stream = Files.newOutputStream(bare)) {
                workbook.write(stream);
            }
        }
        Process process = new ProcessBuilder(
                        office,
                        "-env:UserInstallation=" + temp.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx",
                        bare.toString(),
                        "--outdir",
                        out.toString())
                .redirectErrorStream(true)
                .redirectOutput(temp.resolve("office.log").toFile())
                .start();
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        try (XSSFWorkbook ours = new XSSFWorkbook(Files.newInputStream(written));
                XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(out.resolve("bare.xlsx")))) {
            List<Cell> formulas = formulas(ours);
            assertThat(formulas).hasSizeGreaterThan(LEAST_FORMULAS);
            for (Cell cell : formulas) {
                Cell found = theirs.getSheet(cell.getSheet().getSheetName())
                        .getRow(cell.getRowIndex())
                        .getCell(cell.getColumnIndex());
                CellType type = found.getCachedFormulaResultType();
                assertSame(
                        cell,
                        type,
                        type == CellType.NUMERIC ? found.getNumericCellValue() : 0,
                        type == CellType.STRING ? found.getStringCellValue() : "");
            }
        }
    }

    private static void assertSame(Cell cell, CellType type, double number, String text) {
        String where = cell.getSheet().getSheetName() + " " + cell.getAddress() + " =" + cell.getCellFormula();
        assertThat(type).as(where).isEqualTo(cell.getCachedFormulaResultType());
        if (type == CellType.NUMERIC) {
            double ours = cell.getNumericCellValue();
            assertThat(number).as(where).isCloseTo(ours, within(Math.max(SLACK, Math.abs(ours) * 1e-9)));
        } else {
            assertThat(text).as(where).isEqualTo(cell.getStringCellValue());
        }
    }

    private static List<Cell> formulas(XSSFWorkbook workbook) {
        List<Cell> formulas = new ArrayList<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                row.forEach(cell -> {
                    if (cell.getCellType() == CellType.FORMULA) {
                        formulas.add(cell);
                    }
                });
            }
        }
        return formulas;
    }
}
