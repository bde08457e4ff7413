package heeltap.report;

import heeltap.document.Format;
import heeltap.report.Faces.Face;
import java.awt.BasicStroke;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.ui.RectangleInsets;

/** How the axes of all charts look. */
final class Axes {
    private Axes() {}

    static void style(NumberAxis axis, Faces faces, Printing printing, Format format) {
        axis.setLabelFont(faces.drawing(Face.BOLD, Look.SMALL));
        axis.setLabelPaint(Look.QUIET);
        axis.setTickLabelFont(faces.drawing(Face.PLAIN, Look.SMALL));
        axis.setTickLabelInsets(new RectangleInsets(5, 4, 5, 4));
        axis.setTickLabelPaint(Look.QUIET);
        axis.setAxisLinePaint(Look.QUIET);
        axis.setAxisLineStroke(new BasicStroke(0.5f));
        axis.setTickMarkPaint(Look.QUIET);
        axis.setTickMarkStroke(new BasicStroke(0.4f));
        axis.setNumberFormatOverride(printing.axis(format));
    }
}
