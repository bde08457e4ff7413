package heeltap.report;

import heeltap.document.Block.TableView;
import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.ColumnDigits;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;

/**
 * A table as slabs, one a row. Widths come from the content; type steps down to a floor before columns do not fit, and
 * then the table is set in bands, each beginning with the first column.
 */
final class TableLayout {
    private static final float PADDING = 3.5f;
    private static final float ROW_PADDING = 2.3f;
    /** Where that saves a page. */
    private static final float CLOSE_PADDING = 1.2f;
    /** What stands left keeps so far from figures that end before it. */
    private static final float AFTER_FIGURES = 7;
    /** So many rows at least go over to another page with the last. */
    private static final int TOGETHER = 4;
    /** A row of more lines than this is broken, so that no row is higher than a page. */
    private static final int MOST_LINES = 24;

    private static final float LONGEST_KEPT_WORD = 90;

    private final Faces faces;
    private final Printing printing;
    private final float available;
    private final TableView view;
    private final Table table;
    private final ColumnDigits digits;
    private final CellWidths cells;
    private final float rowPadding;

    TableLayout(Faces faces, Printing printing, float available, TableView view) {
        this.rowPadding = ROW_PADDING;
        this.faces = faces;
        this.printing = printing;
        this.available = available;
        this.view = view;
        this.table = view.table();
        this.digits = new ColumnDigits(table, printing.currencyDecimals());
        this.cells = new CellWidths(table, faces, this::text);
    }

    private TableLayout(TableLayout same, float rowPadding) {
        this.rowPadding = rowPadding;
        this.faces = same.faces;
        this.printing = same.printing;
        this.available = same.available;
        this.view = same.view;
        this.table = same.table;
        this.digits = same.digits;
        this.cells = same.cells;
    }

    RowSet rows(Tag section) {
        TableLayout close = new TableLayout(this, CLOSE_PADDING);
        return new RowSet(slabs(section), close.slabs(section));
    }

    List<Slab> slabs(Tag section) {
        List<Integer> columns = shownColumns();
        List<Slab> slabs = new ArrayList<>();
        while (!columns.isEmpty()) {
            int fits = columns.size();
            while (fits > 1 && ColumnWidths.of(this, columns.subList(0, fits)).isEmpty()) {
                fits--;
            }
            List<Integer> band = columns.subList(0, fits);
            ColumnWidths widths =
                    ColumnWidths.of(this, band).orElseGet(() -> ColumnWidths.squeezed(band.size(), available));
            slabs.addAll(band(band, widths, section.child("Table"), slabs.isEmpty() ? 4 : 14));
            if (fits == columns.size()) {
                return slabs;
            }
            List<Integer> rest = new ArrayList<>(List.of(columns.get(0)));
            rest.addAll(columns.subList(Math.max(1, fits), columns.size()));
            columns = rest;
        }
        return slabs;
    }

    /** Those of the view in which something stands. */
    private List<Integer> shownColumns() {
        List<Integer> shown = new ArrayList<>();
        for (String key : view.keys()) {
            int column = table.indexOf(key);
            if (shown.isEmpty() || !table.isEmpty(column)) {
                shown.add(column);
            }
        }
        return shown;
    }

    private List<Slab> band(List<Integer> columns, ColumnWidths widths, Tag tag, float before) {
        Slab heading = heading(columns, widths, tag, false);
        Slab again = heading(columns, widths, tag, true);
        List<Slab> slabs = new ArrayList<>();
        slabs.add(heading.spaced(before).keptWithNext());
        int rows = table.rows().size();
        for (int i = 0; i < rows; i++) {
            boolean together = i == 0 || i >= rows - TOGETHER;
            slabs.addAll(row(table.rows().get(i), columns, widths, tag, again, together && i < rows - 1, false));
        }
        table.total().filter(total -> saysMore(total, columns)).ifPresent(total -> {
            Slab last = slabs.get(slabs.size() - 1);
            slabs.set(slabs.size() - 1, last.keptWithNext());
            slabs.addAll(row(total, columns, widths, tag, again, false, true));
        });
        if (rows == 0 && table.total().isEmpty()) {
            slabs.add(nothing(tag));
        }
        return slabs;
    }

    /** Whether the shown columns hold more of the total row than its name. */
    private static boolean saysMore(TableRow total, List<Integer> columns) {
        return columns.stream().skip(1).anyMatch(c -> !(total.cells().get(c) instanceof CellValue.Blank));
    }

    private Slab nothing(Tag tag) {
        Tag cell = tag.child("TR").child("TD");
        return Slab.of(
                0,
                16,
                (canvas, x, top) -> canvas.text(
                        cell, Ink.NOTE, x, top + 11, printing.words().get("none")));
    }

    private Slab heading(List<Integer> columns, ColumnWidths widths, Tag tag, boolean again) {
        Ink ink = headingInk(widths.size());
        List<List<String>> texts = new ArrayList<>();
        int lines = 1;
        for (int c = 0; c < columns.size(); c++) {
            List<String> wrapped =
                    ink.wrap(faces, table.columns().get(columns.get(c)).heading(), room(columns, widths, c));
            texts.add(wrapped);
            lines = Math.max(lines, wrapped.size());
        }
        float leading = ink.size() * 1.2f;
        float height = lines * leading + 2 * ROW_PADDING + 1;
        int most = lines;
        Tag row = tag.child("TR");
        List<Tag> cells = columns.stream().map(c -> row.child("TH")).toList();
        return Slab.of(0, height, (canvas, x, top) -> {
            for (int c = 0; c < columns.size(); c++) {
                boolean right = table.columns().get(columns.get(c)).format().isNumeric();
                List<String> text = texts.get(c);
                for (int line = 0; line < text.size(); line++) {
                    float baseline = top + ROW_PADDING + (most - text.size() + line) * leading + ink.size() * 0.95f;
                    float left = x + widths.left(c) + indent(columns, c);
                    float start = right ? left + widths.of(c) - ink.width(faces, text.get(line)) : left;
                    if (again) {
                        canvas.ornament(ink, start, baseline, text.get(line));
                    } else {
                        canvas.text(cells.get(c), ink, start, baseline, text.get(line));
                    }
                }
            }
            canvas.rule(x, x + widths.across(), top + height - 0.5f, 0.8f, Look.ACCENT);
        });
    }

