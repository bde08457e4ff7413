package heeltap.report;

import heeltap.document.BarChart;
import heeltap.report.Faces.Face;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** A line by month. */
final class LineDrawing {
    private final Faces faces;
    private final Printing printing;
    private final BarChart chart;
    private final float width;
    private final float height;

    LineDrawing(Faces faces, Printing printing, BarChart chart, float width, float height) {
        this.faces = faces;
        this.printing = printing;
        this.chart = chart;
        this.width = width;
        this.height = height;
    }

    void draw(Graphics2D graphics) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        for (BarChart.Bar bar : chart.bars()) {
            data.addValue(bar.value().toDouble(), chart.valueTitle(), faces.printable(Face.PLAIN, bar.label()));
        }
        Font font = faces.drawing(Face.PLAIN, Look.SMALL);
        CategoryAxis months = new CategoryAxis();
        months.setLabelFont(font);
        months.setTickLabelFont(font);
        months.setTickLabelPaint(Look.QUIET);
        months.setAxisLinePaint(Look.QUIET);
        NumberAxis values = new NumberAxis(faces.printable(Face.PLAIN, chart.valueTitle()));
        Axes.style(values, faces, printing, chart.format());
        values.setAutoRangeIncludesZero(true);
        LineAndShapeRenderer renderer = new LineAndShapeRenderer(true, true);
        renderer.setSeriesPaint(0, Look.ACCENT);
        renderer.setSeriesStroke(0, new BasicStroke(1.4f));
        renderer.setSeriesShape(0, new Ellipse2D.Double(-2.5, -2.5, 5, 5));
        CategoryPlot plot = new CategoryPlot(data, months, values, renderer);
        plot.setNoDataMessageFont(font);
        plot.setBackgroundPaint(null);
        plot.setOutlinePaint(null);
        plot.setRangeGridlinePaint(Look.HAIRLINE);
        plot.setRangeGridlineStroke(new BasicStroke(0.4f));
        JFreeChart drawing = new JFreeChart(null, font, plot, false);
        drawing.setBackgroundPaint(null);
        drawing.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }
}
