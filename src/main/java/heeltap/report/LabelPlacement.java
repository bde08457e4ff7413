package heeltap.report;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for the names of marks: no name over another name or over a mark, none outside the plot, each as near to
 * its mark as may be. Names are set from the most crowded mark on and then moved one by one as long as that helps.
 */
final class LabelPlacement {
    private static final double[] RINGS = {1.5, 5, 10, 16, 23, 31, 40, 51, 64, 80, 100, 125, 155, 190, 230, 280, 340};
    private static final int ANGLES = 24;
    private static final int PASSES = 8;
    private static final double GAP = 0.8;
    private static final double NEAR = 4;
    /** What it costs a name to cover a line. */
    private static final double LINE = 400;

    private static final double IMPOSSIBLE = Double.POSITIVE_INFINITY;

    /** A mark with its name's size. */
    record Mark(double x, double y, double radius, double width, double height) {}

    /**
     * Where a name stands.
     *
     * @param leader the line that joins it with its mark; empty where it stands beside it
     */
    record Place(Rectangle2D box, Optional<Line2D> leader) {}

    private final Rectangle2D area;
    private final List<Mark> marks;
    private final List<Rectangle2D> taken;
    private final List<Rectangle2D> avoided;
    private final @Nullable Place[] places;

    private LabelPlacement(Rectangle2D area, List<Mark> marks, List<Rectangle2D> taken, List<Rectangle2D> avoided) {
        this.taken = taken;
        this.avoided = avoided;
        this.area = area;
        this.marks = marks;
        this.places = new Place[marks.size()];
    }

    /**
     * @param taken places that no name may cover
     * @param avoided lines that a name covers only where it finds no other room
     */
    static LabelPlacement of(Rectangle2D area, List<Mark> marks, List<Rectangle2D> taken, List<Rectangle2D> avoided) {
        LabelPlacement placement = new LabelPlacement(area, marks, taken, avoided);
        placement.run();
        return placement;
    }

    /** One place for each mark, empty where no room is left. */
    List<Optional<Place>> places() {
        List<Optional<Place>> result = new ArrayList<>();
        for (Place place : places) {
            result.add(Optional.ofNullable(place));
        }
        return result;
    }

    /** How many pairs of names have lines that cross each other or a name; a name without room counts tenfold. */
    int tangles() {
        int tangles = 0;
        for (int i = 0; i < places.length; i++) {
            tangles += places[i] == null ? 10 : 0;
            for (int j = 0; j < i; j++) {
                tangles += isTangled(i, j) ? 1 : 0;
            }
        }
        return tangles;
    }

    private void run() {
        List<Integer> order = IntStream.range(0, marks.size())
                .boxed()
                .sorted(Comparator.comparingDouble(this::roominess))
                .toList();
        order.forEach(i -> places[i] = best(i));
        boolean moved = true;
        for (int pass = 0; moved && pass < PASSES; pass++) {
            moved = false;
            for (int i : order) {
                moved |= improve(i);
            }
            moved |= untangle(order);
        }
        for (int i : order) {
            places[i] = places[i] == null ? anywhere(i) : places[i];
        }
    }

    /** Takes two names with tangled lines off and sets the second one first. */
    private boolean untangle(List<Integer> order) {
        boolean moved = false;
        for (int i : order) {
            for (int j : order) {
                moved |= i != j && isTangled(i, j) && exchange(i, j);
            }
        }
        return moved;
    }

    private boolean exchange(int i, int j) {
        Place first = places[i];
        Place second = places[j];
        double before = total(i, j);
        places[i] = null;
        places[j] = null;
        places[j] = best(j);
        places[i] = best(i);
        if (places[i] != null && places[j] != null && total(i, j) < before - 1e-6) {
            return true;
        }
        places[i] = first;
        places[j] = second;
        return false;
    }

    private double total(int i, int j) {
        Place first = places[i];
        Place second = places[j];
        return first == null || second == null ? IMPOSSIBLE : cost(i, first, IMPOSSIBLE) + cost(j, second, IMPOSSIBLE);
    }

    private boolean isTangled(int i, int j) {
        Place first = places[i];
        Place second = places[j];
        if (first == null || second == null) {
            return false;
        }
        boolean over = first.leader()
                        .filter(line -> line.intersects(second.box()))
                        .isPresent()
                || second.leader().filter(line -> line.intersects(first.box())).isPresent();
        return over
                || first.leader()
                        .flatMap(line -> second.leader().filter(line::intersectsLine))
                        .isPresent();
    }

    /** Sum of distances to the five nearest marks. */
    private double roominess(int i) {
        Mark mark = marks.get(i);
        return marks.stream()
                .mapToDouble(other -> Math.hypot(other.x() - mark.x(), other.y() - mark.y()))
                .sorted()
                .limit(6)
                .sum();
    }

    private boolean improve(int i) {
        Place before = places[i];
        places[i] = null;
        double cost = before == null ? IMPOSSIBLE : cost(i, before, IMPOSSIBLE);
        Place better = best(i);
        boolean moved = better != null && cost(i, better, IMPOSSIBLE) < cost - 1e-6;
        places[i] = moved ? better : before;
        return moved;
    }

