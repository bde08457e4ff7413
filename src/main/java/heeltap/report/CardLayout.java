package heeltap.report;

import heeltap.document.Card;
import heeltap.document.Card.Fact;
import heeltap.document.Card.Line;
import heeltap.document.Card.Measured;
import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A card as slabs of a column's width; they stay together where a page holds them all. */
final class CardLayout {
    private static final Ink TITLE = new Ink(Face.BOLD, 9.5f, Look.INK);
    private static final Ink TEXT = new Ink(Face.PLAIN, Look.TABLE, Look.INK);
    private static final Ink STRONG = new Ink(Face.BOLD, Look.TABLE, Look.INK);
    private static final Ink SMALL = new Ink(Face.PLAIN, 7, Look.QUIET);
    private static final Ink NOTE = new Ink(Face.ITALIC, 7, Look.QUIET);
    private static final Ink CAUTION = new Ink(Face.BOLD, 7, Look.ACCENT);
    private static final float GAP = 8;
    private static final float LEADING = 1.22f;

    private final Faces faces;
    private final Printing printing;
    private final float width;

    CardLayout(Faces faces, Printing printing, float width) {
        this.faces = faces;
        this.printing = printing;
        this.width = width;
    }

    /** @param page the height of a page, points */
    List<Slab> slabs(Card card, float page, Tag section) {
        Tag tag = section.child("Sect");
        List<Slab> slabs = new ArrayList<>();
        slabs.add(title(card, tag));
        if (!card.summary().isEmpty()) {
            slabs.add(text(card.summary(), SMALL, 0, tag.child("P")));
        }
        slabs.addAll(lines(card, tag.child("Table")));
        if (!card.facts().isEmpty()) {
            slabs.add(facts(card.facts(), tag.child("P")));
        }
        Tag steps = tag.child("L");
        for (int i = 0; i < card.steps().size(); i++) {
            slabs.add(step(i + 1, card.steps().get(i), steps.child("LI").child("LBody")));
        }
        for (String caution : card.cautions()) {
            slabs.add(caution(caution, tag.child("P")));
        }
        float height = 0;
        for (Slab slab : slabs) {
            height += slab.before() + slab.height();
        }
        return height <= page ? together(slabs) : slabs;
    }

    private static List<Slab> together(List<Slab> slabs) {
        List<Slab> kept = new ArrayList<>();
        for (int i = 0; i < slabs.size(); i++) {
            kept.add(i < slabs.size() - 1 ? slabs.get(i).keptWithNext() : slabs.get(i));
        }
        return kept;
    }

    private Slab title(Card card, Tag tag) {
        Tag heading = tag.child("H3");
        List<String> lines = TITLE.wrap(faces, card.title(), width);
        float leading = TITLE.size() * LEADING;
        return Slab.of(14, lines.size() * leading + 6, (canvas, x, top) -> {
            canvas.rule(x, x + width, top, 1, Look.ACCENT);
            paint(canvas, heading, TITLE, x, top + 4, lines);
        });
    }

    private Slab text(String text, Ink ink, float before, Tag tag) {
        List<String> lines = ink.wrap(faces, text, width);
        return Slab.of(
                before,
                lines.size() * ink.size() * LEADING + 1,
                (canvas, x, top) -> paint(canvas, tag, ink, x, top, lines));
    }

    private List<Slab> lines(Card card, Tag table) {
        List<Slab> slabs = new ArrayList<>();
        float[] widths = amountWidths(card);
        float room = right(widths, -1);
        if (card.headings().stream().anyMatch(heading -> !heading.isEmpty())) {
            slabs.add(headings(card, widths, table.child("TR")));
        }
        for (Line line : card.lines()) {
            slabs.add(line(line, TEXT, room, widths, table.child("TR")));
        }
        card.whole().ifPresent(line -> slabs.add(line(line, STRONG, room, widths, table.child("TR"))));
        return slabs;
    }

    /** As wide as its widest amount, and its heading in no more than that and half the card over all columns. */
    private float[] amountWidths(Card card) {
        float[] widths = new float[card.headings().size()];
        List<Line> all = new ArrayList<>(card.lines());
        card.whole().ifPresent(all::add);
        for (int c = 0; c < widths.length; c++) {
            widths[c] = Math.max(26, SMALL.widestWord(faces, card.headings().get(c)));
            for (Line line : all) {
                widths[c] = Math.max(
                        widths[c], STRONG.width(faces, printed(line.amounts().get(c))));
            }
            widths[c] = Math.min(widths[c], width * 0.6f / widths.length);
        }
        return widths;
    }

