package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.report.Faces.Face;
import heeltap.report.LabelPlacement.Mark;
import heeltap.report.LabelPlacement.Place;
import heeltap.report.SheetWriter.ChartPlace;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LayoutMode;
import org.apache.poi.xddf.usermodel.chart.LayoutTarget;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFManualLayout;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/** One native scatter chart: a series for each kind of mark, one more for each cut line. */
final class NativeScatter {
    private static final List<MarkerStyle> SHAPES = List.of(
            MarkerStyle.CIRCLE,
            MarkerStyle.TRIANGLE,
            MarkerStyle.SQUARE,
            MarkerStyle.DIAMOND,
            MarkerStyle.X,
            MarkerStyle.STAR,
            MarkerStyle.PLUS,
            MarkerStyle.DASH);

    /** The plot inside the chart, in shares of its size. */
    private static final Rectangle2D PLOT = new Rectangle2D.Double(0.075, 0.09, 0.905, 0.71);

    /** Across, in points: as the smallest money has it, and how much more the largest. */
    private static final double SMALLEST = 6;

    private static final double LARGER = 6;
    /** How far the axes of a live chart reach beyond its marks, in shares of their span. */
    private static final double ROOM = 0.3;
    /** From a mark's centre to a label at its right. */
    private static final double TO_LABEL = 6;

    private final ScatterChart chart;
    private final double height;
    private final List<Optional<Place>> places;
    private final XSSFChart drawing;
    private final XDDFScatterChartData data;
    private final double[] xRange;
    private final double[] yRange;

    NativeScatter(WorkbookParts parts, ChartPlace place, XSSFClientAnchor anchor, ScatterChart chart) {
        this.chart = chart;
        this.height = place.rows() * NativeCharts.ROW_HEIGHT;
        this.drawing = NativeCharts.on(place.sheet(), anchor, chart.title());
        this.xRange = range(
                chart.points().stream().mapToDouble(p -> p.x().toDouble()).toArray(),
                chart.verticalCuts(),
                chart.isLive());
        this.yRange = range(
                chart.points().stream().mapToDouble(p -> p.y().toDouble()).toArray(),
                chart.horizontalCuts(),
                chart.isLive());
        XDDFValueAxis x = axis(AxisPosition.BOTTOM, chart.xTitle(), xRange);
        XDDFValueAxis y = axis(AxisPosition.LEFT, chart.yTitle(), yRange);
        x.setNumberFormat(NativeCharts.axisPattern(parts, chart.xFormat(), xRange[1] - xRange[0]));
        y.setNumberFormat(NativeCharts.axisPattern(parts, chart.yFormat(), yRange[1] - yRange[0]));
        this.data = (XDDFScatterChartData) drawing.createData(ChartTypes.SCATTER, x, y);
        data.setVaryColors(false);
        data.setStyle(ScatterStyle.LINE_MARKER);
        XDDFManualLayout layout =
                new XDDFManualLayout(drawing.getCTChart().getPlotArea().addNewLayout());
        layout.setTarget(LayoutTarget.INNER);
        layout.setXMode(LayoutMode.EDGE);
        layout.setYMode(LayoutMode.EDGE);
        layout.setX(PLOT.getX());
        layout.setY(PLOT.getY());
        layout.setWidthRatio(PLOT.getWidth());
        layout.setHeightRatio(PLOT.getHeight());
        this.places = place(parts);
    }

    double[] xRange() {
        return xRange;
    }

    double[] yRange() {
        return yRange;
    }

    void marks(String name, Kind kind, boolean certain, List<Point> points, String names, String xs, String ys) {
        XDDFScatterChartData.Series series = series(
                name,
                points.stream().map(p -> p.x().toDouble()).toArray(Double[]::new),
                points.stream().map(p -> p.y().toDouble()).toArray(Double[]::new),
                xs,
                ys);
        series.setMarkerStyle(SHAPES.get(Math.floorMod(kind.order(), SHAPES.size())));
        XDDFLineProperties none = new XDDFLineProperties();
        none.setFillProperties(new XDDFNoFillProperties());
        series.setLineProperties(none);
        SeriesXml.marks(
                series.getCTScatterSer(),
                MarkShapes.color(kind.order()),
                certain,
                points.stream().map(this::label).toList(),
                names);
    }

    void cut(String name, double[] x, double[] y, String xs, String ys) {
        XDDFScatterChartData.Series series = series(name, new Double[] {x[0], x[1]}, new Double[] {y[0], y[1]}, xs, ys);
        series.setMarkerStyle(MarkerStyle.NONE);
        XDDFLineProperties line = new XDDFLineProperties(NativeCharts.fill(Look.ACCENT));
        line.setWidth(1.25);
        line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
        series.setLineProperties(line);
    }

