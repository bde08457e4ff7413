package heeltap.report;

import heeltap.document.Format;
import java.awt.Color;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What all native charts of the workbook share. */
final class NativeCharts {
    /** From this span on, an axis needs no decimals. */
    private static final double WIDE_SPAN = 8;

    private NativeCharts() {}

    static XSSFChart on(XSSFSheet sheet, XSSFClientAnchor anchor, String title) {
        XSSFChart drawing = sheet.createDrawingPatriarch().createChart(anchor);
        drawing.setTitleText(title);
        drawing.setTitleOverlay(false);
        drawing.getTitle().getOrAddTextProperties().setFontSize(12d);
        drawing.displayBlanksAs(DisplayBlanks.GAP);
        SeriesXml.textSize(drawing.getCTChartSpace());
        return drawing;
    }

    static String axisPattern(WorkbookParts parts, Format format, double span) {
        if (span < WIDE_SPAN) {
            return parts.styles().pattern(format, false, 4);
        }
        String pattern = parts.styles().pattern(Format.COUNT, true, 0);
        return format == Format.PERCENT
                ? pattern.replace("0", "0\"" + parts.printing().percentMark() + "\"")
                : pattern;
    }

    static XDDFSolidFillProperties fill(Color color) {
        return new XDDFSolidFillProperties(
                XDDFColor.from(new byte[] {(byte) color.getRed(), (byte) color.getGreen(), (byte) color.getBlue()}));
    }
}
