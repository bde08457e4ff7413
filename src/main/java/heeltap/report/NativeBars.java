package heeltap.report;

import heeltap.document.BarChart;
import java.util.List;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A native chart of bars. */
final class NativeBars {
    private NativeBars() {}

    static void draw(
            WorkbookParts parts,
            XSSFSheet sheet,
            XSSFClientAnchor anchor,
            BarChart chart,
            List<String> labels,
            List<Double> values,
            String labelRange,
            String valueRange) {
        XSSFChart drawing = NativeCharts.on(sheet, anchor, chart.title());
        XDDFCategoryAxis names = drawing.createCategoryAxis(AxisPosition.LEFT);
        XDDFValueAxis numbers = drawing.createValueAxis(AxisPosition.BOTTOM);
        numbers.setTitle(chart.valueTitle());
        double greatest = values.stream().mapToDouble(Math::abs).max().orElse(0);
        numbers.setNumberFormat(NativeCharts.axisPattern(parts, chart.format(), greatest));
        numbers.setCrossBetween(AxisCrossBetween.BETWEEN);
        names.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFBarChartData data = (XDDFBarChartData) drawing.createData(ChartTypes.BAR, names, numbers);
        data.setVaryColors(false);
        XDDFChartData.Series series = data.addSeries(
                XDDFDataSourcesFactory.fromArray(labels.toArray(String[]::new), labelRange),
                XDDFDataSourcesFactory.fromArray(values.toArray(Double[]::new), valueRange));
        series.setTitle(chart.valueTitle(), null);
        series.setFillProperties(NativeCharts.fill(Look.ACCENT));
        data.setBarDirection(BarDirection.BAR);
        data.setGapWidth(60);
        names.setOrientation(AxisOrientation.MAX_MIN);
        numbers.setCrosses(AxisCrosses.MAX);
        drawing.plot(data);
    }
}
