package heeltap.report;

import heeltap.document.ColumnDigits;
import heeltap.document.Format;
import java.awt.Color;
import org.apache.poi.util.Units;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What all native charts of the workbook share. */
final class NativeCharts {
    /** From this span on, an axis needs no decimals. */
    private static final double WIDE_SPAN = 8;

    /** Of every chart, in points. */
    static final double WIDTH = 760;

    static final double ROW_HEIGHT = 15;

    private NativeCharts() {}

    /** A place so many rows high and {@link #WIDTH} wide, whatever the columns are; their widths must be final. */
    static XSSFClientAnchor anchor(XSSFSheet sheet, int row, int rows) {
        for (int i = row; i < row + rows; i++) {
            XSSFRow filled = sheet.getRow(i) == null ? sheet.createRow(i) : sheet.getRow(i);
            filled.setHeightInPoints((float) ROW_HEIGHT);
        }
        double left = WIDTH;
        int column = 0;
        while (left > columnWidth(sheet, column)) {
            left -= columnWidth(sheet, column++);
        }
        return new XSSFClientAnchor(0, 0, Units.toEMU(left), 0, 0, row, column, row + rows);
    }

    private static double columnWidth(XSSFSheet sheet, int column) {
        return sheet.isColumnHidden(column) ? 0 : Units.pixelToPoints(sheet.getColumnWidthInPixels(column));
    }

    static XSSFChart on(XSSFSheet sheet, XSSFClientAnchor anchor, String title) {
        XSSFChart drawing = sheet.createDrawingPatriarch().createChart(anchor);
        drawing.setTitleText(title);
        drawing.setTitleOverlay(false);
        drawing.getTitle().getOrAddTextProperties().setFontSize(12d);
        // POI marks the run with the machine's language, and the same input would give other bytes elsewhere
        drawing.getTitle()
                .getBody()
                .getParagraphs()
                .forEach(paragraph -> paragraph.getTextRuns().forEach(run -> run.setLanguage(null)));
        drawing.displayBlanksAs(DisplayBlanks.GAP);
        SeriesXml.textSize(drawing.getCTChartSpace());
        return drawing;
    }

    static String axisPattern(WorkbookParts parts, Format format, double span) {
        if (span < WIDE_SPAN) {
            return parts.styles().pattern(format, ColumnDigits.MOST);
        }
        String pattern = parts.styles().pattern(Format.COUNT, 0);
        return format == Format.PERCENT
                ? pattern.replace("0", "0\"" + parts.printing().percentMark() + "\"")
                : pattern;
    }

    static XDDFSolidFillProperties fill(Color color) {
        return new XDDFSolidFillProperties(
                XDDFColor.from(new byte[] {(byte) color.getRed(), (byte) color.getGreen(), (byte) color.getBlue()}));
    }
}
