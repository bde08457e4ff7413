package heeltap.report;

import heeltap.document.LineChart;
import heeltap.quantity.Exact;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A native chart of lines over months. */
final class NativeLines {
    private NativeLines() {}

    /** @param ranges of each line in turn: its labels, then its values */
    static void draw(
            WorkbookParts parts, XSSFSheet sheet, XSSFClientAnchor anchor, LineChart chart, List<String> ranges) {
        XSSFChart drawing = NativeCharts.on(sheet, anchor, chart.title());
        XDDFCategoryAxis names = drawing.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis numbers = drawing.createValueAxis(AxisPosition.LEFT);
        numbers.setTitle(chart.valueTitle());
        double greatest = chart.lines().stream()
                .flatMap(line -> line.values().stream().flatMap(Optional::stream))
                .mapToDouble(value -> value.abs().toDouble())
                .max()
                .orElse(0);
        numbers.setNumberFormat(NativeCharts.axisPattern(parts, chart.format(), greatest));
        numbers.setCrossBetween(AxisCrossBetween.BETWEEN);
        XDDFLineChartData data = (XDDFLineChartData) drawing.createData(ChartTypes.LINE, names, numbers);
        data.setVaryColors(false);
        String[] labels = chart.labels().toArray(String[]::new);
        for (int i = 0; i < chart.lines().size(); i++) {
            LineChart.Line line = chart.lines().get(i);
            Double[] values = line.values().stream()
                    .map(value -> value.map(Exact::toDouble).orElse(null))
                    .toArray(Double[]::new);
            XDDFLineChartData.Series series = (XDDFLineChartData.Series) data.addSeries(
                    XDDFDataSourcesFactory.fromArray(labels, ranges.get(2 * i)),
                    XDDFDataSourcesFactory.fromArray(values, ranges.get(2 * i + 1)));
            series.setTitle(line.name(), null);
            series.setSmooth(false);
            XDDFLineProperties look = new XDDFLineProperties(NativeCharts.fill(i == 0 ? Look.ACCENT : Look.QUIET));
            if (i > 0) {
                look.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
            }
            series.setLineProperties(look);
        }
        if (chart.lines().size() > 1) {
            drawing.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
        drawing.plot(data);
    }
}
