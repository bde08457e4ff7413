package heeltap.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * Workbooks written from a plain description, a line a row, its cells between bars:
 *
 * <pre>
 * {1904}                          the workbook counts days from 1904
 * {sheet Sales}  {hidden sheet X} what follows stands in this sheet
 * {merge A1:B1}  {hide row 3}     {hide column C}   of the sheet
 * {blank rows until 90000}        rows that hold nothing but a style
 * Item | Qty | When               texts
 * Negroni | #2 | @2026-10-03      a number and a date
 * Spritz | =B2*2 -> 4 | '0012     a formula with the result kept beside it; a text that looks like a number
 * </pre>
 *
 * The file's ending decides between the XML workbook and the legacy one (BIFF8).
 */
public final class CellsWorkbook {
    private final Workbook workbook;
    private final CellStyle day;
    private final CellStyle moment;
    private @Nullable Sheet sheet;
    private int next;

    private CellsWorkbook(Workbook workbook) {
        this.workbook = workbook;
        this.day = dated("yyyy-mm-dd");
        this.moment = dated("yyyy-mm-dd hh:mm");
    }

    private CellStyle dated(String format) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        return style;
    }

    public static void write(List<String> lines, Path file) throws IOException {
        boolean legacy = file.toString().endsWith(".xls");
        try (Workbook workbook = legacy ? new HSSFWorkbook() : new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            CellsWorkbook cells = new CellsWorkbook(workbook);
            lines.forEach(cells::take);
            workbook.write(out);
        }
    }

    private void take(String line) {
        if (line.startsWith("{")) {
            option(line.substring(1, line.length() - 1));
            return;
        }
        Row row = sheet().createRow(next++);
        String[] cells = line.split("\\|", -1);
        for (int i = 0; i < cells.length; i++) {
            String text = cells[i].strip();
            if (!text.isEmpty()) {
                fill(row.createCell(i), text);
            }
        }
    }

    private Sheet sheet() {
        Sheet present = sheet == null ? workbook.createSheet("Sheet1") : sheet;
        sheet = present;
        return present;
    }

    private void option(String option) {
        String last = option.substring(option.lastIndexOf(' ') + 1);
        if (option.equals("1904")) {
            count1904();
        } else if (option.startsWith("sheet ") || option.startsWith("hidden sheet ")) {
            sheet = workbook.createSheet(option.substring(option.indexOf("sheet ") + 6));
            next = 0;
            if (option.startsWith("hidden")) {
                workbook.setSheetVisibility(workbook.getNumberOfSheets() - 1, SheetVisibility.HIDDEN);
            }
        } else if (option.startsWith("merge ")) {
            sheet().addMergedRegion(CellRangeAddress.valueOf(last));
        } else if (option.startsWith("hide row ")) {
            sheet().getRow(Integer.parseInt(last) - 1).setZeroHeight(true);
        } else if (option.startsWith("hide column ")) {
            sheet().setColumnHidden(last.charAt(0) - 'A', true);
        } else if (option.startsWith("blank rows until ")) {
            while (next < Integer.parseInt(last)) {
                sheet().createRow(next++).createCell(0).setCellStyle(day);
            }
        } else {
            throw new IllegalArgumentException("no such option: " + option);
        }
    }

    private void count1904() {
        if (workbook instanceof XSSFWorkbook xml) {
            var workbookPart = xml.getCTWorkbook();
            (workbookPart.isSetWorkbookPr() ? workbookPart.getWorkbookPr() : workbookPart.addNewWorkbookPr())
                    .setDate1904(true);
        } else {
            throw new IllegalArgumentException("1904 is written in XML workbooks only");
        }
    }

    private void fill(Cell cell, String text) {
        String rest = text.substring(1);
        switch (text.charAt(0)) {
            case '#' -> cell.setCellValue(Double.parseDouble(rest));
            case '\'' -> cell.setCellValue(rest);
            case '@' -> {
                boolean clock = rest.contains("T");
                cell.setCellValue(LocalDateTime.parse(clock ? rest : rest + "T00:00"));
                cell.setCellStyle(clock ? moment : day);
            }
            case '=' -> {
                String[] parts = rest.split("->", 2);
                cell.setCellFormula(parts[0].strip());
                workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
                if (parts.length == 2 && cell.getNumericCellValue() != Double.parseDouble(parts[1])) {
                    throw new IllegalArgumentException("the formula does not give " + parts[1]);
                }
            }
            default -> cell.setCellValue(text);
        }
    }
}