    private Slab headings(Card card, float[] widths, Tag row) {
        List<List<String>> texts = new ArrayList<>();
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            List<String> wrapped = SMALL.wrap(faces, card.headings().get(c), widths[c]);
            texts.add(wrapped);
            most = Math.max(most, wrapped.size());
        }
        int lines = most;
        List<Tag> cells = texts.stream().map(text -> row.child("TH")).toList();
        float leading = SMALL.size() * LEADING;
        return Slab.of(1, lines * leading + 2, (canvas, x, top) -> {
            for (int c = 0; c < widths.length; c++) {
                List<String> text = texts.get(c);
                for (int i = 0; i < text.size(); i++) {
                    float baseline = top + (lines - text.size() + i) * leading + SMALL.size();
                    canvas.textRight(cells.get(c), SMALL, x + right(widths, c), baseline, text.get(i));
                }
            }
        });
    }

    private float right(float[] widths, int column) {
        float right = width;
        for (int i = widths.length - 1; i > column; i--) {
            right -= widths[i] + GAP;
        }
        return right;
    }

    private Slab line(Line line, Ink ink, float room, float[] widths, Tag row) {
        List<String> name = ink.wrap(faces, line.name(), room);
        List<String> note = line.note().isEmpty() ? List.of() : NOTE.wrap(faces, line.note(), room);
        Tag head = row.child("TD");
        List<Tag> cells = line.amounts().stream().map(amount -> row.child("TD")).toList();
        float leading = ink.size() * LEADING;
        float noteTop = name.size() * leading + 2.5f;
        float height = noteTop + note.size() * NOTE.size() * LEADING + 1.5f;
        return Slab.of(0, height, (canvas, x, top) -> {
            paint(canvas, head, ink, x, top + 1.5f, name);
            paint(canvas, head, NOTE, x, top + noteTop, note);
            for (int c = 0; c < widths.length; c++) {
                String amount = printed(line.amounts().get(c));
                Ink fitted = ink;
                while (fitted.size() > 5 && fitted.width(faces, amount) > widths[c]) {
                    fitted = fitted.at(fitted.size() - 0.25f);
                }
                canvas.textRight(cells.get(c), fitted, x + right(widths, c), top + 1.5f + ink.size(), amount);
            }
            canvas.rule(x, x + width, top + height, 0.4f, Look.HAIRLINE);
        });
    }

    private String printed(Optional<Measured> amount) {
        return amount.map(printing::measured).orElse("");
    }

    /** Run on in one paragraph: name, then value in bold, each kept whole where it fits. */
    private Slab facts(List<Fact> facts, Tag tag) {
        List<List<Fact>> rows = new ArrayList<>();
        float used = Float.MAX_VALUE;
        for (Fact fact : facts) {
            float wide = factWidth(fact);
            if (used + wide > width) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(fact);
            used += wide + GAP;
        }
        List<Placed> placed = new ArrayList<>();
        float leading = 7.5f * 1.3f;
        int line = 0;
        for (List<Fact> row : rows) {
            float x = 0;
            int deepest = 1;
            for (Fact fact : row) {
                float name = SMALL.width(faces, fact.name() + " ");
                List<String> values = strong().wrap(faces, fact.value(), Math.max(40, width - x - name));
                placed.add(new Placed(x, line, SMALL, fact.name()));
                for (int i = 0; i < values.size(); i++) {
                    placed.add(new Placed(x + name, line + i, strong(), values.get(i)));
                }
                deepest = Math.max(deepest, values.size());
                x += factWidth(fact) + GAP;
            }
            line += deepest;
        }
        int lines = line;
        return Slab.of(3, lines * leading + 1, (canvas, x, top) -> {
            for (Placed piece : placed) {
                canvas.text(tag, piece.ink(), x + piece.left(), top + 7.5f + piece.line() * leading, piece.text());
            }
        });
    }

    private record Placed(float left, int line, Ink ink, String text) {}

    private static Ink strong() {
        return new Ink(Face.BOLD, 7.5f, Look.INK);
    }

    private float factWidth(Fact fact) {
        return SMALL.width(faces, fact.name() + " ") + strong().width(faces, fact.value());
    }

    private Slab step(int number, String text, Tag tag) {
        Ink ink = TEXT.at(7.5f);
        List<String> lines = ink.wrap(faces, text, width - 10);
        return Slab.of(number == 1 ? 3 : 0, lines.size() * ink.size() * LEADING + 1, (canvas, x, top) -> {
            canvas.text(tag, ink.in(Look.ACCENT), x, top + ink.size(), String.valueOf(number));
            paint(canvas, tag, ink, x + 10, top, lines);
        });
    }

    private Slab caution(String text, Tag tag) {
        List<String> lines = CAUTION.wrap(faces, text, width - 8);
        float height = lines.size() * CAUTION.size() * LEADING + 2;
        return Slab.of(2, height, (canvas, x, top) -> {
            canvas.box(x, top, 2, height - 1, Look.ACCENT);
            paint(canvas, tag, CAUTION, x + 8, top, lines);
        });
    }

    private static void paint(Canvas canvas, Tag tag, Ink ink, float x, float top, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            canvas.text(tag, ink, x, top + ink.size() + i * ink.size() * LEADING, lines.get(i));
        }
    }
}
