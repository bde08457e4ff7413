package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.report.Faces.Face;
import heeltap.report.LabelPlacement.Mark;
import heeltap.report.LabelPlacement.Place;
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
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** A plot of named marks with cut lines, laid out when made, drawn any number of times. */
final class ScatterDrawing {
    private static final float[] SIZES = {7.5f, 7, 6.5f, 6, 5.5f};
    private static final double LEFT = 50;
    private static final double BOTTOM = 34;
    private static final float LEGEND_ROW = 12;
    /** Fewer points than this are never crowded. */
    private static final int CROWD = 12;

    private static final Ink QUARTER = new Ink(Face.SERIF, 15, Look.FAINT);

    /** A name as set: its lines, one under the other. */
    private record Name(List<String> lines, double width, double height) {}

    private final Faces faces;
    private final Printing printing;
    private final ScatterChart chart;
    private final float width;
    private final Rectangle2D data;
    private final NumberAxis xAxis;
    private final NumberAxis yAxis;
    private final List<List<Entry>> legend;
    private final List<String> rightNames = new ArrayList<>();
    private final double topMargin;
    private Ink ink = new Ink(Face.PLAIN, SIZES[0], Look.INK);
    private List<Optional<Place>> places = List.of();
    private List<Name> names = List.of();

    /** An entry of the legend; the order of its mark is negative where it is a remark in words only. */
    private record Entry(int order, boolean certain, String word) {}

    ScatterDrawing(Faces faces, Printing printing, ScatterChart chart, float width, float height) {
        this.faces = faces;
        this.printing = printing;
        this.chart = chart;
        this.width = width;
        this.legend = legendRows();
        double right = 8;
        for (Cut cut : chart.horizontalCuts()) {
            rightNames.add(cut.name());
            right = Math.max(right, Math.min(86, cutInk().width(faces, cut.name())) + 8);
        }
        this.topMargin = chart.verticalCuts().isEmpty() ? 8 : 8 + 10 * topRows().size();
        double legendHeight = legend.size() * LEGEND_ROW + 4;
        this.data = new Rectangle2D.Double(
                LEFT, topMargin, width - LEFT - right, height - topMargin - BOTTOM - legendHeight);
        this.xAxis = xAxis();
        this.yAxis = new NumberAxis(faces.printable(Face.BOLD, chart.yTitle()));
        double[] yRange = range(false);
        yAxis.setRange(yRange[0], yRange[1]);
        Axes.style(xAxis, faces, printing, chart.xFormat());
        Axes.style(yAxis, faces, printing, chart.yFormat());
        placeNames();
    }

    Rectangle2D data() {
        return data;
    }

    List<Optional<Place>> places() {
        return places;
    }

