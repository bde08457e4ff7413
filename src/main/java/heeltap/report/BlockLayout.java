package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.Finding;
import heeltap.document.ScatterChart;
import heeltap.document.Section;
import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;

/** The blocks of a section as slabs of a given width. */
final class BlockLayout {
    /** Plots of no more points are low enough for two on a page. */
    private static final int FEW_POINTS = 30;

    private final Faces faces;
    private final Printing printing;
    private final PageShape shape;
    private final float width;

    BlockLayout(Faces faces, Printing printing, PageShape shape) {
        this.faces = faces;
        this.printing = printing;
        this.shape = shape;
        this.width = shape.contentWidth();
    }

    List<Slab> section(Section section, Tag parent) {
        Tag tag = parent.child("Sect");
        List<Slab> slabs = new ArrayList<>();
        slabs.add(sectionHeading(section, tag.child("H1")));
        String said = section.title();
        for (Block block : section.blocks()) {
            slabs.addAll(block(block, tag, said));
            said = block instanceof Block.Heading heading ? heading.text() : said;
        }
        return slabs;
    }

    private Slab sectionHeading(Section section, Tag tag) {
        List<String> lines = Ink.SECTION.wrap(faces, section.title(), width);
        float height = lines.size() * Ink.SECTION.leading() + 12;
        return Slab.of(22, height, (canvas, x, top) -> {
                    canvas.anchor(section.id(), section.title(), top - 6);
                    canvas.box(x, top, 26, 2.4f, Look.ACCENT);
                    lines(canvas, tag, Ink.SECTION, x, top + 5, lines);
                })
                .keptWithNext();
    }

    private List<Slab> block(Block block, Tag tag, String said) {
        if (block instanceof Block.Paragraph paragraph) {
            return paragraph(paragraph.text(), Ink.BODY, tag.child("P"), 5);
        } else if (block instanceof Block.Heading heading) {
            return keptTogether(paragraph(heading.text(), Ink.HEADING, tag.child("H2"), 13));
        } else if (block instanceof Block.Caution caution) {
            return List.of(caution(caution.text(), tag.child("P")));
        } else if (block instanceof Block.Points points) {
            return points(points.points(), tag.child("L"));
        } else if (block instanceof Block.Figures figures) {
            return figures(figures.figures(), tag);
        } else if (block instanceof Block.Findings findings) {
            return findings(findings.findings(), tag.child("L"));
        } else if (block instanceof Block.TableView view) {
            return table(view, tag, said);
        } else if (block instanceof ScatterChart chart) {
            return scatter(chart, tag, said);
        }
        return bars((BarChart) block, tag, said);
    }

    private List<Slab> paragraph(String text, Ink ink, Tag tag, float before) {
        List<String> lines = ink.wrap(faces, text, Math.min(width, 520));
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

    private static List<Slab> keptTogether(List<Slab> slabs) {
        return slabs.stream().map(Slab::keptWithNext).toList();
    }

    private Slab caution(String text, Tag tag) {
        Ink word = new Ink(Face.BOLD, Look.BODY, Look.ACCENT);
        List<String> lines = Ink.BODY.wrap(faces, text, Math.min(width, 520) - 24);
        float height = (lines.size() + 1) * Ink.BODY.leading() + 12;
        return Slab.of(9, height, (canvas, x, top) -> {
            canvas.box(x, top, width, height, Look.TINT);
            canvas.box(x, top, 2.4f, height, Look.ACCENT);
            float baseline = top + 6 + Ink.BODY.size();
            canvas.text(tag, word, x + 12, baseline, printing.words().get("caution"));
            for (int i = 0; i < lines.size(); i++) {
                canvas.text(tag, Ink.BODY, x + 12, baseline + (i + 1) * Ink.BODY.leading(), lines.get(i));
            }
        });
    }

    private List<Slab> points(List<String> points, Tag list) {
        List<Slab> slabs = new ArrayList<>();
        for (String point : points) {
            Tag item = list.child("LI").child("LBody");
            List<String> lines = Ink.BODY.wrap(faces, point, Math.min(width, 520) - 12);
            slabs.add(Slab.of(3, lines.size() * Ink.BODY.leading(), (canvas, x, top) -> {
                canvas.box(x + 1, top + 4.2f, 3, 3, Look.ACCENT);
                lines(canvas, item, Ink.BODY, x + 12, top, lines);
            }));
        }
        return slabs;
    }

    private List<Slab> figures(List<Block.Figure> figures, Tag tag) {
        List<Slab> slabs = new ArrayList<>();
        for (int from = 0; from < figures.size(); from += 5) {
            slabs.add(figureRow(figures.subList(from, Math.min(from + 5, figures.size())), tag));
        }
        return slabs;
    }

    private Slab figureRow(List<Block.Figure> figures, Tag tag) {
        float cell = width / figures.size();
        float inner = cell - 14;
        List<Tag> tags = figures.stream().map(f -> tag.child("P")).toList();
        List<List<String>> names = new ArrayList<>();
        List<List<String>> changes = new ArrayList<>();
        Ink value = new Ink(Face.SERIF, 19, Look.INK);
        int nameLines = 1;
        int changeLines = 0;
        for (Block.Figure figure : figures) {
            names.add(Ink.SMALL.wrap(faces, figure.name(), inner));
            changes.add(figure.change().isEmpty() ? List.of() : Ink.SMALL.wrap(faces, figure.change(), inner));
            nameLines = Math.max(nameLines, names.get(names.size() - 1).size());
            changeLines = Math.max(changeLines, changes.get(changes.size() - 1).size());
            while (value.size() > 9 && value.width(faces, printed(figure)) > inner) {
                value = value.at(value.size() - 0.5f);
            }
        }
        Ink fitted = value;
        float valueTop = 8 + nameLines * Ink.SMALL.leading();
        float changeTop = valueTop + 19 * 1.25f;
        float height = changeTop + changeLines * Ink.SMALL.leading() + 8;
        return Slab.of(8, height, (canvas, x, top) -> {
            canvas.rule(x, x + width, top, 0.4f, Look.HAIRLINE);
            canvas.rule(x, x + width, top + height, 0.4f, Look.HAIRLINE);
            for (int i = 0; i < figures.size(); i++) {
                float left = x + i * cell + (i == 0 ? 0 : 10);
                if (i > 0) {
                    canvas.box(x + i * cell, top + 8, 0.4f, height - 16, Look.HAIRLINE);
                }
                lines(canvas, tags.get(i), Ink.SMALL, left, top + 8, names.get(i));
                canvas.text(tags.get(i), fitted, left, top + valueTop + 18, printed(figures.get(i)));
                lines(canvas, tags.get(i), Ink.SMALL, left, top + changeTop, changes.get(i));
            }
        });
    }

    private String printed(Block.Figure figure) {
        return printing.alone(figure.value(), figure.format());
    }

    private List<Slab> findings(List<Finding> findings, Tag list) {
        Ink rank = new Ink(Face.SERIF, 15, Look.ACCENT);
        Ink sentence = Ink.BODY.at(9.5f);
        Ink amount = new Ink(Face.BOLD, 9.5f, Look.INK);
        Ink link = Ink.SMALL.in(Look.ACCENT);
        float linkWidth = link.width(faces, printing.words().get("page", "999"));
        float amountWidth = 0;
        for (Finding finding : findings) {
            amountWidth = Math.max(amountWidth, amount.width(faces, amount(finding)));
        }
        float amountRight = width - linkWidth - 12;
        float room = amountRight - amountWidth - 14 - 22;
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            String number = printing.number(heeltap.quantity.Exact.of(i + 1), heeltap.document.Format.COUNT);
            List<String> lines = sentence.wrap(faces, finding.sentence(), room);
            Tag body = list.child("LI").child("LBody");
            float height = lines.size() * sentence.leading() + 9;
            slabs.add(Slab.of(0, height, (canvas, x, top) -> {
                float baseline = top + 4 + sentence.size();
                canvas.text(body, rank, x, baseline + 1, number);
                lines(canvas, body, sentence, x + 22, top + 4, lines);
                if (finding.amount() != null) {
                    canvas.textRight(body, amount, x + amountRight, baseline, amount(finding));
                }
                int page = canvas.pageOf(finding.section());
                if (page > 0) {
                    canvas.textRight(
                            body, link, x + width, baseline, printing.words().get("page", page));
                    canvas.link(finding.section(), x, top, width, height);
                }
                canvas.rule(x, x + width, top + height, 0.4f, Look.HAIRLINE);
            }));
        }
        return slabs;
    }

