package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import java.util.ArrayList;
import java.util.List;

/** Charts as slabs of a given width, each under its title. */
final class ChartSlabs {
    /** What may stand under a plot: names for which it has no room. */
    private static final float UNDER_CHART = 16;
    /** Of a page: no plot is lower where it could be higher on a page of its own. */
    private static final float LEAST_PLOT = 0.8f;

    private static final float LINES_HEIGHT = 190;

    private final Faces faces;
    private final Printing printing;
    private final PageShape shape;
    private final float width;
    private final TextSlabs texts;

    ChartSlabs(Faces faces, Printing printing, PageShape shape, float width, TextSlabs texts) {
        this.faces = faces;
        this.printing = printing;
        this.shape = shape;
        this.width = width;
        this.texts = texts;
    }

    /** As high as the room where that is not too low, so that it stands under what leads up to it; else as a page. */
    List<Slab> scatter(ScatterChart chart, Tag tag, String said, float room) {
        List<Slab> slabs = new ArrayList<>(texts.title(chart.title(), tag, said));
        if (!chart.note().isEmpty()) {
            slabs.addAll(TextSlabs.keptTogether(texts.paragraph(chart.note(), Ink.NOTE, tag.child("P"), 2)));
        }
        float page = shape.contentHeight() - BlockLayout.height(slabs) - UNDER_CHART;
        float left = room - BlockLayout.height(slabs) - UNDER_CHART;
        float height =
                width < BlockLayout.WIDE ? width : Math.min(width * 0.64f, left >= LEAST_PLOT * page ? left : page);
        ScatterDrawing drawing = new ScatterDrawing(faces, printing, chart, width, height);
        Tag picture = tag.picture(chart.title() + ". " + chart.xTitle() + "; " + chart.yTitle() + ".");
        List<String> unnamed = drawing.unnamed();
        Slab slab =
                Slab.of(4, height, (canvas, x, top) -> canvas.drawing(picture, x, top, width, height, drawing::draw));
        slabs.add(unnamed.isEmpty() ? slab : slab.keptWithNext());
        if (!unnamed.isEmpty()) {
            String names = printing.words().get("unnamed", String.join(", ", unnamed));
            slabs.addAll(texts.paragraph(names, Ink.NOTE, tag.child("P"), 2));
        }
        return slabs;
    }

    List<Slab> lines(LineChart chart, Tag tag, String said) {
        List<Slab> slabs = new ArrayList<>(texts.title(chart.title(), tag, said));
        float wide = Math.min(width, TextSlabs.MEASURE);
        Tag picture = tag.picture(chart.title() + ". " + chart.valueTitle() + ".");
        LineDrawing drawing = new LineDrawing(faces, printing, chart, wide, LINES_HEIGHT);
        slabs.add(Slab.of(
                4,
                LINES_HEIGHT,
                (canvas, x, top) -> canvas.drawing(picture, x, top, wide, LINES_HEIGHT, drawing::draw)));
        return slabs;
    }

    List<Slab> bars(BarChart chart, Tag tag, String said) {
        List<Slab> slabs = new ArrayList<>(texts.title(chart.title(), tag, said));
        if (chart.bars().isEmpty()) {
            slabs.addAll(texts.paragraph(printing.words().get("none"), Ink.NOTE, tag.child("P"), 4));
        } else {
            slabs.addAll(new BarLayout(faces, printing, Math.min(width, TextSlabs.MEASURE)).slabs(chart, tag));
        }
        return slabs;
    }
}
