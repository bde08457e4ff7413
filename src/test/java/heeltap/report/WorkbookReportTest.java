package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.document.CellValue;
import heeltap.document.Document;
import heeltap.document.Table;
import heeltap.document.TableRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkbookReportTest {
    private static final Document DOCUMENT = SampleDocument.english();
    private static byte[] bytes;
    private static XSSFWorkbook workbook;

    @BeforeAll
    static void write() throws IOException {
        bytes = WorkbookReport.write(DOCUMENT, ReportFiles.stampOf(DOCUMENT.month()));
        workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    @AfterAll
    static void close() throws IOException {
        workbook.close();
    }

    @Test
    void twiceTheSameBytes() {
        assertThat(WorkbookReport.write(SampleDocument.english(), ReportFiles.stampOf(DOCUMENT.month())))
                .isEqualTo(bytes);
    }

    @Test
    void opensOnTheSummary() {
        List<String> names = new ArrayList<>();
        workbook.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
        assertThat(names)
                .containsExactly("Summary", "Drinks", "Movement", "What if", "Invoice lines", "Set aside", "Plot data");
        assertThat(workbook.getActiveSheetIndex()).isZero();
    }

    @Test
    void everyFormulaGivesTheDocumentsValue() {
        XSSFFormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        int formulas = 0;
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    assertThat(cell.getCellType()).isNotEqualTo(CellType.ERROR);
                    if (cell.getCellType() == CellType.FORMULA) {
                        formulas++;
                        double written = cell.getNumericCellValue();
                        assertThat(evaluator.evaluate(cell).getNumberValue())
                                .as("%s %s %s", sheet.getSheetName(), cell.getAddress(), cell.getCellFormula())
                                .isCloseTo(written, within(1e-7));
                    }
                }
            }
        }
        assertThat(formulas).isGreaterThan(150);
    }

    @Test
    void everyTableStandsThereInFull() {
        Table table = SampleDocument.drinks();
        XSSFSheet sheet = workbook.getSheet("Drinks");
        int heading = headingRow(sheet, "Drink");
        List<TableRow> rows = new ArrayList<>(table.rows());
        table.total().ifPresent(rows::add);
        for (int r = 0; r < rows.size(); r++) {
            XSSFRow row = sheet.getRow(heading + 1 + r);
            for (int c = 0; c < table.columns().size(); c++) {
                compare(rows.get(r).cells().get(c), row.getCell(c));
            }
        }
    }

    private static void compare(CellValue value, XSSFCell cell) {
        if (value instanceof CellValue.Text text) {
            assertThat(cell.getStringCellValue()).isEqualTo(text.text());
        } else if (value instanceof CellValue.YesNo yesNo) {
            assertThat(cell.getStringCellValue()).isEqualTo(yesNo.yes() ? "yes" : "no");
        } else if (value instanceof CellValue.Blank) {
            assertThat(cell.getCellType()).isEqualTo(CellType.BLANK);
        } else {
            assertThat(cell.getNumericCellValue())
                    .isCloseTo(SampleDocument.number(value).toDouble(), within(1e-9));
        }
    }

    @Test
    void textThatLooksLikeAFormulaIsText() {
        XSSFSheet sheet = workbook.getSheet("Drinks");
        XSSFCell cell = sheet.getRow(headingRow(sheet, "Drink") + 7).getCell(0);
        assertThat(cell.getStringCellValue()).isEqualTo("=Salt Line");
        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+44 gin", "-2 rounds", "@home", "\tx"})
    void whatSpreadsheetsTakeForAFormulaIsQuoted(String text) {
        assertThat(SheetRows.startsLikeFormula(text)).isTrue();
    }

    @Test
    void headingsStayFilterAndExplain() {
        XSSFSheet sheet = workbook.getSheet("Drinks");
        int heading = headingRow(sheet, "Drink");
        assertThat(sheet.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) (heading + 1));
        assertThat(sheet.getCTWorksheet().getAutoFilter().getRef()).startsWith("A" + (heading + 1) + ":L");
        assertThat(sheet.getRow(heading).getCell(6).getCellComment().getString().getString())
                .isEqualTo("Cost over net price.");
        assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(heading);
        assertThat(sheet.isDisplayGridlines()).isFalse();
        assertThat(sheet.getHeader().getLeft()).contains("The Salt && Anchor");
    }

    @Test
    void whereOneTypesOnlyNumbersAreTaken() {
        XSSFSheet sheet = workbook.getSheet("What if");
        assertThat(sheet.getDataValidations()).hasSize(1);
        int heading = headingRow(sheet, "Drink");
        XSSFCell price = sheet.getRow(heading + 2).getCell(2);
        assertThat(price.getCellStyle().getLocked()).isFalse();
        price.setCellValue(20);
        XSSFFormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        assertThat(evaluator.evaluate(sheet.getRow(heading + 2).getCell(3)).getNumberValue())
                .isCloseTo(17.655, within(1e-9));
        price.setCellValue(10.5);
    }

    @Test
    void columnsHaveNames() {
        assertThat(workbook.getName("drinks_net_sales").getRefersToFormula())
                .matches("'?Drinks'?!\\$D\\$\\d+:\\$D\\$\\d+");
        assertThat(workbook.getName("invoice_lines_goods")).isNotNull();
    }

    @Test
    void findingsLinkToSheets() {
        List<String> targets = new ArrayList<>();
        workbook.getSheet("Summary").getHyperlinkList().forEach(link -> targets.add(link.getLocation()));
        assertThat(targets).contains("'Drinks'!A1", "'Invoice lines'!A1", "'Set aside'!A1", "'Movement'!A1");
    }

    @Test
    void chartsNameEveryPoint() {
        XSSFSheet sheet = workbook.getSheet("Drinks");
        assertThat(sheet.getDrawingPatriarch().getCharts()).hasSize(2);
        String xml = sheet.getDrawingPatriarch().getCharts().get(0).getCTChart().xmlText();
        assertThat(xml).contains("Kelp &amp; Tonic", "datalabelsRange", "'Plot data'!$A$", "target 23.5 %");
        assertThat(workbook.getSheet("Movement").getDrawingPatriarch().getCharts())
                .hasSize(2);
    }

    private static int headingRow(XSSFSheet sheet, String first) {
        for (Row row : sheet) {
            if (row.getCell(1) != null && row.getCell(0).toString().equals(first)) {
                return row.getRowNum();
            }
        }
        throw new AssertionError("no heading " + first);
    }
}
