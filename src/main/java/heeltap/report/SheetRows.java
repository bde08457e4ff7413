package heeltap.report;

import heeltap.document.CellValue;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The rows of one sheet, one under the other, and the widths of its columns. */
final class SheetRows {
    private static final int TEXT_COLUMNS = 8;
    private static final double LEAST_WIDTH = 9;
    /** Where nothing but text stands on a sheet. */
    private static final double TEXT_WIDTH = 96;
    /** What a cell keeps free beside its text: its edges, and the indent of words. */
    static final double EDGES = 1.6;

    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final double[] widths = new double[256];
    private final Map<XSSFRow, String> paragraphs = new LinkedHashMap<>();
    private int next;

    SheetRows(WorkbookParts parts, XSSFSheet sheet) {
        this.parts = parts;
        this.sheet = sheet;
    }

    int next() {
        return next;
    }

    /** Leaves rows free up to this one. */
    void goTo(int row) {
        next = Math.max(next, row);
    }

    /** Wide columns as they were asked for. */
    void setWidths() {
        for (int i = 0; i < widths.length; i++) {
            if (widths[i] > 0) {
                sheet.setColumnWidth(i, (int) Math.round(Math.min(widths[i], TEXT_WIDTH) * 256));
            }
        }
    }

    /** The width that a column was given, in whole characters; 0 for none. */
    double given(int column) {
        return widths[column];
    }

    /** A usual width for a column that has none. */
    void widenEmpty(int column) {
        if (widths[column] == 0) {
            sheet.setColumnWidth(column, (int) (LEAST_WIDTH * 256));
        }
    }

    /**
     * Over the first columns; where no column has a width yet, over one that reads well.
     *
     * @param onlyText whether nothing else stands on the sheet
     */
    void layParagraphs(boolean onlyText) {
        if (onlyText && IntStream.range(0, widths.length).allMatch(c -> widths[c] == 0)) {
            widths[0] = TEXT_WIDTH;
            sheet.setColumnWidth(0, (int) (TEXT_WIDTH * 256));
        }
        int columns = widths[0] >= TEXT_WIDTH - 20 ? 1 : TEXT_COLUMNS;
        double across = 0;
        for (int i = 0; i < columns; i++) {
            across += sheet.isColumnHidden(i) ? 0 : widths[i] > 0 ? width(i) : sheet.getDefaultColumnWidth();
        }
        double room = across - 2 * EDGES;
        paragraphs.forEach((row, text) -> {
            if (columns > 1) {
                sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), 0, columns - 1));
            }
            row.setHeightInPoints(parts.lines(text, room) * 13.2f + 4);
        });
    }

    /** In whole characters of the normal font, as printed; hidden columns are nothing. */
    double width(int column) {
        return sheet.isColumnHidden(column) ? 0 : Math.min(widths[column], TEXT_WIDTH);
    }

    void widen(int column, double characters) {
        widths[column] = Math.max(widths[column], characters);
    }

    static boolean startsLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    }

    void value(XSSFCell cell, CellValue value) {
        if (value instanceof CellValue.Text text) {
            cell.setCellValue(parts.fitting(text.text()));
        } else if (value instanceof CellValue.Term term) {
            cell.setCellValue(parts.fitting(term.said()));
        } else if (value instanceof CellValue.YesNo yesNo) {
            cell.setCellValue(parts.words().get(yesNo.yes() ? "yes" : "no"));
        } else if (value instanceof CellValue.Day day) {
            cell.setCellValue(day.date());
        } else if (value instanceof CellValue.Sum sum) {
            cell.setCellValue(sum.money().amount().toDouble());
        } else if (value instanceof CellValue.Figure figure) {
            cell.setCellValue(figure.number().toDouble());
        }
    }

    /** One line across the sheet. */
    void text(XSSFCellStyle style, String text) {
        row();
        cell(next - 1, 0, style).setCellValue(text);
    }

    /** A paragraph over the first columns, as high as it needs. */
    void wrapped(XSSFCellStyle style, String text) {
        XSSFRow row = row();
        cell(next - 1, 0, style).setCellValue(parts.fitting(text));
        paragraphs.put(row, text);
    }

    /** Leaves a row free. */
    void skip() {
        next++;
    }

    void skip(int count) {
        next += count;
    }

    /** Begins a row and returns its number. */
    int startRow() {
        row();
        return next - 1;
    }

    /** As high as a text in a column of so many characters needs. */
    void fit(int row, String text, double characters) {
        sheet.getRow(row).setHeightInPoints(parts.lines(text, characters) * 13f + 2);
    }

    /** Begins a row. */
    XSSFRow row() {
        return sheet.createRow(next++);
    }

    XSSFCell cell(int row, int column, XSSFCellStyle style) {
        XSSFRow existing = sheet.getRow(row);
        XSSFCell cell = (existing == null ? sheet.createRow(row) : existing).createCell(column);
        cell.setCellStyle(style);
        return cell;
    }

    static void link(XSSFCell cell, String target) {
        XSSFHyperlink link = cell.getSheet().getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
        link.setAddress(target);
        cell.setHyperlink(link);
    }
}
