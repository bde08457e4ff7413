package heeltap.report;

import heeltap.document.Block.Figure;
import heeltap.document.CellValue;
import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;

/** The month's figures side by side: the name, the figure in large type, and its change. */
final class FigureRow {
    private static final String UNKNOWN = "\u2013";
    /** So many, and no more, stand in large type. */
    private static final int FEW = 6;

    private static final int MOST = 12;
    private static final float LARGE = 19;
    private static final float MANY_LARGE = 11;
    private static final float SMALLEST = 7;
    private static final float INSET = 14;
    private static final float MANY_INSET = 8;
    private static final float AIR = 8;

    private final Faces faces;
    private final Printing printing;
    private final float width;

    FigureRow(Faces faces, Printing printing, float width) {
        this.faces = faces;
        this.printing = printing;
        this.width = width;
    }

    /** As many rows as it takes. */
    List<Slab> slabs(List<Figure> figures, Tag tag) {
        List<Slab> slabs = new ArrayList<>();
        for (int from = 0; from < figures.size(); from += MOST) {
            slabs.add(row(figures.subList(from, Math.min(from + MOST, figures.size())), tag));
        }
        return slabs;
    }

    private Slab row(List<Figure> figures, Tag tag) {
        float cell = width / figures.size();
        boolean few = figures.size() <= FEW;
        float large = few ? LARGE : MANY_LARGE;
        float inset = few ? INSET : MANY_INSET;
        float inner = cell - inset;
        List<Tag> tags = figures.stream().map(f -> tag.child("P")).toList();
        List<List<String>> names = new ArrayList<>();
        List<List<String>> changes = new ArrayList<>();
        for (Figure figure : figures) {
            names.add(Ink.SMALL.wrap(faces, figure.name(), inner));
            changes.add(figure.change().isEmpty() ? List.of() : Ink.SMALL.wrap(faces, figure.change(), inner));
        }
        Ink value = fitting(figures, large, inner);
        float valueTop = AIR + most(names) * Ink.SMALL.leading();
        float changeTop = valueTop + large * 1.25f;
        float height = changeTop + most(changes) * Ink.SMALL.leading() + AIR;
        return Slab.of(8, height, (canvas, x, top) -> {
            canvas.rule(x, x + width, top, 0.4f, Look.HAIRLINE);
            canvas.rule(x, x + width, top + height, 0.4f, Look.HAIRLINE);
            for (int i = 0; i < figures.size(); i++) {
                float left = x + i * cell + (i == 0 ? 0 : inset * 0.7f);
                if (i > 0) {
                    canvas.box(x + i * cell, top + AIR, 0.4f, height - 2 * AIR, Look.HAIRLINE);
                }
                TextSlabs.lines(canvas, tags.get(i), Ink.SMALL, left, top + AIR, names.get(i));
                canvas.text(tags.get(i), value, left, top + valueTop + large * 0.95f, printed(figures.get(i)));
                TextSlabs.lines(canvas, tags.get(i), Ink.SMALL, left, top + changeTop, changes.get(i));
            }
        });
    }

    /** The largest type in which every figure keeps to its cell. */
    private Ink fitting(List<Figure> figures, float large, float inner) {
        Ink value = new Ink(Face.SERIF, large, Look.INK);
        for (Figure figure : figures) {
            while (value.size() > SMALLEST && value.width(faces, printed(figure)) > inner) {
                value = value.at(value.size() - 0.5f);
            }
        }
        return value;
    }

    private static int most(List<List<String>> lines) {
        return lines.stream().mapToInt(List::size).max().orElse(0);
    }

    private String printed(Figure figure) {
        return figure.value() instanceof CellValue.Blank ? UNKNOWN : printing.alone(figure.value(), figure.format());
    }
}
