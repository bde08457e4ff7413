package heeltap.report;

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

    /**
     * A point's mark and label.
     *
     * @param size of the mark, in points
     * @param dx how far the label stands from the place at its mark's right, in shares of the chart's width; so too dy
     */
    record Label(String text, int size, double dx, double dy) {}

    static void marks(CTScatterSer series, Color color, boolean filled, List<Label> labels, String names) {
        XmlObject marker = series.getMarker();
        append(marker, "<c:size val=\"8\"/>" + paint(color, filled));
        String symbol = series.getMarker().getSymbol().getVal().toString();
        StringBuilder before = new StringBuilder();
        for (int i = 0; i < labels.size(); i++) {
            before.append(mark(i, symbol, labels.get(i).size(), paint(color, filled)));
        }
        before.append("<c:dLbls>");
        for (int i = 0; i < labels.size(); i++) {
            before.append(label(i, labels.get(i)));
        }
        before.append("<c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>");
        before.append("<c:txPr><a:bodyPr/><a:p><a:pPr>").append(TEXT).append("</a:pPr><a:endParaRPr/></a:p></c:txPr>");
        before.append("<c:dLblPos val=\"r\"/>").append(FLAGS);
        before.append("<c:extLst><c:ext uri=\"{CE6537A1-D6FC-4f65-9D91-7224C49458BB}\">");
        before.append("<c15:showDataLabelsRange val=\"1\"/><c15:showLeaderLines val=\"1\"/>"
                + "<c15:leaderLines><c:spPr><a:ln w=\"6350\"><a:solidFill><a:srgbClr val=\"A8A2A6\"/></a:solidFill></a:ln></c:spPr>"
                + "</c15:leaderLines></c:ext></c:extLst></c:dLbls>");
        insertBefore(series, "xVal", before.toString());
        append(series, range(labels, names));
    }

    private static String mark(int index, String symbol, int size, String paint) {
        return "<c:dPt><c:idx val=\"" + index + "\"/><c:marker><c:symbol val=\"" + symbol + "\"/><c:size val=\"" + size
                + "\"/>" + paint + "</c:marker><c:bubble3D val=\"0\"/></c:dPt>";
    }

    /** The size of all text of a chart that has none of its own. */
    static void textSize(XmlObject chartSpace) {
        append(
                chartSpace,
                "<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz=\"900\"/></a:pPr><a:endParaRPr/></a:p></c:txPr>");
    }

    private static String label(int index, Label label) {
        return "<c:dLbl><c:idx val=\"" + index + "\"/>" + moved(label) + "<c:tx><c:rich><a:bodyPr/><a:p><a:pPr>" + TEXT
                + "</a:pPr>"
                + "<a:fld id=\"{00000000-0000-4000-8000-" + String.format(Locale.ROOT, "%012d", index)
                + "}\" type=\"CELLRANGE\">"
                + "<a:rPr sz=\"700\"/><a:pPr>" + TEXT + "</a:pPr><a:t>" + StringEscapeUtils.escapeXml10(label.text())
                + "</a:t></a:fld></a:p></c:rich></c:tx><c:dLblPos val=\"r\"/>" + FLAGS
                + "<c:extLst><c:ext uri=\"{CE6537A1-D6FC-4f65-9D91-7224C49458BB}\"><c15:dlblFieldTable/>"
                + "<c15:showDataLabelsRange val=\"1\"/></c:ext></c:extLst></c:dLbl>";
    }

    /** Nothing where it would be moved by a hair only. */
    private static String moved(Label label) {
        if (Math.abs(label.dx()) < 0.006 && Math.abs(label.dy()) < 0.005) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                "<c:layout><c:manualLayout><c:x val=\"%.5f\"/><c:y val=\"%.5f\"/></c:manualLayout></c:layout>",
                label.dx(),
                label.dy());
    }

    private static String range(List<Label> labels, String names) {
        StringBuilder xml = new StringBuilder("<c:extLst><c:ext uri=\"{02D57815-91ED-43cb-92C2-25804820EDAC}\">");
        xml.append("<c15:datalabelsRange><c15:f>")
                .append(StringEscapeUtils.escapeXml10(names))
                .append("</c15:f>");
        xml.append("<c15:dlblRangeCache><c:ptCount val=\"")
                .append(labels.size())
                .append("\"/>");
        for (int i = 0; i < labels.size(); i++) {
            xml.append("<c:pt idx=\"").append(i).append("\"><c:v>");
            xml.append(StringEscapeUtils.escapeXml10(labels.get(i).text())).append("</c:v></c:pt>");
        }
        return xml.append("</c15:dlblRangeCache></c15:datalabelsRange></c:ext></c:extLst>")
                .toString();
    }

    private static String paint(Color color, boolean filled) {
        String hex = hex(color);
        String fill = "<a:solidFill><a:srgbClr val=\"" + (filled ? hex : hex(pale(color))) + "\"/></a:solidFill>";
        return "<c:spPr>" + fill + "<a:ln w=\"15875\"><a:solidFill><a:srgbClr val=\"" + hex
                + "\"/></a:solidFill></a:ln></c:spPr>";
    }

    private static String hex(Color color) {
        return String.format(Locale.ROOT, "%06X", color.getRGB() & 0xFFFFFF);
    }

    /** Not white: some programs draw marks without their outline. */
    private static Color pale(Color color) {
        return new Color(pale(color.getRed()), pale(color.getGreen()), pale(color.getBlue()));
    }

    private static int pale(int part) {
        return 255 - (255 - part) * 3 / 10;
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
