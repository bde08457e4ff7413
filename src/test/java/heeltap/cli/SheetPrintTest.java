package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sample's workbook as it is seen and printed. */
class SheetPrintTest {
    @TempDir
    private static Path temp;

    private static XSSFWorkbook workbook = new XSSFWorkbook();

    @BeforeAll
    static void review() throws IOException {
        assertThat(Run.of("review", "sample-input", "2026-10", "--out", temp.toString(), "--quiet")
                        .code())
                .isZero();
        workbook = new XSSFWorkbook(Files.newInputStream(temp.resolve("2026-10-review.xlsx")));
    }

    @AfterAll
    static void close() throws IOException {
        workbook.close();
    }

    /** In characters of the normal font; a number wider than its column would show as a row of hashes. */
    @Test
    void everyNumberFitsItsColumn() {
        DataFormatter formatter = new DataFormatter(Locale.ROOT);
        int numbers = 0;
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    boolean number = cell.getCellType() == CellType.NUMERIC
                            || (cell.getCellType() == CellType.FORMULA
                                    && cell.getCachedFormulaResultType() == CellType.NUMERIC);
                    if (number && !sheet.isColumnHidden(cell.getColumnIndex())) {
                        numbers++;
                        String printed = formatter.formatRawCellContents(
                                cell.getNumericCellValue(),
                                -1,
                                cell.getCellStyle().getDataFormatString().replace("%", "p"));
                        assertThat(sheet.getColumnWidth(cell.getColumnIndex()) / 256.0)
                                .as(sheet.getSheetName() + " " + cell.getAddress() + ": " + printed)
                                .isGreaterThanOrEqualTo(printed.length());
                    }
                }
            }
        }
        assertThat(numbers).isGreaterThan(3_000);
    }

    @Test
    void everyHeadingOfATableExplainsItsColumn() {
        int headings = 0;
        for (Sheet each : workbook) {
            XSSFSheet sheet = (XSSFSheet) each;
            if (sheet.getCTWorksheet().isSetAutoFilter()) {
                CellRangeAddress table = CellRangeAddress.valueOf(
                        sheet.getCTWorksheet().getAutoFilter().getRef());
                for (int c = table.getFirstColumn(); c <= table.getLastColumn(); c++) {
                    Cell heading = sheet.getRow(table.getFirstRow()).getCell(c);
                    assertThat(heading.getCellComment())
                            .as(sheet.getSheetName() + ": " + heading.getStringCellValue())
                            .isNotNull();
                    headings++;
                }
            }
        }
        assertThat(headings).isGreaterThan(400);
    }

    @Test
    void everySheetPrintsOnPaperWithItsNameAndWithoutGridlines() {
        for (Sheet sheet : workbook) {
            assertThat(sheet.isPrintGridlines()).isFalse();
            assertThat(sheet.isDisplayGridlines()).isFalse();
            assertThat(sheet.getFooter().getLeft()).startsWith(sheet.getSheetName());
            String area = workbook.getPrintArea(workbook.getSheetIndex(sheet));
            assertThat(area).as(sheet.getSheetName()).isNotNull();
            CellRangeAddress printed = CellRangeAddress.valueOf(area.substring(area.lastIndexOf('!') + 1));
            for (Row row : sheet) {
                assertThat(printed.getLastRow()).isGreaterThanOrEqualTo(row.getRowNum());
                assertThat(printed.getLastColumn()).isGreaterThanOrEqualTo(row.getLastCellNum() - 1);
            }
            assertThat(sheet.getFitToPage() || sheet.getPrintSetup().getScale() <= 75)
                    .as(sheet.getSheetName())
                    .isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({"Preparation sheets, preparations.csv", "Spec cards, drinks.csv"})
    void noCardIsPartedByAPagesEnd(String name, String named) throws IOException {
        Set<String> titles = new HashSet<>();
        for (String line : Files.readAllLines(temp.resolve("tables").resolve(named))) {
            titles.add(line.startsWith("\"") ? line.substring(1, line.indexOf('"', 1)) : line.split(",", 2)[0]);
        }
        XSSFSheet sheet = workbook.getSheet(name);
        assertThat(sheet.getRowBreaks()).isNotEmpty();
        for (int broken : sheet.getRowBreaks()) {
            // a card begins with a free row, then its name
            assertThat(List.of(text(sheet, broken + 1), text(sheet, broken + 2)))
                    .containsAnyElementsOf(titles);
        }
    }

    @ParameterizedTest
    @CsvSource({"Plots, 4", "What if, 4"})
    void twoPlotsStandOnAPage(String name, int plots) {
        XSSFSheet sheet = workbook.getSheet(name);
        assertThat(sheet.createDrawingPatriarch().getCharts()).hasSize(plots);
        assertThat(sheet.getRowBreaks()).hasSize(name.equals("Plots") ? 1 : 2);
    }

    private static String text(XSSFSheet sheet, int row) {
        return sheet.getRow(row) == null || sheet.getRow(row).getCell(0) == null
                ? ""
                : sheet.getRow(row).getCell(0).getStringCellValue();
    }
}
