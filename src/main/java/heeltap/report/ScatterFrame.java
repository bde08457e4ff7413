package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Point;
import heeltap.report.Faces.Face;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Where a plot's marks, cuts and words of the quarters stand. Above the highest mark and below the lowest a band is
 * kept free for the words of the quarters, so that nothing lies on them.
 */
final class ScatterFrame {
    static final double LEFT = 50;
    static final double BOTTOM = 34;
    static final Ink CUT = new Ink(Face.BOLD, 7, Look.ACCENT);

    private static final float[] QUARTER_SIZES = {8.5f, 8, 7.5f, 7, 6.5f, 6};
    private static final double CUT_ROW = 10;
    /** Fewer points than this are never crowded. */
    private static final int CROWD = 12;
    /** No side of the upright cut is narrower than this share of the other. */
    private static final double LEAST_SIDE = 0.2;

    private static final double LARGEST_MARK = 6.2;
    private static final double CORNERS = 1.3;
    private static final double LARGEST_OF_MANY = 5;
    private static final double SMALLEST_MARK = 2.3;
    private static final int MANY = 40;

    /** The word of a quarter as set. */
    record Quarter(List<String> lines, Rectangle2D box) {}

    private final Faces faces;
    private final Printing printing;
    private final ScatterChart chart;
    private final Rectangle2D data;
    private final NumberAxis xAxis;
    private final NumberAxis yAxis;
    private final double greatestWeight;
    private Ink quarterInk = new Ink(Face.ITALIC, QUARTER_SIZES[0], Look.QUIET);
    private List<List<String>> quarterWords = List.of();

    ScatterFrame(Faces faces, Printing printing, ScatterChart chart, float width, double height) {
        this.faces = faces;
        this.printing = printing;
        this.chart = chart;
        double right = 8;
        for (Cut cut : chart.horizontalCuts()) {
            right = Math.max(right, Math.min(width < 500 ? 50 : 86, CUT.width(faces, cut.name())) + 8);
        }
        double top = 8 + CUT_ROW * chart.verticalCuts().size();
        this.data = new Rectangle2D.Double(LEFT, top, width - LEFT - right, height - top - BOTTOM);
        this.greatestWeight = chart.points().stream()
                .mapToDouble(p -> p.weight().abs().toDouble())
                .max()
                .orElse(0);
        this.xAxis = xAxis();
        if (isQuartered()) {
            setQuarterWords();
        }
        this.yAxis = yAxis();
        Axes.style(xAxis, faces, printing, chart.xFormat());
        Axes.style(yAxis, faces, printing, chart.yFormat());
    }

    Rectangle2D data() {
        return data;
    }

    NumberAxis horizontal() {
        return xAxis;
    }

    NumberAxis vertical() {
        return yAxis;
    }

    double x(Point point) {
        return x(point.x().toDouble());
    }

    double y(Point point) {
        return y(point.y().toDouble());
    }

    double x(double value) {
        return xAxis.valueToJava2D(value, data, RectangleEdge.BOTTOM);
    }

    double y(double value) {
        return yAxis.valueToJava2D(value, data, RectangleEdge.LEFT);
    }

    /** Area in proportion to the weight, between a least and a greatest size. */
    double radius(Point point) {
        double share = greatestWeight == 0 ? 0.3 : point.weight().abs().toDouble() / greatestWeight;
        return Math.max(SMALLEST_MARK, largestMark() * Math.sqrt(share));
    }

    /** How far the mark's corners reach; those of most shapes stand out of a circle of the same area. */
    double reach(Point point) {
        return radius(point) * (point.kind().order() % Look.MARKS.size() == 0 ? 1 : CORNERS);
    }

    private double largestMark() {
        return chart.points().size() > MANY ? LARGEST_OF_MANY : LARGEST_MARK;
    }

    /** The cut lines, a hair wide. */
    List<Rectangle2D> cuts() {
        List<Rectangle2D> cuts = new ArrayList<>();
        for (Cut cut : chart.verticalCuts()) {
            cuts.add(new Rectangle2D.Double(x(cut.at().toDouble()) - 0.6, data.getMinY(), 1.2, data.getHeight()));
        }
        for (Cut cut : chart.horizontalCuts()) {
            cuts.add(new Rectangle2D.Double(data.getMinX(), y(cut.at().toDouble()) - 0.6, data.getWidth(), 1.2));
        }
        return cuts;
    }

    Ink quarterInk() {
        return quarterInk;
    }

