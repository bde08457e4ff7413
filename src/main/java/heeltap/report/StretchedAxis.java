package heeltap.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.ValueTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * An axis that gives small values more room, for figures of which a few are far larger than the rest: even near zero,
 * logarithmic far from it ({@code ln(1 + |v| / scale)} with the sign of v).
 */
final class StretchedAxis extends NumberAxis {
    private static final long serialVersionUID = 1L;
    private static final double LEAST_STEP = 26;
    private static final double[] STEPS = {1, 2, 5};

    private final double scale;

    /** @param scale positive; below it the axis is nearly even */
    StretchedAxis(String label, double scale) {
        super(label);
        this.scale = scale;
    }

    @Override
    public double valueToJava2D(double value, Rectangle2D area, RectangleEdge edge) {
        double low = stretched(getLowerBound());
        double share = (stretched(value) - low) / (stretched(getUpperBound()) - low);
        return RectangleEdge.isTopOrBottom(edge)
                ? area.getMinX() + share * area.getWidth()
                : area.getMaxY() - share * area.getHeight();
    }

    @Override
    public double java2DToValue(double at, Rectangle2D area, RectangleEdge edge) {
        double low = stretched(getLowerBound());
        double share = RectangleEdge.isTopOrBottom(edge)
                ? (at - area.getMinX()) / area.getWidth()
                : (area.getMaxY() - at) / area.getHeight();
        double value = low + share * (stretched(getUpperBound()) - low);
        return Math.signum(value) * Math.expm1(Math.abs(value)) * scale;
    }

    @Override
    public List<ValueTick> refreshTicks(Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
        TextAnchor anchor = RectangleEdge.isTopOrBottom(edge) ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
        List<ValueTick> ticks = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double value : roundValues()) {
            double at = valueToJava2D(value, area, edge);
            if (value >= getLowerBound() && value <= getUpperBound() && Math.abs(at - last) >= LEAST_STEP) {
                String text = getNumberFormatOverride().format(value);
                ticks.add(new NumberTick(value, text, anchor, TextAnchor.CENTER, 0));
                last = at;
            }
        }
        return ticks;
    }

    /** Zero and 1, 2, 5 times the powers of ten, upwards. */
    private List<Double> roundValues() {
        List<Double> values = new ArrayList<>(List.of(0d));
        int from = (int) Math.floor(Math.log10(scale)) - 1;
        int to = (int) Math.ceil(Math.log10(Math.max(getUpperBound(), scale)));
        for (int power = from; power <= to; power++) {
            for (double step : STEPS) {
                values.add(step * Math.pow(10, power));
            }
        }
        return values;
    }

    private double stretched(double value) {
        return Math.signum(value) * Math.log1p(Math.abs(value) / scale);
    }

    @Override
    public boolean equals(Object other) {
        return super.equals(other) && other instanceof StretchedAxis axis && axis.scale == scale;
    }

    @Override
    public int hashCode() {
        return super.hashCode();
    }
}
