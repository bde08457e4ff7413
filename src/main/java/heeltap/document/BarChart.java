package heeltap.document;

import heeltap.quantity.Exact;
import java.util.List;

/** Horizontal bars, in their order from the top. */
public record BarChart(String name, String title, String valueTitle, Format format, List<Bar> bars) implements Block {
    /** One bar. */
    public record Bar(String label, Exact value) {}
}