    /** In the outer corners of the bands; none where the plot has no quarters. */
    List<Quarter> quarters() {
        List<Quarter> quarters = new ArrayList<>();
        for (int i = 0; i < quarterWords.size(); i++) {
            List<String> lines = quarterWords.get(i);
            double wide = lines.stream()
                    .mapToDouble(line -> quarterInk.width(faces, line))
                    .max()
                    .orElse(0);
            double tall = lines.size() * quarterInk.leading();
            double left = i % 2 == 0 ? data.getMinX() + 4 : data.getMaxX() - 4 - wide;
            double top = i < 2 ? data.getMinY() + 3 : data.getMaxY() - 3 - tall;
            quarters.add(new Quarter(lines, new Rectangle2D.Double(left, top, wide, tall)));
        }
        return quarters;
    }

    private boolean isQuartered() {
        return chart.quarters().size() == 4
                && !chart.verticalCuts().isEmpty()
                && !chart.horizontalCuts().isEmpty();
    }

    /** In the largest type in which every word keeps to its side of the upright cut, in two lines at the most. */
    private void setQuarterWords() {
        double cut = x(chart.verticalCuts().get(0).at().toDouble());
        double[] rooms = {cut - data.getMinX() - 8, data.getMaxX() - cut - 8};
        for (float size : QUARTER_SIZES) {
            quarterInk = quarterInk.at(size);
            quarterWords = new ArrayList<>();
            boolean fits = true;
            for (int i = 0; i < 4; i++) {
                String word = chart.quarters().get(i);
                List<String> lines = quarterInk.wrap(faces, word, (float) Math.max(rooms[i % 2], 24));
                fits &= lines.size() <= 2 && quarterInk.widestWord(faces, word) <= rooms[i % 2];
                quarterWords.add(lines);
            }
            if (fits) {
                return;
            }
        }
    }

    /** How much of the plot's height the words of the quarters take above and below, with the marks kept off. */
    private double band(boolean upper) {
        int lines = 0;
        for (int i = 0; i < quarterWords.size(); i++) {
            lines = i < 2 == upper ? Math.max(lines, quarterWords.get(i).size()) : lines;
        }
        return (lines == 0 ? 6 : lines * quarterInk.leading() + 5) + largestMark();
    }

    /** Stretched where half the points, or all that stands before the cut, would share less than a fifth of the width. */
    private NumberAxis xAxis() {
        double[] extent = extent(Point::x, chart.verticalCuts());
        double air = air(extent);
        boolean positive = extent[0] >= 0;
        double from = positive && extent[0] - air < (extent[1] - extent[0]) * 0.1 ? 0 : extent[0] - air;
        double to = extent[1] + air;
        double[] values = chart.points().stream()
                .mapToDouble(point -> point.x().toDouble())
                .sorted()
                .toArray();
        double middle = values.length < CROWD ? to : values[values.length / 2];
        if (!chart.verticalCuts().isEmpty()) {
            double cut = chart.verticalCuts().get(0).at().toDouble();
            to = Math.max(to, cut + (cut - from) * LEAST_SIDE);
            from = positive ? Math.max(0, Math.min(from, cut - (to - cut) * LEAST_SIDE)) : from;
            middle = Math.min(middle, cut);
        }
        boolean crowded = positive && middle > 0 && (middle - from) / (to - from) < LEAST_SIDE;
        String title = faces.printable(Face.BOLD, chart.xTitle());
        NumberAxis axis = crowded
                ? new StretchedAxis(title + " (" + printing.words().get("stretched") + ")", middle / 4)
                : new NumberAxis(title);
        // a mark at nothing would stand on the axis
        axis.setRange(from == 0 && extent[0] == 0 ? -air * 0.6 : from, to);
        return axis;
    }

    private NumberAxis yAxis() {
        double[] extent = extent(Point::y, chart.horizontalCuts());
        double span = extent[1] > extent[0] ? extent[1] - extent[0] : 2 * air(extent);
        double low = extent[1] > extent[0] ? extent[0] : extent[0] - span / 2;
        double above = band(true);
        double below = band(false);
        double point = span / Math.max(20, data.getHeight() - above - below);
        NumberAxis axis = new NumberAxis(faces.printable(Face.BOLD, chart.yTitle()));
        axis.setRange(low - below * point, low + span + above * point);
        return axis;
    }

    /** The least and the greatest of points and cuts. */
    private double[] extent(Function<Point, heeltap.quantity.Exact> of, List<Cut> cuts) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : chart.points()) {
            low = Math.min(low, of.apply(point).toDouble());
            high = Math.max(high, of.apply(point).toDouble());
        }
        for (Cut cut : cuts) {
            low = Math.min(low, cut.at().toDouble());
            high = Math.max(high, cut.at().toDouble());
        }
        return low > high ? new double[] {0, 1} : new double[] {low, high};
    }

    private static double air(double[] extent) {
        return extent[1] > extent[0] ? (extent[1] - extent[0]) * 0.07 : Math.max(1, Math.abs(extent[1]) * 0.1);
    }
}
