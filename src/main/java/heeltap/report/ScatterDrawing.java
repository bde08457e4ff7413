package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Point;
import heeltap.report.Faces.Face;
import heeltap.report.LabelPlacement.Place;
import heeltap.report.ScatterFrame.Quarter;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** A plot of named marks with cut lines, laid out when made, drawn any number of times. */
final class ScatterDrawing {
    private static final double CUT_LINE = 8.5;

    private final Faces faces;
    private final ScatterChart chart;
    private final float width;
    private final ScatterFrame frame;
    private final ScatterNames names;
    private final ScatterLegend legend;

    ScatterDrawing(Faces faces, Printing printing, ScatterChart chart, float width, float height) {
        this.faces = faces;
        this.chart = chart;
        this.width = width;
        this.legend = new ScatterLegend(faces, printing.words(), chart, width - ScatterFrame.LEFT);
        this.frame = new ScatterFrame(faces, printing, chart, width, height - legend.height());
        this.names = new ScatterNames(faces, chart, frame);
    }

    ScatterFrame frame() {
        return frame;
    }

    List<Optional<Place>> places() {
        return names.places();
    }

    /** Names for which there is no room at the smallest size. */
    List<String> unnamed() {
        List<String> unnamed = new ArrayList<>();
        for (int i = 0; i < names.places().size(); i++) {
            if (names.places().get(i).isEmpty()) {
                unnamed.add(chart.points().get(i).label());
            }
        }
        return unnamed;
    }

    void draw(Graphics2D graphics) {
        drawAxes(graphics);
        drawQuarters(graphics);
        drawCuts(graphics);
        drawMarks(graphics);
        drawNames(graphics);
        legend.draw(graphics, ScatterFrame.LEFT, frame.data().getMaxY() + ScatterFrame.BOTTOM);
    }

    private void drawAxes(Graphics2D graphics) {
        XYPlot plot = new XYPlot(null, frame.horizontal(), frame.vertical(), null);
        plot.setNoDataMessageFont(faces.drawing(Face.PLAIN, Look.SMALL));
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(null);
        plot.setOutlinePaint(null);
        plot.setDomainGridlinePaint(Look.HAIRLINE);
        plot.setRangeGridlinePaint(Look.HAIRLINE);
        plot.setDomainGridlineStroke(new BasicStroke(0.3f));
        plot.setRangeGridlineStroke(new BasicStroke(0.3f));
        AxisSpace left = new AxisSpace();
        left.setLeft(ScatterFrame.LEFT);
        plot.setFixedRangeAxisSpace(left);
        AxisSpace bottom = new AxisSpace();
        bottom.setBottom(ScatterFrame.BOTTOM);
        plot.setFixedDomainAxisSpace(bottom);
        JFreeChart drawing = new JFreeChart(null, faces.drawing(Face.PLAIN, Look.SMALL), plot, false);
        drawing.setBackgroundPaint(null);
        drawing.setPadding(RectangleInsets.ZERO_INSETS);
        Rectangle2D data = frame.data();
        drawing.draw(
                graphics,
                new Rectangle2D.Double(0, data.getMinY(), data.getMaxX(), data.getHeight() + ScatterFrame.BOTTOM));
    }

    private void drawQuarters(Graphics2D graphics) {
        Ink ink = frame.quarterInk();
        for (Quarter quarter : frame.quarters()) {
            double baseline = quarter.box().getMinY() + ink.size();
            for (String line : quarter.lines()) {
                boolean right = quarter.box().getCenterX() > frame.data().getCenterX();
                double left = right
                        ? quarter.box().getMaxX() - ink.width(faces, line)
                        : quarter.box().getMinX();
                text(graphics, faces, ink, left, baseline, line);
                baseline += ink.leading();
            }
        }
    }

    private void drawCuts(Graphics2D graphics) {
        graphics.setStroke(
                new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 2.5f}, 0));
        graphics.setPaint(Look.ACCENT);
        Rectangle2D data = frame.data();
        chart.verticalCuts().forEach(cut -> {
            double x = frame.x(cut.at().toDouble());
            graphics.draw(new Line2D.Double(x, data.getMinY(), x, data.getMaxY()));
        });
        chart.horizontalCuts().forEach(cut -> {
            double y = frame.y(cut.at().toDouble());
            graphics.draw(new Line2D.Double(data.getMinX(), y, data.getMaxX(), y));
        });
        drawTopNames(graphics);
        drawRightNames(graphics);
    }

    private void drawTopNames(Graphics2D graphics) {
        double baseline = 8;
        for (Cut cut : chart.verticalCuts().stream()
                .sorted(Comparator.comparing(Cut::at))
                .toList()) {
            double wide = ScatterFrame.CUT.width(faces, cut.name());
            double left = Math.max(0, Math.min(frame.x(cut.at().toDouble()) - wide / 2, width - wide));
            text(graphics, faces, ScatterFrame.CUT, left, baseline, cut.name());
            baseline += 10;
        }
    }

    /** Beside the lines' ends, pushed apart where lines are close. */
    private void drawRightNames(Graphics2D graphics) {
        Rectangle2D data = frame.data();
        List<Cut> fromTop = chart.horizontalCuts().stream()
                .sorted(Comparator.comparing(Cut::at).reversed())
                .toList();
        double free = data.getMinY();
        for (Cut cut : fromTop) {
            List<String> lines = ScatterFrame.CUT.wrap(faces, cut.name(), (float) (width - data.getMaxX() - 5));
            double tall = lines.size() * CUT_LINE;
            double top = Math.max(free, frame.y(cut.at().toDouble()) - tall / 2);
            for (int i = 0; i < lines.size(); i++) {
                text(graphics, faces, ScatterFrame.CUT, data.getMaxX() + 4, top + 6.5 + i * CUT_LINE, lines.get(i));
            }
            free = top + tall + 2;
        }
    }

    /** The largest first, so that none hides a smaller one. */
    private void drawMarks(Graphics2D graphics) {
        List<Point> largestFirst = chart.points().stream()
                .sorted(Comparator.comparing((Point p) -> p.weight().abs()).reversed())
                .toList();
        for (Point point : largestFirst) {
            MarkShapes.draw(
                    graphics,
                    point.kind().order(),
                    point.certain(),
                    frame.x(point),
                    frame.y(point),
                    frame.radius(point));
        }
    }

    private void drawNames(Graphics2D graphics) {
        graphics.setStroke(new BasicStroke(0.4f));
        graphics.setPaint(Look.QUIET);
        names.places().forEach(place -> place.flatMap(Place::leader).ifPresent(graphics::draw));
        Ink ink = names.ink();
        for (int i = 0; i < names.names().size(); i++) {
            if (names.places().get(i).isEmpty()) {
                continue;
            }
            Rectangle2D box = names.places().get(i).get().box();
            double baseline = box.getMinY() + ink.size() * 0.88;
            for (String line : names.names().get(i).lines()) {
                text(graphics, faces, ink, box.getMinX(), baseline, line);
                baseline += names.leading();
            }
        }
    }

    static void text(Graphics2D graphics, Faces faces, Ink ink, double x, double baseline, String text) {
        graphics.setPaint(ink.color());
        double at = x;
        for (Faces.Run run : faces.runs(ink.face(), text)) {
            graphics.setFont(faces.drawing(run.face(), ink.size()));
            graphics.drawString(run.text(), (float) at, (float) baseline);
            at += faces.width(run.face(), run.text(), ink.size());
        }
    }
}
