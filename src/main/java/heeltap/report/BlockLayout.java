package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import heeltap.document.Section;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The blocks of a section as pieces of a given width. */
final class BlockLayout {
    /** In so much width, and no less, columns stand side by side. */
    static final float WIDE = 500;
    /** No running text is set smaller. */
    private static final float SMALLEST = 7;

    private static final float AIR = 10;
    /** So many points, and no fewer, run in two columns. */
    private static final int MANY_POINTS = 5;
    /** So many rows, and no fewer, of a narrow table too. */
    private static final int MANY_ROWS = 10;

    private final Faces faces;
    private final Printing printing;
    private final PageShape shape;
    private final float width;
    private final Ink body;
    private final TextSlabs texts;
    private final ChartSlabs charts;

    BlockLayout(Faces faces, Printing printing, PageShape shape, float width) {
        this(faces, printing, shape, width, Ink.BODY);
    }

    private BlockLayout(Faces faces, Printing printing, PageShape shape, float width, Ink body) {
        this.faces = faces;
        this.printing = printing;
        this.shape = shape;
        this.width = width;
        this.body = body;
        this.texts = new TextSlabs(faces, printing, width, body);
        this.charts = new ChartSlabs(faces, printing, shape, width, texts);
    }

    /** With its heading. */
    List<Piece> section(Section section, Tag parent) {
        Tag tag = parent.child("Sect");
        List<Piece> pieces = new ArrayList<>();
        Slab heading = sectionHeading(section, tag.child("H1"));
        pieces.add(heading);
        pieces.addAll(blocks(section.blocks(), tag, section.title(), shape.contentHeight() - heading.height()));
        return pieces;
    }

    /** Without a heading, for it stands under the report's own, in what that leaves of the first page. */
    List<Piece> first(Section section, float room, Tag parent) {
        return blocks(section.blocks(), parent.child("Sect"), section.title(), room);
    }

    private Slab sectionHeading(Section section, Tag tag) {
        List<String> lines = Ink.SECTION.wrap(faces, section.title(), width);
        float height = lines.size() * Ink.SECTION.leading() + 10;
        return Slab.of(24, height, (canvas, x, top) -> {
                    canvas.anchor(section.id(), section.title(), top - 6);
                    canvas.box(x, top, 26, 2.4f, Look.ACCENT);
                    TextSlabs.lines(canvas, tag, Ink.SECTION, x, top + 5, lines);
                })
                .keptWithNext();
    }