    private @Nullable Place best(int i) {
        Place best = null;
        double least = IMPOSSIBLE;
        for (double distance : RINGS) {
            if (distance > least) {
                break;
            }
            for (int a = 0; a < ANGLES; a++) {
                Place place = at(i, distance, 2 * Math.PI * a / ANGLES);
                double cost = cost(i, place, least);
                if (cost < least) {
                    least = cost;
                    best = place;
                }
            }
        }
        return best;
    }

    private @Nullable Place anywhere(int i) {
        Mark mark = marks.get(i);
        Place best = null;
        double least = IMPOSSIBLE;
        for (double y = area.getMinY(); y + mark.height() <= area.getMaxY(); y += 3) {
            for (double x = area.getMinX(); x + mark.width() <= area.getMaxX(); x += 3) {
                Place place = placed(i, new Rectangle2D.Double(x, y, mark.width(), mark.height()));
                double cost = cost(i, place, least);
                if (cost < least) {
                    least = cost;
                    best = place;
                }
            }
        }
        return best;
    }

    private Place at(int i, double distance, double angle) {
        Mark mark = marks.get(i);
        double reach = mark.radius() + distance;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double x = mark.x() + cos * reach + (cos - 1) * mark.width() / 2;
        double y = mark.y() + sin * reach + (sin - 1) * mark.height() / 2;
        return placed(i, new Rectangle2D.Double(x, y, mark.width(), mark.height()));
    }

    private Place placed(int i, Rectangle2D box) {
        Mark mark = marks.get(i);
        Point2D end = nearest(box, mark);
        double distance = end.distance(mark.x(), mark.y()) - mark.radius();
        if (distance <= NEAR && !ambiguous(i, box, distance)) {
            return new Place(box, Optional.empty());
        }
        double share = mark.radius() / Math.max(mark.radius(), end.distance(mark.x(), mark.y()));
        double x = mark.x() + (end.getX() - mark.x()) * share;
        double y = mark.y() + (end.getY() - mark.y()) * share;
        return new Place(box, Optional.of(new Line2D.Double(x, y, end.getX(), end.getY())));
    }

    private boolean ambiguous(int i, Rectangle2D box, double distance) {
        for (int j = 0; j < marks.size(); j++) {
            Mark other = marks.get(j);
            if (j != i && nearest(box, other).distance(other.x(), other.y()) - other.radius() < distance + 1) {
                return true;
            }
        }
        return false;
    }

    /** No more exact than needed once it is above the limit. */
    private double cost(int i, Place place, double limit) {
        Rectangle2D box = place.box();
        if (!area.contains(box) || taken.stream().anyMatch(box::intersects)) {
            return IMPOSSIBLE;
        }
        Mark mark = marks.get(i);
        double cost = nearest(box, mark).distance(mark.x(), mark.y()) - mark.radius();
        cost += place.leader().isPresent() ? 6 : 0;
        cost += Math.abs(box.getCenterY() - mark.y()) * 0.08 + (box.getCenterX() < mark.x() ? 0.7 : 0);
        cost += LINE * avoided.stream().filter(box::intersects).count();
        for (int j = 0; j < marks.size(); j++) {
            cost += j == i ? ownMark(box, mark) : besides(place, marks.get(j), places[j]);
            if (cost >= limit) {
                return cost;
            }
        }
        return cost;
    }

    private static double ownMark(Rectangle2D box, Mark mark) {
        return covers(box, mark) ? IMPOSSIBLE : 0;
    }

    private static double besides(Place place, Mark mark, @Nullable Place other) {
        Rectangle2D box = place.box();
        if (covers(box, mark) || (other != null && overlap(box, other.box()))) {
            return IMPOSSIBLE;
        }
        double cost = 0;
        if (place.leader().isPresent()) {
            Line2D leader = place.leader().get();
            cost += leader.ptSegDist(mark.x(), mark.y()) < mark.radius() + 0.5 ? 30 : 0;
            cost += other != null && leader.intersects(other.box()) ? 120 : 0;
        }
        if (other != null && other.leader().isPresent()) {
            Line2D crossed = other.leader().get();
            cost += crossed.intersects(box) ? 120 : 0;
            cost += place.leader().filter(crossed::intersectsLine).isPresent() ? 60 : 0;
        }
        return cost;
    }

    static boolean overlap(Rectangle2D a, Rectangle2D b) {
        return a.getMinX() < b.getMaxX() + GAP
                && b.getMinX() < a.getMaxX() + GAP
                && a.getMinY() < b.getMaxY() + GAP
                && b.getMinY() < a.getMaxY() + GAP;
    }

    static boolean covers(Rectangle2D box, Mark mark) {
        return nearest(box, mark).distance(mark.x(), mark.y()) < mark.radius() + 0.4;
    }

    private static Point2D nearest(Rectangle2D box, Mark mark) {
        return new Point2D.Double(
                Math.max(box.getMinX(), Math.min(mark.x(), box.getMaxX())),
                Math.max(box.getMinY(), Math.min(mark.y(), box.getMaxY())));
    }
}
