package heeltap.report;

import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;

/** Running text as slabs of a given width. */
final class TextSlabs {
    /** No line of running text is longer, so that the eye finds the next. */
    static final float MEASURE = 520;

    private final Faces faces;
    private final Printing printing;
    private final float width;
    private final Ink body;

    TextSlabs(Faces faces, Printing printing, float width, Ink body) {
        this.faces = faces;
        this.printing = printing;
        this.width = width;
        this.body = body;
    }

    List<Slab> paragraph(String text, Ink ink, Tag tag, float before) {
        List<String> lines = ink.wrap(faces, text, Math.min(width, MEASURE));
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Slab slab = Slab.of(
                    i == 0 ? before : 0,
                    ink.leading(),
                    (canvas, x, top) -> canvas.text(tag, ink, x, top + ink.size(), line));
            boolean loneLine = i == 0 || i == lines.size() - 2;
            slabs.add(loneLine && i < lines.size() - 1 ? slab.keptWithNext() : slab);
        }
        return slabs;
    }

    static List<Slab> keptTogether(List<? extends Piece> slabs) {
        return slabs.stream().map(piece -> ((Slab) piece).keptWithNext()).toList();
    }

    Slab caution(String text, Tag tag) {
        Ink word = new Ink(Face.BOLD, body.size(), Look.ACCENT);
        float wide = Math.min(width, MEASURE + 24);
        List<String> lines = body.wrap(faces, text, wide - 24);
        float height = (lines.size() + 1) * body.leading() + 12;
        return Slab.of(9, height, (canvas, x, top) -> {
            canvas.box(x, top, wide, height, Look.TINT);
            canvas.box(x, top, 2.4f, height, Look.ACCENT);
            float baseline = top + 6 + body.size();
            canvas.text(tag, word, x + 12, baseline, printing.words().get("caution"));
            for (int i = 0; i < lines.size(); i++) {
                canvas.text(tag, body, x + 12, baseline + (i + 1) * body.leading(), lines.get(i));
            }
        });
    }

    List<Slab> points(List<String> points, Tag list) {
        List<Slab> slabs = new ArrayList<>();
        for (String point : points) {
            Tag item = list.child("LI").child("LBody");
            List<String> lines = body.wrap(faces, point, Math.min(width, MEASURE) - 12);
            slabs.add(Slab.of(3, lines.size() * body.leading(), (canvas, x, top) -> {
                canvas.box(x + 1, top + body.size() * 0.47f, 3, 3, Look.ACCENT);
                lines(canvas, item, body, x + 12, top, lines);
            }));
        }
        return slabs;
    }

    /** Nothing where the heading above says the same. */
    List<Slab> title(String title, Tag tag, String said) {
        return title.isEmpty() || title.equals(said)
                ? List.of()
                : keptTogether(paragraph(title, Ink.HEADING, tag.child("H2"), 13));
    }

    static void lines(Canvas canvas, Tag tag, Ink ink, float x, float top, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            canvas.text(tag, ink, x, top + ink.size() + i * ink.leading(), lines.get(i));
        }
    }
}
