package heeltap.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.source.Cell;
import heeltap.source.Row;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What both kinds of workbook have in common. */
class WorkbookTest {
    enum Kind {
        XLSX,
        XLS;

        Workbook create() {
            return this == XLSX ? new XSSFWorkbook() : new HSSFWorkbook();
        }
    }

    @TempDir
    Path folder;

    private Opened write(Kind kind, Consumer<Workbook> filling) {
        Path file = folder.resolve("sales.xlsx");
        try (Workbook workbook = kind.create();
                OutputStream out = Files.newOutputStream(file)) {
            filling.accept(workbook);
            workbook.write(out);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
        Opened opened = Opened.file(folder, file);
        assertThat(opened.problems()).isEmpty();
        return opened;
    }

    private static void put(Sheet sheet, int row, Object... values) {
        var target = sheet.createRow(row);
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof String text) {
                target.createCell(i).setCellValue(text);
            } else if (values[i] instanceof Number number) {
                target.createCell(i).setCellValue(number.doubleValue());
            } else if (values[i] instanceof Boolean truth) {
                target.createCell(i).setCellValue(truth);
            }
        }
    }

    private static CellStyle style(Workbook workbook, String format) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        return style;
    }

    @ParameterizedTest
    @EnumSource
    void sheetsInTheirOrderHiddenOnesToo(Kind kind) {
        Opened opened = write(kind, workbook -> {
            put(workbook.createSheet("Zeta"), 0, "a");
            put(workbook.createSheet("Alpha & <Co>"), 0, "b");
            workbook.createSheet("Empty");
            put(workbook.createSheet("Deep"), 0, "c");
            workbook.setSheetVisibility(1, SheetVisibility.HIDDEN);
            workbook.setSheetVisibility(3, SheetVisibility.VERY_HIDDEN);
        });
        assertThat(opened.sheets().stream()
                        .map(sheet -> sheet.facts().place().sheet() + " "
                                + sheet.facts().hidden() + " "
                                + Opened.rows(sheet).size()))
                .containsExactly("Zeta false 1", "Alpha & <Co> true 1", "Empty false 0", "Deep true 1");
        assertThat(opened.sheet().facts().place().file()).isEqualTo("sales.xlsx");
        assertThat(opened.encoding() + opened.delimiter()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void numbersTextsAndTruths(Kind kind) {
        Opened opened = write(
                kind,
                workbook -> put(
                        workbook.createSheet("S"),
                        3,
                        12,
                        0.1 + 0.2,
                        "007",
                        true,
                        "",
                        "  ",
                        1e15,
                        5012345678900L,
                        -4.5,
                        1.1e-7));
        assertThat(opened.lines())
                .containsExactly("4|12|0.3|007|TRUE|||1000000000000000|5012345678900|-4.5|0.00000011");
        Row row = opened.rows().get(0);
        assertThat(row.find(1).orElseThrow().number()).isEqualTo(new BigDecimal("0.3"));
        assertThat(row.find(2).orElseThrow()).isEqualTo(Cell.text(2, "007"));
        assertThat(row.find(0).orElseThrow().number()).isEqualTo(new BigDecimal("12"));
    }

    @ParameterizedTest
    @EnumSource
    void textsShowAsTheFormatSays(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, 7, 1234.5, 0.125, 12.5, 3, 5);
            String[] formats = {"00000", "#,##0.00", "0.0%", "0.00 \"EUR\"", ";;;", "General"};
            for (int i = 0; i < formats.length; i++) {
                sheet.getRow(0).getCell(i).setCellStyle(style(workbook, formats[i]));
            }
        });
        assertThat(opened.lines()).containsExactly("1|00007|1,234.50|12.5%|12.50 EUR|3|5");
        assertThat(opened.rows().get(0).cells().stream().map(Cell::moment)).containsOnlyNulls();
    }

    @ParameterizedTest
    @EnumSource
    void datesAreMoments(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, 46_300, 46_300.75, 0.354166666666667, 46_300.25, 46_300);
            String[] formats = {"yyyy-mm-dd", "dd/mm/yyyy hh:mm", "h:mm AM/PM", "[$-407]d. mmmm yyyy;@", "0"};
            for (int i = 0; i < formats.length; i++) {
                sheet.getRow(0).getCell(i).setCellStyle(style(workbook, formats[i]));
            }
        });
        List<Cell> cells = opened.rows().get(0).cells();
        assertThat(cells.stream().map(Cell::moment))
                .containsExactly(
                        LocalDateTime.of(2026, 10, 5, 0, 0),
                        LocalDateTime.of(2026, 10, 5, 18, 0),
                        LocalDateTime.of(1899, 12, 31, 8, 30),
                        LocalDateTime.of(2026, 10, 5, 6, 0),
                        null);
        assertThat(cells.get(0).text()).isEqualTo("2026-10-05");
        assertThat(cells.get(1).text()).isEqualTo("05/10/2026 18:00");
        assertThat(cells.get(3).text()).isEqualTo("5. October 2026");
        assertThat(cells.get(0).number()).isEqualTo(new BigDecimal("46300"));
    }

    @ParameterizedTest
    @EnumSource
    void theDateSystemOf1904(Kind kind) {
        Opened opened = write(kind, workbook -> {
            if (workbook instanceof XSSFWorkbook xml) {
                xml.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
            } else if (workbook instanceof HSSFWorkbook binary) {
                binary.getInternalWorkbook().getRecords().stream()
                        .filter(org.apache.poi.hssf.record.DateWindow1904Record.class::isInstance)
                        .forEach(record ->
                                ((org.apache.poi.hssf.record.DateWindow1904Record) record).setWindowing((short) 1));
            }
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, 44_561);
            sheet.getRow(0).getCell(0).setCellStyle(style(workbook, "yyyy-mm-dd"));
        });
        Cell cell = opened.rows().get(0).cells().get(0);
        assertThat(cell.moment()).isEqualTo(LocalDateTime.of(2026, 1, 1, 0, 0));
        assertThat(cell.text()).isEqualTo("2026-01-01");
    }

    @ParameterizedTest
    @EnumSource
    void formulasGiveTheirCachedResults(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, 2, 3);
            String[] formulas = {"A1+B1", "\"Gin\"&\"!\"", "A1>B1", "1/0", "\"\""};
            for (int i = 0; i < formulas.length; i++) {
                sheet.getRow(0).createCell(2 + i).setCellFormula(formulas[i]);
            }
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        });
        assertThat(opened.lines()).containsExactly("1|2|3|5|Gin!|FALSE|#DIV/0!");
        assertThat(opened.rows().get(0).find(2).orElseThrow().number()).isEqualTo(new BigDecimal("5"));
        assertThat(opened.oddRows()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void richTextsAreJoined(Kind kind) {
        Opened opened = write(kind, workbook -> {
            var text = workbook.getCreationHelper().createRichTextString("Gin & Tonic");
            text.applyFont(0, 3, workbook.createFont());
            workbook.createSheet("S").createRow(0).createCell(0).setCellValue(text);
        });
        assertThat(opened.lines()).containsExactly("1|Gin & Tonic");
    }

    @ParameterizedTest
    @EnumSource
    void mergedCellsGiveTheirFirstAndNameWhatTheyCover(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, "Sales", "", "", "Other");
            put(sheet, 1, "Item", "Qty", "covered", "x");
            sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 2));
            sheet.addMergedRegion(new CellRangeAddress(1, 1, 1, 2));
        });
        assertThat(opened.lines()).containsExactly("1|Sales|||Other", "2|Item|Qty||x");
        assertThat(opened.sheet().facts().problems().toString()).contains("row 2, column C", "covered");
    }

    @ParameterizedTest
    @EnumSource
    void hiddenRowsAreReadAndSaid(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, "Item");
            put(sheet, 1, "Gin");
            put(sheet, 2, "Rum");
            sheet.getRow(1).setZeroHeight(true);
        });
        assertThat(opened.lines()).containsExactly("1|Item", "2|Gin", "3|Rum");
        assertThat(opened.oddRows()).containsExactly(2);
    }

    @ParameterizedTest
    @EnumSource
    void phantomRowsAreSkipped(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            put(sheet, 0, "Item", "Qty");
            for (int i = 1; i < 5_000; i++) {
                sheet.createRow(i).createCell(5);
            }
            put(sheet, 24, "Gin", 2);
        });
        assertThat(opened.lines()).containsExactly("1|Item|Qty", "25|Gin|2");
    }

    @ParameterizedTest
    @EnumSource
    void readingStopsWhenToldAndBeginsAnew(Kind kind) {
        Opened opened = write(kind, workbook -> {
            Sheet sheet = workbook.createSheet("S");
            for (int i = 0; i < 5; i++) {
                put(sheet, i, "Item " + i);
            }
        });
        int[] count = new int[1];
        opened.sheet().read(row -> ++count[0] < 2);
        assertThat(count[0]).isEqualTo(2);
        assertThat(opened.rows()).hasSize(5);
    }
}
