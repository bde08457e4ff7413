package heeltap.report;

import heeltap.document.CellValue;
import heeltap.document.ColumnDigits;
import heeltap.document.Format;
import heeltap.document.TableRow.Emphasis;
import java.awt.Color;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one workbook, each made once. */
final class WorkbookStyles {
    private static final String FONT = "Arial";
    private final XSSFWorkbook workbook;
    private final Printing printing;
    private final Map<String, XSSFCellStyle> styles = new HashMap<>();

    WorkbookStyles(XSSFWorkbook workbook, Printing printing) {
        this.workbook = workbook;
        this.printing = printing;
        XSSFFont normal = workbook.getFontAt(0);
        normal.setFontName(FONT);
        normal.setFontHeightInPoints((short) 10);
        normal.setColor(color(Look.INK));
    }

    XSSFCellStyle title() {
        return style("title", style -> style.setFont(font(16, false, false, Look.INK)));
    }

    XSSFCellStyle bar() {
        return style("bar", style -> style.setFont(font(10, true, false, Look.ACCENT)));
    }

    XSSFCellStyle subtitle() {
        return style("subtitle", style -> {
            style.setFont(font(11, true, false, Look.INK));
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        });
    }

    XSSFCellStyle note() {
        return style("note", style -> {
            style.setFont(font(9, false, true, Look.QUIET));
            wrapTop(style);
        });
    }

    XSSFCellStyle text() {
        return style("text", WorkbookStyles::wrapTop);
    }

    XSSFCellStyle caution() {
        return style("caution", style -> {
            wrapTop(style);
            fill(style, Look.TINT);
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention((short) 1);
            style.setBorderLeft(BorderStyle.THICK);
            style.setLeftBorderColor(color(Look.ACCENT));
        });
    }

    XSSFCellStyle link() {
        return style("link", style -> {
            XSSFFont font = font(10, false, false, Look.ACCENT);
            font.setUnderline(XSSFFont.U_SINGLE);
            style.setFont(font);
            style.setVerticalAlignment(VerticalAlignment.TOP);
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention((short) 1);
        });
    }

    XSSFCellStyle heading(boolean numeric) {
        return style("heading" + numeric, style -> {
            style.setFont(font(9, true, false, Look.QUIET));
            style.setWrapText(true);
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
            style.setAlignment(numeric ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
            style.setIndention((short) (numeric ? 0 : 1));
            style.setBorderBottom(BorderStyle.MEDIUM);
            style.setBottomBorderColor(color(Look.ACCENT));
            fill(style, Look.TINT);
        });
    }

    /** A cell in which a reader may type: framed, on a ground that no other cell has. */
    XSSFCellStyle input(String pattern) {
        return style("input|" + pattern, style -> {
            fill(style, Look.ENTRY);
            style.setAlignment(HorizontalAlignment.RIGHT);
            style.setVerticalAlignment(VerticalAlignment.TOP);
            style.setBorderTop(BorderStyle.THIN);
            style.setBorderBottom(BorderStyle.THIN);
            style.setBorderLeft(BorderStyle.THIN);
            style.setBorderRight(BorderStyle.THIN);
            style.setTopBorderColor(color(Look.ACCENT));
            style.setBottomBorderColor(color(Look.ACCENT));
            style.setLeftBorderColor(color(Look.ACCENT));
            style.setRightBorderColor(color(Look.ACCENT));
            style.setLocked(false);
            style.setDataFormat(workbook.createDataFormat().getFormat(pattern));
        });
    }

    /**
     * A cell of a table's body or total row.
     *
     * @param named whether it names its row: the one cell that a marked row sets in bold
     */
    XSSFCellStyle body(
            String pattern, boolean numeric, Emphasis emphasis, boolean total, boolean quoted, boolean named) {
        return style(String.join("|", pattern, emphasis.name(), "" + numeric + total + quoted + named), style -> {
            if (total || (named && emphasis == Emphasis.MARKED)) {
                style.setFont(font(10, true, false, Look.INK));
            } else if (emphasis == Emphasis.FAINT) {
                style.setFont(font(10, false, true, Look.QUIET));
            }
            if (emphasis == Emphasis.MARKED) {
                fill(style, Look.TINT);
            }
            style.setBorderBottom(BorderStyle.HAIR);
            style.setBottomBorderColor(color(Look.FAINT));
            if (total) {
                style.setBorderTop(BorderStyle.THIN);
                style.setTopBorderColor(color(Look.INK));
            }
            style.setVerticalAlignment(VerticalAlignment.TOP);
            style.setAlignment(numeric ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
            style.setWrapText(!numeric);
            style.setIndention((short) (numeric ? 0 : 1));
            style.setQuotePrefixed(quoted);
            if (!pattern.isEmpty()) {
                style.setDataFormat(workbook.createDataFormat().getFormat(pattern));
            }
        });
    }

    /** The column's number format, else the value's own where money and numbers share a column. */
    String pattern(Format format, CellValue value, int places) {
        return pattern(format.of(value), format == format.of(value) ? places : ownPlaces(value));
    }

    private static int ownPlaces(CellValue value) {
        return value instanceof CellValue.Figure figure && !figure.number().isWhole() ? ColumnDigits.MOST : 0;
    }

    /** @param places decimals of counts, amounts and fine money */
    String pattern(Format format, int places) {
        return switch (format) {
            case MONEY, MONEY_OR_COUNT, UNIT_MONEY -> signed("#,##0" + decimals(printing.currencyDecimals()), "");
            case PERCENT -> signed("0.0", printing.percentMark());
            case COUNT, AMOUNT, FINE_MONEY -> signed("#,##0" + decimals(places), "");
            case DATE -> "d mmm yyyy";
            case TEXT, YES_NO -> "";
        };
    }

    private static String decimals(int places) {
        return places == 0 ? "" : "." + "0".repeat(places);
    }

    /** The second part is for negative figures: with a true minus sign. */
    private static String signed(String digits, String mark) {
        String quoted = mark.isEmpty() ? "" : "\"" + mark + "\"";
        return digits + quoted + ";\"" + Printing.MINUS + "\"" + digits + quoted;
    }

    private XSSFCellStyle style(String key, Consumer<XSSFCellStyle> look) {
        return styles.computeIfAbsent(key, k -> {
            XSSFCellStyle style = workbook.createCellStyle();
            look.accept(style);
            return style;
        });
    }

    private XSSFFont font(int size, boolean bold, boolean italic, Color colour) {
        XSSFFont font = workbook.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints((short) size);
        font.setBold(bold);
        font.setItalic(italic);
        font.setColor(color(colour));
        return font;
    }

    private static void wrapTop(XSSFCellStyle style) {
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
    }

    private static void fill(XSSFCellStyle style, Color colour) {
        style.setFillForegroundColor(color(colour));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    static XSSFColor color(Color colour) {
        return new XSSFColor(
                new byte[] {(byte) colour.getRed(), (byte) colour.getGreen(), (byte) colour.getBlue()}, null);
    }
}