    /** Names for which there is no room at the smallest size. */
    List<String> unnamed() {
        List<String> unnamed = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i).isEmpty()) {
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
        drawLegend(graphics);
    }

    /** Stretched where half the points would share less than a fifth of the width. */
    private NumberAxis xAxis() {
        double[] range = range(true);
        double[] values = chart.points().stream()
                .mapToDouble(point -> point.x().toDouble())
                .sorted()
                .toArray();
        double median = values.length == 0 ? 0 : values[values.length / 2];
        boolean crowded = values.length >= CROWD
                && values[0] >= 0
                && median > 0
                && (median - range[0]) / (range[1] - range[0]) < 0.2;
        String title = faces.printable(Face.BOLD, chart.xTitle());
        NumberAxis axis = crowded
                ? new StretchedAxis(title + " (" + printing.words().get("stretched") + ")", median / 4)
                : new NumberAxis(title);
        axis.setRange(range[0], range[1]);
        return axis;
    }

    /** From the least to the greatest of points and cuts, with some air; at zero where that is near. */
    private double[] range(boolean horizontal) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : chart.points()) {
            double value = (horizontal ? point.x() : point.y()).toDouble();
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        for (Cut cut : horizontal ? chart.verticalCuts() : chart.horizontalCuts()) {
            low = Math.min(low, cut.at().toDouble());
            high = Math.max(high, cut.at().toDouble());
        }
        if (low > high) {
            return new double[] {0, 1};
        }
        double air = high > low ? (high - low) * 0.07 : Math.max(1, Math.abs(high) * 0.1);
        double from = low >= 0 && low - air < (high - low) * 0.1 ? Math.min(0, low - air) : low - air;
        boolean atZero = low >= 0 && from < 0;
        return new double[] {atZero ? (low == 0 ? -air * 0.6 : 0) : from, high + air};
    }

    private double x(double value) {
        return xAxis.valueToJava2D(value, data, RectangleEdge.BOTTOM);
    }

    private double y(double value) {
        return yAxis.valueToJava2D(value, data, RectangleEdge.LEFT);
    }

    private void placeNames() {
        int fewest = Integer.MAX_VALUE;
        for (float size : SIZES) {
            Ink set = ink.at(size);
            List<Name> tried = chart.points().stream()
                    .map(point -> name(set, point.label()))
                    .toList();
            List<Mark> marks = new ArrayList<>();
            for (int i = 0; i < tried.size(); i++) {
                Point point = chart.points().get(i);
                Name name = tried.get(i);
                marks.add(new Mark(
                        x(point.x().toDouble()),
                        y(point.y().toDouble()),
                        radius(point) + 0.6,
                        name.width(),
                        name.height()));
            }
            LabelPlacement placement = LabelPlacement.of(data, marks, avoided());
            if (placement.tangles() < fewest) {
                fewest = placement.tangles();
                names = tried;
                places = placement.places();
                ink = set;
            }
            if (fewest == 0) {
                return;
            }
        }
    }

    private Name name(Ink set, String label) {
        double whole = set.width(faces, label);
        List<String> lines =
                whole > set.size() * 13 ? set.wrap(faces, label, (float) Math.max(whole * 0.6, 60)) : List.of(label);
        double widest =
                lines.stream().mapToDouble(line -> set.width(faces, line)).max().orElse(0);
        return new Name(lines, widest, lines.size() * set.size() * 1.12);
    }

    /** Area in proportion to the weight, between a least and a greatest size. */
    private double radius(Point point) {
        double greatest = chart.points().stream()
                .mapToDouble(p -> p.weight().abs().toDouble())
                .max()
                .orElse(0);
        double share = greatest == 0 ? 0.3 : point.weight().abs().toDouble() / greatest;
        double most = chart.points().size() > 40 ? 5 : 6.2;
        return Math.max(2.3, most * Math.sqrt(share));
    }

    private void drawAxes(Graphics2D graphics) {
        XYPlot plot = new XYPlot(null, xAxis, yAxis, null);
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
        left.setLeft(LEFT);
        plot.setFixedRangeAxisSpace(left);
        AxisSpace bottom = new AxisSpace();
        bottom.setBottom(BOTTOM);
        plot.setFixedDomainAxisSpace(bottom);
        JFreeChart drawing = new JFreeChart(null, faces.drawing(Face.PLAIN, Look.SMALL), plot, false);
        drawing.setBackgroundPaint(null);
        drawing.setPadding(RectangleInsets.ZERO_INSETS);
        drawing.draw(graphics, new Rectangle2D.Double(0, topMargin, data.getMaxX(), data.getHeight() + BOTTOM));
    }

    private void drawQuarters(Graphics2D graphics) {
        List<Rectangle2D> boxes = quarterBoxes();
        for (int i = 0; i < boxes.size(); i++) {
            Rectangle2D box = boxes.get(i);
            text(
                    graphics,
                    QUARTER,
                    box.getMinX(),
                    box.getMinY() + 13,
                    chart.quarters().get(i));
        }
    }

    /** In the outer corners; none where the plot has no quarters. */
    private List<Rectangle2D> quarterBoxes() {
        List<Rectangle2D> boxes = new ArrayList<>();
        boolean quartered = chart.quarters().size() == 4
                && !chart.verticalCuts().isEmpty()
                && !chart.horizontalCuts().isEmpty();
        for (int i = 0; quartered && i < 4; i++) {
            double wide = QUARTER.width(faces, chart.quarters().get(i));
            boxes.add(freest(quarterCorners(i % 2 == 0, i < 2, wide)));
        }
        return boxes;
    }

    /** The corners of a quarter, the outermost first. */
    private List<Rectangle2D> quarterCorners(boolean left, boolean upper, double wide) {
        double x = x(chart.verticalCuts().get(0).at().toDouble());
        double y = y(chart.horizontalCuts().get(0).at().toDouble());
        double[] lefts = left
                ? new double[] {data.getMinX() + 6, x - 6 - wide}
                : new double[] {data.getMaxX() - 6 - wide, x + 6};
        double[] tops = upper ? new double[] {data.getMinY() + 4, y - 20} : new double[] {data.getMaxY() - 20, y + 4};
        List<Rectangle2D> corners = new ArrayList<>();
        for (double top : tops) {
            for (double at : lefts) {
                corners.add(new Rectangle2D.Double(at, top, wide, 16));
            }
        }
        return corners;
    }

    /** The one that covers the fewest marks, with some air around them. */
    private Rectangle2D freest(List<Rectangle2D> boxes) {
        return boxes.stream()
                .min(Comparator.comparingLong(box -> chart.points().stream()
                        .filter(p -> box.intersects(x(p.x().toDouble()) - 16, y(p.y().toDouble()) - 10, 32, 20))
                        .count()))
                .orElseThrow();
    }

    private List<Rectangle2D> avoided() {
        List<Rectangle2D> avoided = new ArrayList<>(quarterBoxes());
        for (Cut cut : chart.verticalCuts()) {
            avoided.add(new Rectangle2D.Double(x(cut.at().toDouble()) - 0.6, data.getMinY(), 1.2, data.getHeight()));
        }
        for (Cut cut : chart.horizontalCuts()) {
            avoided.add(new Rectangle2D.Double(data.getMinX(), y(cut.at().toDouble()) - 0.6, data.getWidth(), 1.2));
        }
        return avoided;
    }

    private void drawCuts(Graphics2D graphics) {
        graphics.setStroke(
                new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 2.5f}, 0));
        graphics.setPaint(Look.ACCENT);
        chart.verticalCuts().forEach(cut -> {
            double x = x(cut.at().toDouble());
            graphics.draw(new Line2D.Double(x, data.getMinY(), x, data.getMaxY()));
        });
        chart.horizontalCuts().forEach(cut -> {
            double y = y(cut.at().toDouble());
            graphics.draw(new Line2D.Double(data.getMinX(), y, data.getMaxX(), y));
        });
        int row = 0;
        for (Cut cut : topRows()) {
            double wide = cutInk().width(faces, cut.name());
            double left = Math.max(0, Math.min(x(cut.at().toDouble()) - wide / 2, width - wide));
            double baseline = 8 + 10.0 * row;
            text(graphics, cutInk(), left, baseline, cut.name());
            row++;
        }
        drawRightNames(graphics);
    }

    private List<Cut> topRows() {
        return chart.verticalCuts().stream()
                .sorted(Comparator.comparing(Cut::at))
                .toList();
    }

    /** Beside the lines' ends, pushed apart where lines are close. */
    private void drawRightNames(Graphics2D graphics) {
        List<Cut> fromTop = chart.horizontalCuts().stream()
                .sorted(Comparator.comparing(Cut::at).reversed())
                .toList();
        double free = data.getMinY();
        for (Cut cut : fromTop) {
            List<String> lines = cutInk().wrap(faces, cut.name(), (float) (width - data.getMaxX() - 5));
            double tall = lines.size() * 8.5;
            double top = Math.max(free, y(cut.at().toDouble()) - tall / 2);
            for (int i = 0; i < lines.size(); i++) {
                text(graphics, cutInk(), data.getMaxX() + 4, top + 6.5 + i * 8.5, lines.get(i));
            }
            free = top + tall + 2;
        }
    }

    private static Ink cutInk() {
        return new Ink(Face.BOLD, 7, Look.ACCENT);
    }

    private void drawMarks(Graphics2D graphics) {
        List<Point> largestFirst = chart.points().stream()
                .sorted(Comparator.comparing((Point p) -> p.weight().abs()).reversed())
                .toList();
        for (Point point : largestFirst) {
            MarkShapes.draw(
                    graphics,
                    point.kind().order(),
                    point.certain(),
                    x(point.x().toDouble()),
                    y(point.y().toDouble()),
                    radius(point));
        }
    }

    private void drawNames(Graphics2D graphics) {
        graphics.setStroke(new BasicStroke(0.4f));
        graphics.setPaint(Look.QUIET);
        places.forEach(place -> place.flatMap(Place::leader).ifPresent(graphics::draw));
        for (int i = 0; i < names.size(); i++) {
            if (places.get(i).isEmpty()) {
                continue;
            }
            Rectangle2D box = places.get(i).get().box();
            double baseline = box.getMinY() + ink.size() * 0.88;
            for (String line : names.get(i).lines()) {
                text(graphics, ink, box.getMinX(), baseline, line);
                baseline += ink.size() * 1.12;
            }
        }
    }

    private List<List<Entry>> legendRows() {
        List<Entry> entries = new ArrayList<>();
        chart.points().stream()
                .map(Point::kind)
                .distinct()
                .sorted(Comparator.comparingInt(Kind::order))
                .forEach(kind -> entries.add(new Entry(kind.order(), true, kind.word())));
        chart.points().stream()
                .filter(point -> !point.certain())
                .findFirst()
                .ifPresent(point -> entries.add(
                        new Entry(point.kind().order(), false, printing.words().get("uncertain"))));
        if (chart.points().stream().anyMatch(point -> !point.weight().isZero())) {
            entries.add(new Entry(-1, true, printing.words().get("weight")));
        }
        List<List<Entry>> rows = new ArrayList<>();
        double used = width;
        for (Entry entry : entries) {
            if (used + entryWidth(entry) > width - LEFT) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(entry);
            used += entryWidth(entry);
        }
        return rows;
    }

    private double entryWidth(Entry entry) {
        return Ink.SMALL.width(faces, entry.word()) + (entry.order() < 0 ? 14 : 26);
    }

    private void drawLegend(Graphics2D graphics) {
        double baseline = data.getMaxY() + BOTTOM + LEGEND_ROW;
        for (List<Entry> row : legend) {
            double left = LEFT;
            for (Entry entry : row) {
                double at = left;
                if (entry.order() >= 0) {
                    MarkShapes.draw(graphics, entry.order(), entry.certain(), left + 4, baseline - 2.7, 3.3);
                    at += 12;
                }
                text(graphics, Ink.SMALL, at, baseline, entry.word());
                left += entryWidth(entry);
            }
            baseline += LEGEND_ROW;
        }
    }

    private void text(Graphics2D graphics, Ink inkOfText, double x, double baseline, String text) {
        graphics.setPaint(inkOfText.color());
        graphics.setFont(faces.drawing(inkOfText.face(), inkOfText.size()));
        graphics.drawString(faces.printable(inkOfText.face(), text), (float) x, (float) baseline);
    }
}