    private String amount(Finding finding) {
        return finding.amount() == null ? "" : printing.money(finding.amount());
    }

    private List<Slab> table(Block.TableView view, Tag tag, String said) {
        List<Slab> slabs = new ArrayList<>(title(view.table().title(), tag, said));
        if (!view.table().note().isEmpty()) {
            slabs.addAll(keptTogether(paragraph(view.table().note(), Ink.NOTE, tag.child("P"), 2)));
        }
        slabs.addAll(new TableLayout(faces, printing, width).slabs(view, tag));
        return slabs;
    }

    /** Nothing where the heading above says the same. */
    private List<Slab> title(String title, Tag tag, String said) {
        return title.isEmpty() || title.equals(said)
                ? List.of()
                : keptTogether(paragraph(title, Ink.HEADING, tag.child("H2"), 13));
    }

    private List<Slab> scatter(ScatterChart chart, Tag tag, String said) {
        List<Slab> slabs = new ArrayList<>(title(chart.title(), tag, said));
        float share = chart.points().size() <= FEW_POINTS ? 0.64f : 0.86f;
        float height = Math.min(width * share, shape.contentHeight() - 104);
        ScatterDrawing drawing = new ScatterDrawing(faces, printing, chart, width, height);
        Tag picture = tag.picture(chart.title() + ". " + chart.xTitle() + "; " + chart.yTitle() + ".");
        List<String> unnamed = drawing.unnamed();
        Slab slab =
                Slab.of(4, height, (canvas, x, top) -> canvas.drawing(picture, x, top, width, height, drawing::draw));
        slabs.add(unnamed.isEmpty() ? slab : slab.keptWithNext());
        if (!unnamed.isEmpty()) {
            String names = printing.words().get("unnamed", String.join(", ", unnamed));
            slabs.addAll(paragraph(names, Ink.NOTE, tag.child("P"), 2));
        }
        return slabs;
    }

    private List<Slab> bars(BarChart chart, Tag tag, String said) {
        List<Slab> slabs = new ArrayList<>(title(chart.title(), tag, said));
        if (chart.bars().isEmpty()) {
            slabs.addAll(paragraph(printing.words().get("none"), Ink.NOTE, tag.child("P"), 4));
        } else if (chart.lines()) {
            float height = 190;
            Tag picture = tag.picture(chart.title() + ". " + chart.valueTitle() + ".");
            LineDrawing drawing = new LineDrawing(faces, printing, chart, width, height);
            slabs.add(Slab.of(
                    4, height, (canvas, x, top) -> canvas.drawing(picture, x, top, width, height, drawing::draw)));
        } else {
            slabs.addAll(new BarLayout(faces, printing, width).slabs(chart, tag));
        }
        return slabs;
    }

    static void lines(Canvas canvas, Tag tag, Ink ink, float x, float top, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            canvas.text(tag, ink, x, top + ink.size() + i * ink.leading(), lines.get(i));
        }
    }
}
