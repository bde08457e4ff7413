package heeltap.report;

import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Point;
import heeltap.report.Faces.Face;
import heeltap.report.LabelPlacement.Mark;
import heeltap.report.LabelPlacement.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The names of a plot's marks, set in the largest type in which they do not tangle. */
final class ScatterNames {
    private static final float[] SIZES = {7.5f, 7, 6.5f, 6, 5.5f};
    private static final double AIR = 0.8;
    private static final double LEADING = 1.12;
    /** A name longer than so many times its size is set in two lines. */
    private static final double LONG = 13;

    /** A name as set: its lines, one under the other. */
    record Name(List<String> lines, double width, double height) {}

    private final Faces faces;
    private final ScatterChart chart;
    private final ScatterFrame frame;
    private Ink ink = new Ink(Face.PLAIN, SIZES[0], Look.INK);
    private List<Optional<Place>> places = List.of();
    private List<Name> names = List.of();

    ScatterNames(Faces faces, ScatterChart chart, ScatterFrame frame) {
        this.faces = faces;
        this.chart = chart;
        this.frame = frame;
        place();
    }

    Ink ink() {
        return ink;
    }

    double leading() {
        return ink.size() * LEADING;
    }

    /** One for each point; empty where there is no room at the smallest size. */
    List<Optional<Place>> places() {
        return places;
    }

    List<Name> names() {
        return names;
    }

    private void place() {
        int fewest = Integer.MAX_VALUE;
        for (float size : SIZES) {
            Ink set = ink.at(size);
            List<Name> tried = chart.points().stream()
                    .map(point -> name(set, point.label()))
                    .toList();
            LabelPlacement placement = LabelPlacement.of(
                    frame.data(),
                    marks(tried),
                    frame.quarters().stream().map(ScatterFrame.Quarter::box).toList(),
                    frame.cuts());
            if (placement.tangles() < fewest) {
                fewest = placement.tangles();
                names = tried;
                places = placement.places();
                ink = set;
            }
            if (fewest == 0) {
                return;
            }
        }
    }

    private List<Mark> marks(List<Name> tried) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            Point point = chart.points().get(i);
            Name name = tried.get(i);
            marks.add(new Mark(frame.x(point), frame.y(point), frame.reach(point) + AIR, name.width(), name.height()));
        }
        return marks;
    }

    private Name name(Ink set, String label) {
        double whole = set.width(faces, label);
        List<String> lines =
                whole > set.size() * LONG ? set.wrap(faces, label, (float) Math.max(whole * 0.6, 60)) : List.of(label);
        double widest =
                lines.stream().mapToDouble(line -> set.width(faces, line)).max().orElse(0);
        return new Name(lines, widest, lines.size() * set.size() * LEADING);
    }
}
