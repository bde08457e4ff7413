package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Kind;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the marks of a plot stand for, under it. */
final class ScatterLegend {
    private static final float ROW = 12;
    private static final double MARK = 3.3;
    private static final double SMALL = 2;
    private static final double LARGE = 4.4;

    /**
     * A mark and its word.
     *
     * @param order of the mark; negative for two plain ones, a small and a large
     */
    private record Entry(int order, boolean certain, String word) {
        double markWidth() {
            return order < 0 ? 20 : 12;
        }
    }

    private final Faces faces;
    private final List<List<Entry>> rows = new ArrayList<>();

    ScatterLegend(Faces faces, Words words, ScatterChart chart, double width) {
        this.faces = faces;
        double used = width;
        for (Entry entry : entries(words, chart)) {
            if (rows.isEmpty() || used + width(entry) > width) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(entry);
            used += width(entry);
        }
    }

    double height() {
        return rows.size() * ROW + 4;
    }

    private static List<Entry> entries(Words words, ScatterChart chart) {
        List<Entry> entries = new ArrayList<>();
        chart.points().stream()
                .map(ScatterChart.Point::kind)
                .distinct()
                .sorted(Comparator.comparingInt(Kind::order))
                .forEach(kind -> entries.add(new Entry(kind.order(), true, kind.word())));
        chart.points().stream()
                .filter(point -> !point.certain())
                .findFirst()
                .ifPresent(point -> entries.add(new Entry(point.kind().order(), false, words.get("uncertain"))));
        if (chart.points().stream().anyMatch(point -> !point.weight().isZero())) {
            entries.add(new Entry(-1, true, words.get("weight")));
        }
        return entries;
    }

    private double width(Entry entry) {
        return entry.markWidth() + Ink.SMALL.width(faces, entry.word()) + 14;
    }

    void draw(Graphics2D graphics, double left, double top) {
        double baseline = top + ROW;
        for (List<Entry> row : rows) {
            double at = left;
            for (Entry entry : row) {
                mark(graphics, entry, at + 4, baseline - 2.7);
                ScatterDrawing.text(graphics, faces, Ink.SMALL, at + entry.markWidth(), baseline, entry.word());
                at += width(entry);
            }
            baseline += ROW;
        }
    }

    private static void mark(Graphics2D graphics, Entry entry, double x, double y) {
        if (entry.order() < 0) {
            MarkShapes.outline(graphics, x - 1, y, SMALL);
            MarkShapes.outline(graphics, x + 8, y, LARGE);
        } else {
            MarkShapes.draw(graphics, entry.order(), entry.certain(), x, y, MARK);
        }
    }
}
