package heeltap.report;

import heeltap.document.ScatterChart.Point;
import java.awt.Color;
import java.util.List;
import java.util.Locale;
import javax.xml.namespace.QName;
import org.apache.commons.text.StringEscapeUtils;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;

/**
 * Parts of a chart's series that the library has no words for: marks filled or hollow, and a label for each point that
 * takes its text from a cell (an extension of 2012 to ISO/IEC 29500, with the text itself for programs without it).
 */
final class SeriesXml {
    private static final String C = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static final String HEAD =
            "<x xmlns:c=\"" + C + "\" xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\""
                    + " xmlns:c15=\"http://schemas.microsoft.com/office/drawing/2012/chart\">";
    private static final String FLAGS = "<c:showLegendKey val=\"0\"/><c:showVal val=\"0\"/><c:showCatName val=\"0\"/>"
            + "<c:showSerName val=\"0\"/><c:showPercent val=\"0\"/><c:showBubbleSize val=\"0\"/>";
    private static final String TEXT = "<a:defRPr sz=\"700\"/>";

    private SeriesXml() {}

    static void marks(CTScatterSer series, Color color, List<Point> points, String names) {
        XmlObject marker = series.getMarker();
        append(marker, "<c:size val=\"8\"/>" + paint(color, true));
        StringBuilder before = new StringBuilder();
        for (int i = 0; i < points.size(); i++) {
            if (!points.get(i).certain()) {
                before.append("<c:dPt><c:idx val=\"").append(i).append("\"/><c:marker><c:symbol val=\"");
                before.append(series.getMarker().getSymbol().getVal()).append("\"/><c:size val=\"8\"/>");
                before.append(paint(color, false)).append("</c:marker><c:bubble3D val=\"0\"/></c:dPt>");
            }
        }
        before.append("<c:dLbls>");
        for (int i = 0; i < points.size(); i++) {
            before.append(label(i, points.get(i).label()));
        }
        before.append("<c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>");
        before.append("<c:txPr><a:bodyPr/><a:p><a:pPr>").append(TEXT).append("</a:pPr><a:endParaRPr/></a:p></c:txPr>");
        before.append("<c:dLblPos val=\"r\"/>").append(FLAGS);
        before.append("<c:extLst><c:ext uri=\"{CE6537A1-D6FC-4f65-9D91-7224C49458BB}\">");
        before.append(
                "<c15:showDataLabelsRange val=\"1\"/><c15:showLeaderLines val=\"1\"/></c:ext></c:extLst></c:dLbls>");
        insertBefore(series, "xVal", before.toString());
        append(series, range(points, names));
    }

    /** The size of all text of a chart that has none of its own. */
    static void textSize(XmlObject chartSpace) {
        append(
                chartSpace,
                "<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz=\"900\"/></a:pPr><a:endParaRPr/></a:p></c:txPr>");
    }

    private static String label(int index, String text) {
        return "<c:dLbl><c:idx val=\"" + index + "\"/><c:tx><c:rich><a:bodyPr/><a:p><a:pPr>" + TEXT + "</a:pPr>"
                + "<a:fld id=\"{00000000-0000-4000-8000-" + String.format(Locale.ROOT, "%012d", index)
                + "}\" type=\"CELLRANGE\">"
                + "<a:rPr sz=\"700\"/><a:pPr>" + TEXT + "</a:pPr><a:t>" + StringEscapeUtils.escapeXml10(text)
                + "</a:t></a:fld></a:p></c:rich></c:tx><c:dLblPos val=\"r\"/>" + FLAGS
                + "<c:extLst><c:ext uri=\"{CE6537A1-D6FC-4f65-9D91-7224C49458BB}\"><c15:dlblFieldTable/>"
                + "<c15:showDataLabelsRange val=\"1\"/></c:ext></c:extLst></c:dLbl>";
    }

    private static String range(List<Point> points, String names) {
        StringBuilder xml = new StringBuilder("<c:extLst><c:ext uri=\"{02D57815-91ED-43cb-92C2-25804820EDAC}\">");
        xml.append("<c15:datalabelsRange><c15:f>")
                .append(StringEscapeUtils.escapeXml10(names))
                .append("</c15:f>");
        xml.append("<c15:dlblRangeCache><c:ptCount val=\"")
                .append(points.size())
                .append("\"/>");
        for (int i = 0; i < points.size(); i++) {
            xml.append("<c:pt idx=\"").append(i).append("\"><c:v>");
            xml.append(StringEscapeUtils.escapeXml10(points.get(i).label())).append("</c:v></c:pt>");
        }
        return xml.append("</c15:dlblRangeCache></c15:datalabelsRange></c:ext></c:extLst>")
                .toString();
    }

    private static String paint(Color color, boolean filled) {
        String hex = String.format(Locale.ROOT, "%06X", color.getRGB() & 0xFFFFFF);
        String fill = "<a:solidFill><a:srgbClr val=\"" + (filled ? hex : "FFFFFF") + "\"/></a:solidFill>";
        return "<c:spPr>" + fill + "<a:ln w=\"15875\"><a:solidFill><a:srgbClr val=\"" + hex
                + "\"/></a:solidFill></a:ln></c:spPr>";
    }

    private static void append(XmlObject to, String xml) {
        try (XmlCursor cursor = to.newCursor()) {
            cursor.toEndToken();
            copy(xml, cursor);
        }
    }

    private static void insertBefore(XmlObject parent, String child, String xml) {
        try (XmlCursor cursor = parent.newCursor()) {
            if (!cursor.toChild(new QName(C, child))) {
                throw new IllegalStateException("a series has no " + child);
            }
            copy(xml, cursor);
        }
    }

    private static void copy(String xml, XmlCursor to) {
        try (XmlCursor from = XmlObject.Factory.parse(HEAD + xml + "</x>").newCursor()) {
            from.toFirstChild();
            from.copyXmlContents(to);
        } catch (XmlException e) {
            throw new IllegalStateException("the parts of a chart are no XML", e);
        }
    }
}