    private List<Slab> row(
            TableRow row,
            List<Integer> columns,
            ColumnWidths widths,
            Tag tag,
            Slab again,
            boolean withNext,
            boolean total) {
        Ink ink = ink(row.emphasis(), total, false, widths.size());
        Ink nameInk = ink(row.emphasis(), total, true, widths.size());
        List<List<String>> texts = new ArrayList<>();
        int lines = 1;
        for (int c = 0; c < columns.size(); c++) {
            Ink own = c == 0 ? nameInk : ink;
            List<String> wrapped = own.wrap(faces, text(row, columns.get(c)), room(columns, widths, c));
            texts.add(wrapped);
            lines = Math.max(lines, wrapped.size());
        }
        Tag tr = tag.child("TR");
        List<Tag> cells = columns.stream().map(c -> tr.child("TD")).toList();
        List<Slab> slabs = new ArrayList<>();
        for (int from = 0; from < lines; from += MOST_LINES) {
            int first = from;
            int count = Math.min(MOST_LINES, lines - from);
            boolean last = from + count >= lines;
            float leading = ink.size() * 1.25f;
            float height = count * leading + 2 * rowPadding;
            Slab slab = Slab.of(0, height, (canvas, x, top) -> {
                if (row.emphasis() == Emphasis.MARKED) {
                    canvas.box(x - 6, top + 1, 2.2f, height - 2, Look.ACCENT);
                }
                for (int c = 0; c < columns.size(); c++) {
                    boolean right = table.columns().get(columns.get(c)).format().isNumeric();
                    List<String> text = texts.get(c);
                    for (int line = first; line < Math.min(text.size(), first + count); line++) {
                        float baseline = top + rowPadding + (line - first) * leading + ink.size() * 0.95f;
                        float left = x + widths.left(c) + indent(columns, c);
                        float start = right ? left + widths.of(c) - ink.width(faces, text.get(line)) : left;
                        canvas.text(cells.get(c), c == 0 ? nameInk : ink, start, baseline, text.get(line));
                    }
                }
                if (last) {
                    canvas.rule(x, x + widths.across(), top + height, 0.4f, Look.HAIRLINE);
                }
                if (total) {
                    canvas.rule(x, x + widths.across(), top, 0.8f, Look.INK);
                }
            });
            slab = slab.under(again);
            slabs.add(withNext ? slab.keptWithNext() : slab);
        }
        return slabs;
    }

    private String text(TableRow row, int column) {
        CellValue value = row.cells().get(column);
        return printing.cell(value, table.columns().get(column).format(), digits.of(column));
    }

    private static Ink ink(Emphasis emphasis, boolean total, boolean first, float size) {
        if (total) {
            return new Ink(Face.BOLD, size, Look.INK);
        }
        return switch (emphasis) {
            case PLAIN -> new Ink(Face.PLAIN, size, Look.INK);
            case MARKED -> new Ink(first ? Face.BOLD : Face.PLAIN, size, Look.INK);
            case FAINT -> new Ink(Face.ITALIC, size, Look.QUIET);
        };
    }

    private static Ink headingInk(float size) {
        return new Ink(Face.BOLD, size - 0.5f, Look.QUIET);
    }

    float available() {
        return available;
    }

    /** For a column's words; a hair more than they want, for what binary numbers lose. */
    private float room(List<Integer> columns, ColumnWidths widths, int at) {
        return widths.of(at) - indent(columns, at) + 0.05f;
    }

    /** Free space before a column's words, inside its width. */
    float indent(List<Integer> columns, int at) {
        return at > 0 && !isNumeric(columns.get(at)) && isNumeric(columns.get(at - 1)) ? AFTER_FIGURES : 0;
    }

    /** Whether all columns have what they want in type about as large as the largest. */
    boolean isNatural() {
        return ColumnWidths.of(this, shownColumns())
                .filter(ColumnWidths::isNatural)
                .isPresent();
    }

    boolean isNumeric(int column) {
        return table.columns().get(column).format().isNumeric();
    }

    static float padding() {
        return PADDING;
    }

    /** The width a column wants and the least it can do with, in points at a size. */
    float[] wants(int column, float size) {
        Column head = table.columns().get(column);
        Ink heading = headingInk(size);
        boolean numeric = head.format().isNumeric();
        float least = heading.widestWord(faces, head.heading());
        float natural = Math.max(least, Math.min(heading.width(faces, head.heading()), numeric ? 52 : 90));
        float widest = cells.widest(column, size);
        float unbroken = numeric ? widest : Math.min(LONGEST_KEPT_WORD, cells.widestWord(column, size));
        return new float[] {Math.max(natural, widest), Math.max(least, unbroken)};
    }

    /** About how high the rows are together where the columns have so much room each, in points. */
    float height(List<Integer> columns, float[] widths, float size) {
        float[] room = widths.clone();
        for (int c = 0; c < room.length; c++) {
            room[c] -= indent(columns, c);
        }
        int rows = table.rows().size();
        return cells.lines(columns, room, size) * size * 1.25f + 2 * rowPadding * rows;
    }
}