    /** @param room what is left of the page, so that blocks side by side can be made to fit */
    private List<Piece> blocks(List<Block> blocks, Tag tag, String heading, float room) {
        List<Piece> pieces = new ArrayList<>();
        String said = heading;
        Set<String> shown = new HashSet<>();
        Block before = new Block.Heading(heading);
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            if (belongsTo(block, before)) {
                pieces.set(pieces.size() - 1, keptWithNext(pieces.get(pieces.size() - 1)));
            }
            boolean again = block instanceof Block.TableView view
                    && !shown.add(view.table().name());
            List<? extends Piece> made = block instanceof Block.TableView view
                    ? wideTable(view, tag, isHeaded(blocks, i) ? view.table().title() : said, again)
                    : block(block, tag, said, room - height(pieces));
            boolean leadsIn = block instanceof Block.Paragraph
                    && !belongsTo(block, before)
                    && i + 1 < blocks.size()
                    && (isShown(blocks.get(i + 1)) || (i == 0 && blocks.get(1) instanceof Block.Heading));
            pieces.addAll(leadsIn ? TextSlabs.keptTogether(made) : made);
            said = block instanceof Block.Heading words ? words.text() : said;
            before = block;
        }
        return pieces;
    }

    private static Piece keptWithNext(Piece piece) {
        if (piece instanceof Slab slab) {
            return slab.keptWithNext();
        }
        return piece instanceof RowSet rows ? rows.keptWithNext() : piece;
    }

    /** Whether the nearest block before, paragraphs aside, is a heading: it names what follows. */
    private static boolean isHeaded(List<Block> blocks, int at) {
        int before = at - 1;
        while (before >= 0 && blocks.get(before) instanceof Block.Paragraph) {
            before--;
        }
        return before >= 0 && blocks.get(before) instanceof Block.Heading;
    }

    /** A caution stands with what it warns of, a remark with its table. */
    private static boolean belongsTo(Block block, Block before) {
        boolean afterTable = before instanceof Block.TableView;
        return (block instanceof Block.Paragraph && afterTable)
                || (block instanceof Block.Caution && (afterTable || before instanceof Block.Paragraph));
    }

    private List<? extends Piece> block(Block block, Tag tag, String said, float room) {
        if (block instanceof Block.Columns columns) {
            return columns(columns, tag, said);
        } else if (block instanceof Block.Cards cards) {
            return List.of(cards(cards, tag));
        } else if (block instanceof Block.Points points && points.points().size() >= MANY_POINTS && width >= WIDE) {
            return List.of(columnSet(narrow(0.5f).at(Look.SMALL_BODY).texts.points(points.points(), tag.child("L"))));
        }
        if (block instanceof ScatterChart chart) {
            return charts.scatter(chart, tag, said, room);
        }
        return block instanceof Block.Beside beside ? beside(beside, tag, said, room) : slabs(block, tag, said);
    }

    static float height(List<? extends Piece> pieces) {
        float height = 0;
        for (Piece piece : pieces) {
            height += piece instanceof Slab slab ? slab.before() + slab.height() : 0;
        }
        return height;
    }

    private List<Slab> slabs(Block block, Tag tag, String said) {
        if (block instanceof Block.Paragraph paragraph) {
            return texts.paragraph(paragraph.text(), body, tag.child("P"), 5);
        } else if (block instanceof Block.Heading heading) {
            return TextSlabs.keptTogether(texts.paragraph(heading.text(), Ink.HEADING, tag.child("H2"), 13));
        } else if (block instanceof Block.Caution caution) {
            return List.of(texts.caution(caution.text(), tag.child("P")));
        } else if (block instanceof Block.Points points) {
            return texts.points(points.points(), tag.child("L"));
        } else if (block instanceof Block.Figures figures) {
            return new FigureRow(faces, printing, width).slabs(figures.figures(), tag);
        } else if (block instanceof Block.Findings findings) {
            return new FindingRows(faces, printing, width, body.size() + 0.5f)
                    .slabs(findings.findings(), tag.child("L"));
        } else if (block instanceof Block.TableView view) {
            return table(view, tag, said, false);
        } else if (block instanceof ScatterChart chart) {
            return charts.scatter(chart, tag, said, shape.contentHeight());
        } else if (block instanceof Block.Beside beside) {
            return beside(beside, tag, said, shape.contentHeight());
        } else if (block instanceof Block.Columns columns) {
            return stack(columns.blocks(), tag, said);
        } else if (block instanceof Block.Cards cards) {
            return cardSlabs(cards, width, tag);
        }
        return block instanceof LineChart chart
                ? charts.lines(chart, tag, said)
                : charts.bars((BarChart) block, tag, said);
    }

    /** What a paragraph before it leads up to. */
    private static boolean isShown(Block block) {
        return block instanceof Block.TableView
                || block instanceof ScatterChart
                || block instanceof BarChart
                || block instanceof LineChart;
    }

    /** A long table that is narrow enough runs in two columns. */
    private List<? extends Piece> wideTable(Block.TableView view, Tag tag, String said, boolean again) {
        float half = columnWidth(0.5f);
        TableLayout layout = new TableLayout(faces, printing, half, view);
        List<Piece> pieces = new ArrayList<>(above(view, tag, said, again));
        if (width < WIDE || view.table().rows().size() < MANY_ROWS || !layout.isNatural()) {
            pieces.add(new TableLayout(faces, printing, width, view).rows(tag));
            return pieces;
        }
        pieces.add(new ColumnSet(4, layout.slabs(tag), half, PageShape.GUTTER, 2));
        return pieces;
    }

    /** @param again whether the section showed other columns of it before, so that its note is known */
    private List<Slab> table(Block.TableView view, Tag tag, String said, boolean again) {
        List<Slab> slabs = above(view, tag, said, again);
        slabs.addAll(new TableLayout(faces, printing, width, view).slabs(tag));
        return slabs;
    }

    /** A table's title and note. */
    private List<Slab> above(Block.TableView view, Tag tag, String said, boolean again) {
        List<Slab> slabs = new ArrayList<>(texts.title(view.table().title(), tag, said));
        if (!again && !view.table().note().isEmpty()) {
            slabs.addAll(TextSlabs.keptTogether(texts.paragraph(view.table().note(), Ink.NOTE, tag.child("P"), 2)));
        }
        return slabs;
    }

    private List<? extends Piece> columns(Block.Columns columns, Tag tag, String said) {
        return width < WIDE
                ? stack(columns.blocks(), tag, said)
                : List.of(columnSet(narrow(0.5f).at(Look.SMALL_BODY).stack(columns.blocks(), tag, said)));
    }

    private ColumnSet cards(Block.Cards cards, Tag tag) {
        float column = (width - (cards.columns() - 1) * PageShape.GUTTER) / cards.columns();
        return new ColumnSet(5, cardSlabs(cards, column, tag), column, PageShape.GUTTER, cards.columns());
    }

    private List<Slab> cardSlabs(Block.Cards cards, float column, Tag tag) {
        CardLayout layout = new CardLayout(faces, printing, column);
        List<Slab> slabs = new ArrayList<>();
        cards.cards().forEach(card -> slabs.addAll(layout.slabs(card, shape.contentHeight(), tag)));
        return slabs;
    }

    private ColumnSet columnSet(List<Slab> slabs) {
        return new ColumnSet(5, slabs, columnWidth(0.5f), PageShape.GUTTER, 2);
    }

    /** In the largest type with which both fit into the room. */
    private List<Slab> beside(Block.Beside beside, Tag tag, String said, float room) {
        if (width < WIDE) {
            List<Slab> slabs = new ArrayList<>(stack(beside.left(), tag, said));
            slabs.addAll(stack(beside.right(), tag, said));
            return slabs;
        }
        Slab pair = pair(beside, tag, said, Look.BODY);
        for (float size = Look.BODY - 0.5f; size >= SMALLEST && pair.before() + pair.height() > room; size -= 0.5f) {
            pair = pair(beside, tag, said, size);
        }
        return List.of(pair);
    }

    private Slab pair(Block.Beside beside, Tag tag, String said, float size) {
        float share = beside.leftPercent() / 100f;
        Slab left = Slab.stacked(5, narrow(share).at(size).stack(beside.left(), tag, said));
        Slab right = Slab.stacked(5, narrow(1 - share).at(size).stack(beside.right(), tag, said));
        float offset = columnWidth(share) + PageShape.GUTTER;
        return Slab.of(AIR, Math.max(left.height(), right.height()), (canvas, x, top) -> {
            left.painter().paint(canvas, x, top);
            right.painter().paint(canvas, x + offset, top);
        });
    }

    private List<Slab> stack(List<Block> blocks, Tag tag, String said) {
        List<Slab> slabs = new ArrayList<>();
        for (Piece piece : blocks(blocks, tag, said, shape.contentHeight())) {
            if (piece instanceof RowSet rows) {
                slabs.addAll(rows.airy());
            } else {
                slabs.add((Slab) piece);
            }
        }
        return slabs;
    }

    private float columnWidth(float share) {
        return (width - PageShape.GUTTER) * share;
    }

    private BlockLayout narrow(float share) {
        return new BlockLayout(faces, printing, shape, columnWidth(share), body);
    }

    private BlockLayout at(float size) {
        return new BlockLayout(faces, printing, shape, width, body.at(size));
    }
}
