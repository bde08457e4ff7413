package heeltap.document;

import heeltap.quantity.Exact;
import java.util.List;
import java.util.stream.Stream;

/**
 * A plot of one figure against another with a named mark for each point, cut lines and words in the quarters.
 *
 * @param name unique among the charts, such as {@code cocktails-margin}
 * @param title for people
 * @param note a sentence under the title on where the cuts come from; empty for none
 * @param xTitle axis in plain words with its unit; so too the other
 * @param points in a fixed order
 * @param verticalCuts lines of equal x; so too the horizontal ones
 * @param quarters a word for each quarter between the first vertical and first horizontal cut: upper left, upper right,
 *     lower left, lower right; empty where the plot has none
 * @param xColumn the table and column behind x in the workbook, as {@code table.key}; so too y and label
 */
public record ScatterChart(
        String name,
        String title,
        String note,
        String xTitle,
        String yTitle,
        Format xFormat,
        Format yFormat,
        List<Point> points,
        List<Cut> verticalCuts,
        List<Cut> horizontalCuts,
        List<String> quarters,
        String xColumn,
        String yColumn,
        String labelColumn)
        implements Block {
    /**
     * One named mark.
     *
     * @param kind decides shape and colour; its word stands in the legend
     * @param weight money behind the mark: decides its size; zero for the smallest
     * @param certain whether the class is sure; an uncertain mark is drawn hollow
     */
    public record Point(String label, Exact x, Exact y, Kind kind, Exact weight, boolean certain) {}

    /**
     * A cut line.
     *
     * @param name what the line is, with its value in words, such as {@code target 22 %}
     * @param column the table and column that hold its place in the workbook, as {@code table.key}, so that the line
     *     follows what a reader types; empty: it stands where it is
     * @param row the row of that table, from 0
     */
    public record Cut(Exact at, String name, String column, int row) {
        public Cut(Exact at, String name) {
            this(at, name, "", 0);
        }
    }

    /** Whether a cut follows what a reader of the workbook types; the axes then leave room to move. */
    public boolean isLive() {
        return Stream.concat(verticalCuts.stream(), horizontalCuts.stream())
                .anyMatch(cut -> !cut.column().isEmpty());
    }

    /**
     * What a mark stands for.
     *
     * @param order 0 to 7: picks the shape and the colour
     * @param word for the legend
     */
    public record Kind(int order, String word) {}
}
