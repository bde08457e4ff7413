package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import java.util.List;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

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

    private final XSSFChart drawing;
    private final XDDFScatterChartData data;
    private final double[] xRange;
    private final double[] yRange;

    NativeScatter(WorkbookParts parts, XSSFSheet sheet, XSSFClientAnchor anchor, ScatterChart chart) {
        this.drawing = NativeCharts.on(sheet, anchor, chart.title());
        this.xRange =
                range(chart.points().stream().mapToDouble(p -> p.x().toDouble()).toArray(), chart.verticalCuts());
        this.yRange =
                range(chart.points().stream().mapToDouble(p -> p.y().toDouble()).toArray(), chart.horizontalCuts());
        XDDFValueAxis x = axis(AxisPosition.BOTTOM, chart.xTitle(), xRange);
        XDDFValueAxis y = axis(AxisPosition.LEFT, chart.yTitle(), yRange);
        x.setNumberFormat(NativeCharts.axisPattern(parts, chart.xFormat(), xRange[1] - xRange[0]));
        y.setNumberFormat(NativeCharts.axisPattern(parts, chart.yFormat(), yRange[1] - yRange[0]));
        this.data = (XDDFScatterChartData) drawing.createData(ChartTypes.SCATTER, x, y);
        data.setVaryColors(false);
        data.setStyle(ScatterStyle.LINE_MARKER);
    }

    double[] xRange() {
        return xRange;
    }

    double[] yRange() {
        return yRange;
    }

    void marks(Kind kind, List<Point> points, String names, String xs, String ys) {
        XDDFScatterChartData.Series series = series(
                kind.word(),
                points.stream().map(p -> p.x().toDouble()).toArray(Double[]::new),
                points.stream().map(p -> p.y().toDouble()).toArray(Double[]::new),
                xs,
                ys);
        series.setMarkerStyle(SHAPES.get(Math.floorMod(kind.order(), SHAPES.size())));
        XDDFLineProperties none = new XDDFLineProperties();
        none.setFillProperties(new XDDFNoFillProperties());
        series.setLineProperties(none);
        SeriesXml.marks(series.getCTScatterSer(), MarkShapes.color(kind.order()), points, names);
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

    /** Round ends around all points and cuts. */
    private static double[] range(double[] values, List<Cut> cuts) {
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
        double step = Math.pow(10, Math.floor(Math.log10(span))) / 2;
        double from = low >= 0 && low < span * 0.3 ? 0 : Math.floor((low - span * 0.05) / step) * step;
        return new double[] {from, Math.ceil((high + span * 0.05) / step) * step};
    }
}
