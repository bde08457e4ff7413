package heeltap.document;

import heeltap.quantity.Exact;
import java.util.List;
import java.util.Optional;

/**
 * Lines over labels, such as months.
 *
 * @param labels along the axis, in order
 * @param lines the first is the one that matters most
 */
public record LineChart(
        String name, String title, String valueTitle, Format format, List<String> labels, List<Line> lines)
        implements Block {
    /**
     * One line.
     *
     * @param name for the legend
     * @param values one for each label; empty: the line has a gap there
     */
    public record Line(String name, List<Optional<Exact>> values) {}

    /** @throws IllegalArgumentException if a line has not a value for each label */
    public LineChart {
        labels = List.copyOf(labels);
        lines = List.copyOf(lines);
        int width = labels.size();
        if (lines.stream().anyMatch(line -> line.values().size() != width)) {
            throw new IllegalArgumentException("a line of chart " + name + " has not " + width + " values");
        }
    }
}
