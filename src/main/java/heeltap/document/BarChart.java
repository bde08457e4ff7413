package heeltap.document;

import heeltap.quantity.Exact;
import java.util.List;

/**
 * Horizontal bars, largest first, or a line by month.
 *
 * @param lines whether the values are joined as a line over the labels (months) instead of drawn as bars
 */
public record BarChart(String name, String title, String valueTitle, Format format, List<Bar> bars, boolean lines)
        implements Block {
    /** One bar or point. */
    public record Bar(String label, Exact value) {}
}