    void finish() {
        drawing.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        drawing.plot(data);
    }

    private XDDFScatterChartData.Series series(String name, Double[] x, Double[] y, String xs, String ys) {
        XDDFScatterChartData.Series series = (XDDFScatterChartData.Series)
                data.addSeries(XDDFDataSourcesFactory.fromArray(x, xs), XDDFDataSourcesFactory.fromArray(y, ys));
        series.setTitle(name, null);
        series.setSmooth(false);
        return series;
    }

    private XDDFValueAxis axis(AxisPosition position, String title, double[] range) {
        XDDFValueAxis axis = drawing.createValueAxis(position);
        axis.setTitle(title);
        axis.setMinimum(range[0]);
        axis.setMaximum(range[1]);
        axis.setCrosses(AxisCrosses.MIN);
        return axis;
    }

    /** Names are placed as on paper, and each is moved from where programs put it, beside its mark, to its place. */
    private List<Optional<Place>> place(WorkbookParts parts) {
        Ink ink = new Ink(Face.PLAIN, 7.6f, Look.INK);
        List<Mark> marks = chart.points().stream()
                .map(point -> new Mark(
                        x(point),
                        y(point),
                        size(point) / 2.0,
                        ink.width(parts.faces(), point.label()) + 4,
                        ink.size() + 2))
                .toList();
        Rectangle2D area = new Rectangle2D.Double(
                PLOT.getX() * NativeCharts.WIDTH,
                PLOT.getY() * height,
                PLOT.getWidth() * NativeCharts.WIDTH,
                PLOT.getHeight() * height);
        return LabelPlacement.of(area, marks, List.of(), cutBoxes(area)).places();
    }

    private List<Rectangle2D> cutBoxes(Rectangle2D area) {
        List<Rectangle2D> boxes = new ArrayList<>();
        for (Cut cut : chart.verticalCuts()) {
            boxes.add(new Rectangle2D.Double(x(cut.at().toDouble()) - 1, area.getMinY(), 2, area.getHeight()));
        }
        for (Cut cut : chart.horizontalCuts()) {
            boxes.add(new Rectangle2D.Double(area.getMinX(), y(cut.at().toDouble()) - 1, area.getWidth(), 2));
        }
        return boxes;
    }

    private SeriesXml.Label label(Point point) {
        Optional<Place> place = places.get(chart.points().indexOf(point));
        double dx = place.map(p -> p.box().getMinX() - x(point) - TO_LABEL).orElse(0d);
        double dy = place.map(p -> p.box().getCenterY() - y(point)).orElse(0d);
        return new SeriesXml.Label(point.label(), size(point), dx / NativeCharts.WIDTH, dy / height);
    }

    /** The area grows with the money, as on paper. */
    private int size(Point point) {
        double most = chart.points().stream()
                .mapToDouble(other -> Math.max(0, other.weight().toDouble()))
                .max()
                .orElse(0);
        double share = most == 0 ? 0 : Math.max(0, point.weight().toDouble()) / most;
        return (int) Math.round(SMALLEST + LARGER * Math.sqrt(share));
    }

    private double x(Point point) {
        return x(point.x().toDouble());
    }

    private double y(Point point) {
        return y(point.y().toDouble());
    }

    private double x(double value) {
        double share = (value - xRange[0]) / (xRange[1] - xRange[0]);
        return (PLOT.getX() + PLOT.getWidth() * share) * NativeCharts.WIDTH;
    }

    private double y(double value) {
        double share = (value - yRange[0]) / (yRange[1] - yRange[0]);
        return (PLOT.getMaxY() - PLOT.getHeight() * share) * height;
    }

    /** Round ends around all points and cuts. */
    private static double[] range(double[] values, List<Cut> cuts, boolean roomy) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        for (Cut cut : cuts) {
            low = Math.min(low, cut.at().toDouble());
            high = Math.max(high, cut.at().toDouble());
        }
        if (low > high) {
            return new double[] {0, 1};
        }
        double span = high > low ? high - low : Math.max(1, Math.abs(high));
        if (roomy) {
            // so that marks stay inside when prices are typed that were not thought of
            high += ROOM * span;
            low -= low >= 0 ? Math.min(low, ROOM * span) : ROOM * span;
            span = high - low;
        }
        double step = Math.pow(10, Math.floor(Math.log10(span))) / 2;
        double from = low >= 0 && low < span * 0.3 ? 0 : Math.floor((low - span * 0.05) / step) * step;
        return new double[] {from, Math.ceil((high + span * 0.05) / step) * step};
    }
}
