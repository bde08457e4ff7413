package heeltap.report;

import heeltap.document.LineChart;
import heeltap.quantity.Exact;
import heeltap.report.Faces.Face;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** Lines over months, told apart by stroke and mark as well as by colour. */
final class LineDrawing {
    private static final BasicStroke SOLID = new BasicStroke(1.4f);
    private static final BasicStroke DASHED =
            new BasicStroke(1.1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0);

    private final Faces faces;
    private final Printing printing;
    private final LineChart chart;
    private final float width;
    private final float height;

    LineDrawing(Faces faces, Printing printing, LineChart chart, float width, float height) {
        this.faces = faces;
        this.printing = printing;
        this.chart = chart;
        this.width = width;
        this.height = height;
    }

    void draw(Graphics2D graphics) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        for (LineChart.Line line : chart.lines()) {
            for (int i = 0; i < chart.labels().size(); i++) {
                data.addValue(
                        line.values().get(i).map(Exact::toDouble).orElse(null),
                        faces.printable(Face.PLAIN, line.name()),
                        faces.printable(Face.PLAIN, chart.labels().get(i)));
            }
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
        for (int i = 0; i < chart.lines().size(); i++) {
            boolean first = i == 0;
            renderer.setSeriesPaint(i, first ? Look.ACCENT : Look.QUIET);
            renderer.setSeriesStroke(i, first ? SOLID : DASHED);
            renderer.setSeriesShape(i, MarkShapes.shape(first ? 0 : 2, 0, 0, 2.5));
        }
        CategoryPlot plot = new CategoryPlot(data, months, values, renderer);
        plot.setNoDataMessageFont(font);
        plot.setBackgroundPaint(null);
        plot.setOutlinePaint(null);
        plot.setRangeGridlinePaint(Look.HAIRLINE);
        plot.setRangeGridlineStroke(new BasicStroke(0.4f));
        JFreeChart drawing = new JFreeChart(null, font, plot, chart.lines().size() > 1);
        if (drawing.getLegend() != null) {
            drawing.getLegend().setItemFont(font);
            drawing.getLegend().setItemPaint(Look.QUIET);
            drawing.getLegend().setFrame(BlockBorder.NONE);
            drawing.getLegend().setBackgroundPaint(null);
        }
        drawing.setBackgroundPaint(null);
        drawing.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }
}
