package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.BarChart.Bar;
import heeltap.quantity.Exact;
import java.util.ArrayList;
import java.util.List;

/** Horizontal bars, each with its name before and its value behind it. */
final class BarLayout {
    private static final float ROW = 14;
    private static final float NARROW_ROW = 12;
    private static final float NARROW = 450;

    private final Faces faces;
    private final Printing printing;
    private final float width;
    private final float rowHeight;

    BarLayout(Faces faces, Printing printing, float width) {
        this.faces = faces;
        this.printing = printing;
        this.width = width;
        this.rowHeight = width < NARROW ? NARROW_ROW : ROW;
    }

    List<Slab> slabs(BarChart chart, Tag section) {
        Ink ink = Ink.BODY.at(8);
        Tag tag = section.child("Table");
        float names = 0;
        float values = 0;
        Exact lowest = Exact.ZERO;
        Exact highest = Exact.ZERO;
        for (Bar bar : chart.bars()) {
            names = Math.max(names, Math.min(width * 0.34f, ink.width(faces, bar.label())));
            values = Math.max(values, ink.width(faces, value(chart, bar)));
            lowest = lowest.min(bar.value());
            highest = highest.max(bar.value());
        }
        float nameWidth = names;
        boolean negative = lowest.isNegative();
        float room = width - names - 10 - (values + 6) * (negative ? 2 : 1);
        double span = highest.minus(lowest).toDouble();
        double scale = span == 0 ? 0 : room / span;
        float zero = names + 10 + (negative ? values + 6 : 0) + (float) (-lowest.toDouble() * scale);
        List<Slab> slabs = new ArrayList<>();
        slabs.add(caption(chart, tag));
        for (Bar bar : chart.bars()) {
            slabs.add(row(chart, bar, tag, ink, nameWidth, zero, scale));
        }
        return slabs;
    }

    private Slab caption(BarChart chart, Tag tag) {
        Tag cell = tag.child("TR").child("TH");
        return Slab.of(
                        2,
                        Ink.SMALL.leading() + 4,
                        (canvas, x, top) -> canvas.text(cell, Ink.SMALL, x, top + Ink.SMALL.size(), chart.valueTitle()))
                .keptWithNext();
    }

    private Slab row(BarChart chart, Bar bar, Tag tag, Ink ink, float nameWidth, float zero, double scale) {
        List<String> name = ink.wrap(faces, bar.label(), nameWidth + 0.1f);
        float height = Math.max(rowHeight, name.size() * ink.leading() + 3);
        Tag row = tag.child("TR");
        Tag nameTag = row.child("TD");
        Tag valueTag = row.child("TD");
        return Slab.of(0, height, (canvas, x, top) -> {
            TextSlabs.lines(canvas, nameTag, ink, x, top + 1.5f, name);
            float length = (float) (Math.abs(bar.value().toDouble()) * scale);
            boolean below = bar.value().isNegative();
            float left = x + zero - (below ? length : 0);
            canvas.box(left, top + 2, Math.max(0.3f, length), rowHeight - 5, below ? Look.FAINT : Look.ACCENT);
            canvas.box(x + zero - 0.2f, top, 0.4f, height, Look.QUIET);
            String printed = value(chart, bar);
            float at = below ? left - 4 - ink.width(faces, printed) : left + length + 4;
            canvas.text(valueTag, ink, at, top + 1.5f + ink.size(), printed);
        });
    }

    private String value(BarChart chart, Bar bar) {
        return printing.number(bar.value(), chart.format());
    }
}
