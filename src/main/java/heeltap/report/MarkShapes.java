package heeltap.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The marks of a plot: each kind has a shape and a colour of its own; a mark that is not certain is hollow. */
final class MarkShapes {
    private MarkShapes() {}

    static void draw(Graphics2D graphics, int order, boolean certain, double x, double y, double radius) {
        Color color = color(order);
        Shape shape = shape(order, x, y, radius);
        graphics.setPaint(certain ? color : Color.WHITE);
        graphics.fill(shape);
        graphics.setPaint(certain ? Color.WHITE : color);
        graphics.setStroke(new BasicStroke(certain ? 0.5f : 1.2f));
        graphics.draw(shape);
        if (certain && order % Look.MARKS.size() == 7) {
            graphics.setPaint(Look.INK);
            graphics.draw(shape);
        }
    }

    /** A plain ring that stands for marks of every kind. */
    static void outline(Graphics2D graphics, double x, double y, double radius) {
        graphics.setPaint(Look.QUIET);
        graphics.setStroke(new BasicStroke(0.8f));
        graphics.draw(shape(0, x, y, radius));
    }

    static Color color(int order) {
        return Look.MARKS.get(Math.floorMod(order, Look.MARKS.size()));
    }

    /** Of equal area for all kinds: that of a circle with the radius. */
    static Shape shape(int order, double x, double y, double radius) {
        double square = radius * Math.sqrt(Math.PI);
        return switch (Math.floorMod(order, 8)) {
            case 0 -> new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
            case 1 -> polygon(x, y + radius * 0.2, radius * 1.5, 3, -Math.PI / 2);
            case 2 -> new Rectangle2D.Double(x - square / 2, y - square / 2, square, square);
            case 3 -> polygon(x, y, radius * 1.3, 4, 0);
            case 4 -> polygon(x, y - radius * 0.2, radius * 1.5, 3, Math.PI / 2);
            case 5 -> polygon(x, y, radius * 1.12, 6, 0);
            case 6 -> cross(x, y, radius * 1.15);
            default -> star(x, y, radius * 1.45);
        };
    }

    private static Shape polygon(double x, double y, double radius, int corners, double from) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners; i++) {
            add(path, i == 0, x, y, radius, from + 2 * Math.PI * i / corners);
        }
        path.closePath();
        return path;
    }

    private static Shape star(double x, double y, double radius) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < 10; i++) {
            add(path, i == 0, x, y, i % 2 == 0 ? radius : radius * 0.45, -Math.PI / 2 + Math.PI * i / 5);
        }
        path.closePath();
        return path;
    }

    private static Shape cross(double x, double y, double radius) {
        double arm = radius * 0.36;
        double[][] corners = {
            {-arm, -radius}, {arm, -radius}, {arm, -arm}, {radius, -arm}, {radius, arm}, {arm, arm},
            {arm, radius}, {-arm, radius}, {-arm, arm}, {-radius, arm}, {-radius, -arm}, {-arm, -arm}
        };
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners.length; i++) {
            if (i == 0) {
                path.moveTo(x + corners[i][0], y + corners[i][1]);
            } else {
                path.lineTo(x + corners[i][0], y + corners[i][1]);
            }
        }
        path.closePath();
        return path;
    }

    private static void add(Path2D path, boolean first, double x, double y, double radius, double angle) {
        double px = x + radius * Math.cos(angle);
        double py = y + radius * Math.sin(angle);
        if (first) {
            path.moveTo(px, py);
        } else {
            path.lineTo(px, py);
        }
    }
}
