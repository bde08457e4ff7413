package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.ColumnDigits;
import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.document.ScatterChart;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;

/** One sheet: blocks under each other, tables beginning in the first column. */
final class SheetWriter {
    /** A place kept for a chart. */
    record ChartPlace(XSSFSheet sheet, Block chart, int row, int rows) {}

    /** A cell that shall link to where a section's figures stand. */
    record LinkPlace(XSSFCell cell, String section) {}

    /** A cell that shows what stands in a table's total row, as {@code table.key}. */
    record TotalPlace(XSSFCell cell, String total) {}

    private static final int CHART_ROWS = 32;
    /** As many as lie under the widest chart. */
    private static final int CHART_COLUMNS = 32;

    private static final int TEXT_COLUMNS = 8;
    private static final int CONTENTS_ROW = 3;
    private static final int CONTENTS_COLUMN = 4;
    /** Side by side, beside the figures. */
    private static final int CONTENTS_COLUMNS = 3;

    private static final double LEAST_WIDTH = 9;
    private static final double WIDEST_TEXT = 60;
    /** A text that would take more lines than this has a wider column. */
    private static final int MOST_LINES = 2;
    /** Where nothing but text stands on a sheet. */
    private static final double TEXT_WIDTH = 96;
    /** What a cell keeps free beside its text: its edges, and the indent of words. */
    private static final double EDGES = 1.6;

    /** Beside the change on last month, which has one line on every machine. */
    private static final double CHANGE_EDGES = 5;

    private static final double SENTENCE = 88;
    /** The bold type of headings against the plain type that widths are measured in. */
    private static final double HEADING_TYPE = 0.98;

    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final List<TablePlace> tables = new ArrayList<>();
    private final List<ChartPlace> charts = new ArrayList<>();
    private final List<LinkPlace> links = new ArrayList<>();
    private final List<TotalPlace> totals = new ArrayList<>();
    private final List<Integer> cards = new ArrayList<>();
    private final double[] widths = new double[256];
    private final Map<XSSFRow, String> paragraphs = new LinkedHashMap<>();
    /** The columns that tables show; those beyond hold what only formulas need. */
    private final BitSet shown = new BitSet();

    /** The row behind the list of sheets; 0 where there is none. */
    private int contentsEnd;

    private int next;
    /** Whether columns in which nothing stands are hidden: where the sheet holds one table and nothing else. */
    private boolean hides;

    SheetWriter(WorkbookParts parts, XSSFSheet sheet) {
        this.parts = parts;
        this.sheet = sheet;
    }

    List<TablePlace> tables() {
        return tables;
    }

    List<ChartPlace> charts() {
        return charts;
    }

    List<LinkPlace> links() {
        return links;
    }

    List<TotalPlace> totals() {
        return totals;
    }

    /** The rows in which cards begin, in order. */
    List<Integer> cards() {
        return cards;
    }

    /** Whether it opens the workbook. */
    boolean isSummary() {
        return contentsEnd > 0;
    }

    int nextRow() {
        return next;
    }

    void title(String above, String title) {
        if (!above.isEmpty()) {
            text(parts.styles().bar(), above);
        }
        row().setHeightInPoints(24);
        cell(next - 1, 0, parts.styles().title()).setCellValue(title);
    }

    void blocks(List<Block> blocks) {
        hides = tables.isEmpty() && blocks.size() == 1 && blocks.get(0) instanceof Block.TableView;
        blocks.forEach(this::block);
    }

    void backLink(String firstSheet) {
        row();
        XSSFCell cell = cell(next - 1, 0, parts.styles().link());
        cell.setCellValue(parts.words().get("back", firstSheet));
        link(cell, TablePlace.quoted(firstSheet) + "!A1");
        next++;
    }

    /** Beside the figures that begin the sheet, whose rows are of one height. */
    void contents(List<String> sheets) {
        int rows = contentsRows(sheets.size());
        for (int c = 0; c < CONTENTS_COLUMNS; c++) {
            cell(CONTENTS_ROW, CONTENTS_COLUMN + c, parts.styles().heading(false))
                    .setCellValue(c == 0 ? parts.words().get("contents") : "");
        }
        for (int i = 0; i < sheets.size(); i++) {
            String name = sheets.get(i);
            int column = CONTENTS_COLUMN + i / rows;
            XSSFCell cell =
                    cell(CONTENTS_ROW + 1 + i % rows, column, parts.styles().link());
            cell.setCellValue(name);
            link(cell, TablePlace.quoted(name) + "!A1");
            widen(column, parts.characters(name) + 3);
        }
    }

    private static int contentsRows(int sheets) {
        return (sheets + CONTENTS_COLUMNS - 1) / CONTENTS_COLUMNS;
    }

    /** Keeps rows free for the contents of a workbook of so many sheets. */
    void keepContents(int sheets) {
        contentsEnd = CONTENTS_ROW + contentsRows(sheets) + 1;
    }

    static void link(XSSFCell cell, String target) {
        XSSFHyperlink link = cell.getSheet().getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
        link.setAddress(target);
        cell.setHyperlink(link);
    }

    void finish() {
        for (int i = 0; i < widths.length; i++) {
            if (widths[i] > 0) {
                sheet.setColumnWidth(i, (int) Math.round(Math.min(widths[i], TEXT_WIDTH) * 256));
            }
        }
        hideEmptyColumns();
        foldWorkings();
        widenUnderCharts();
        layParagraphs();
        sheet.setDisplayGridlines(false);
        sheet.setPrintGridlines(false);
    }

    private void foldWorkings() {
        int columns = tables.stream()
                .mapToInt(place -> place.table().columns().size())
                .max()
                .orElse(0);
        if (shown.length() < columns) {
            for (int c = shown.length(); c < columns; c++) {
                CTCol folded = column(c);
                folded.setOutlineLevel((short) 1);
                folded.setHidden(true);
            }
            column(columns).setCollapsed(true);
            sheet.getCTWorksheet().getSheetFormatPr().setOutlineLevelCol((short) 1);
        }
    }

    /** POI's own grouping would describe a column more than once. */
    private CTCol column(int index) {
        if (widths[index] == 0) {
            sheet.setColumnWidth(index, (int) (LEAST_WIDTH * 256));
        }
        return sheet.getColumnHelper().getColumn(index, false);
    }

    /** A chart's place is counted in columns, and programs differ in how wide they take one that says nothing. */
    private void widenUnderCharts() {
        for (int c = 0; c < CHART_COLUMNS && !charts.isEmpty(); c++) {
            if (widths[c] == 0) {
                sheet.setColumnWidth(c, (int) (LEAST_WIDTH * 256));
            }
        }
    }

    /** Over the first columns; where no column has a width yet, over one that reads well. */
    private void layParagraphs() {
        boolean onlyText = tables.isEmpty() && IntStream.range(0, widths.length).allMatch(c -> widths[c] == 0);
        if (onlyText && charts.isEmpty()) {
            widths[0] = TEXT_WIDTH;
            sheet.setColumnWidth(0, (int) (TEXT_WIDTH * 256));
        }
        int columns = widths[0] >= TEXT_WIDTH - 20 ? 1 : TEXT_COLUMNS;
        double across = 0;
        for (int i = 0; i < columns; i++) {
            across += sheet.isColumnHidden(i) ? 0 : widths[i] > 0 ? width(i) : sheet.getDefaultColumnWidth();
        }
        double room = across - 2 * EDGES;
        paragraphs.forEach((row, text) -> {
            if (columns > 1) {
                sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), 0, columns - 1));
            }
            row.setHeightInPoints(parts.lines(text, room) * 13.2f + 4);
        });
    }

    /** In whole characters of the normal font, as printed; hidden columns are nothing. */
    double width(int column) {
        return sheet.isColumnHidden(column) ? 0 : Math.min(widths[column], TEXT_WIDTH);
    }

    private void hideEmptyColumns() {
        for (int c = 1; hides && c < tables.get(0).table().columns().size(); c++) {
            if (isEmpty(tables.get(0).table(), c)) {
                sheet.setColumnHidden(c, true);
            }
        }
    }

    /** A column that the reader may fill is never empty in this sense. */
    private static boolean isEmpty(Table table, int column) {
        return table.columns().get(column).input() == Column.Input.NONE && table.isEmpty(column);
    }

    private void block(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            wrapped(parts.styles().text(), paragraph.text());
        } else if (block instanceof Block.Heading heading) {
            next++;
            text(parts.styles().subtitle(), heading.text());
        } else if (block instanceof Block.Caution caution) {
            wrapped(parts.styles().caution(), parts.words().get("caution") + ": " + caution.text());
        } else if (block instanceof Block.Points points) {
            points.points().forEach(point -> wrapped(parts.styles().text(), "\u2022 " + point));
        } else if (block instanceof Block.Figures figures) {
            figures(figures.figures());
            next = Math.max(next, contentsEnd);
        } else if (block instanceof Block.Findings findings) {
            findings(findings.findings());
        } else if (block instanceof Block.Columns columns) {
            blocks(columns.blocks());
        } else if (block instanceof Block.Beside beside) {
            blocks(beside.left());
            blocks(beside.right());
        } else if (block instanceof Block.Cards cards) {
            CardRows rows = new CardRows(parts, this);
            cards.cards().forEach(card -> {
                this.cards.add(next);
                rows.write(card);
            });
        } else if (block instanceof Block.TableView view) {
            table(view.table());
            shown.set(0, Math.max(shown.length(), view.keys().size()));
        } else if (block instanceof ScatterChart || block instanceof BarChart) {
            int rows = block instanceof ScatterChart chart
                    ? CHART_ROWS + Math.min(20, chart.points().size() / 4)
                    : 18;
            // two on a page
            if (next > 4 && charts.size() % 2 == 0) {
                sheet.setRowBreak(next - 1);
            }
            charts.add(new ChartPlace(sheet, block, next + 1, rows));
            next += rows + 2;
        }
    }

    private void figures(List<Block.Figure> figures) {
        next++;
        headings(List.of("figure", "value", "change"), 1);
        for (Block.Figure figure : figures) {
            row();
            boxed(next - 1, 0, figure.name());
            String pattern = parts.styles().pattern(figure.format(), 0);
            XSSFCell cell = cell(next - 1, 1, parts.styles().body(pattern, true, Emphasis.MARKED, false, false, true));
            value(cell, figure.value());
            if (!figure.total().isEmpty()) {
                totals.add(new TotalPlace(cell, figure.total()));
            }
            boxed(next - 1, 2, figure.change());
            widen(2, parts.characters(figure.change()) + CHANGE_EDGES);
        }
    }

    private void findings(List<Finding> findings) {
        next++;
        headings(List.of("finding", "amount", "readOn"), 1);
        widen(0, SENTENCE);
        for (Finding finding : findings) {
            XSSFRow row = row();
            int lines = parts.lines(finding.sentence(), SENTENCE - 2 * EDGES);
            row.setHeightInPoints(lines * 13.5f + 2);
            boxed(next - 1, 0, finding.sentence());
            String pattern = parts.styles().pattern(Format.MONEY, 0);
            XSSFCell cell = cell(next - 1, 1, parts.styles().body(pattern, true, Emphasis.PLAIN, false, false, false));
            if (finding.amount() != null) {
                cell.setCellValue(finding.amount().amount().toDouble());
            }
            links.add(new LinkPlace(cell(next - 1, 2, parts.styles().link()), finding.section()));
        }
    }

    private void headings(List<String> keys, int numericColumn) {
        row();
        for (int i = 0; i < keys.size(); i++) {
            cell(next - 1, i, parts.styles().heading(i == numericColumn))
                    .setCellValue(parts.words().get(keys.get(i)));
            widen(i, 16);
        }
    }

    private void boxed(int row, int column, String text) {
        cell(row, column, parts.styles().body("", false, Emphasis.PLAIN, false, startsLikeFormula(text), false))
                .setCellValue(text);
        widen(column, Math.min(WIDEST_TEXT, parts.characters(text) + 2));
    }

    private void table(Table table) {
        if (next > 3) {
            next++;
        }
        if (!table.title().equals(sheet.getSheetName())) {
            text(parts.styles().subtitle(), table.title());
        }
        if (!table.note().isEmpty()) {
            wrapped(parts.styles().note(), table.note());
        }
        boolean someHidden = hides && IntStream.range(1, table.columns().size()).anyMatch(c -> isEmpty(table, c));
        if (someHidden) {
            wrapped(parts.styles().note(), parts.words().get("hidden"));
        }
        TablePlace place = new TablePlace(sheet.getSheetName(), table, next);
        tables.add(place);
        ColumnDigits digits = new ColumnDigits(table, parts.printing().currencyDecimals());
        for (int c = 0; c < table.columns().size(); c++) {
            widen(c, width(table, c, digits.of(c)));
        }
        headingRow(table);
        table.rows().forEach(row -> bodyRow(place, row, digits, false));
        table.total().ifPresent(row -> bodyRow(place, row, digits, true));
        new LiveCells(parts, sheet, place).setUp();
        next++;
    }

    private void headingRow(Table table) {
        XSSFRow row = row();
        int lines = 1;
        for (int c = 0; c < table.columns().size(); c++) {
            Column column = table.columns().get(c);
            XSSFCell cell =
                    cell(next - 1, c, parts.styles().heading(column.format().isNumeric()));
            cell.setCellValue(column.heading());
            lines = Math.max(lines, parts.lines(column.heading(), (widths[c] - EDGES) / HEADING_TYPE));
            parts.note(cell, column.explanation());
        }
        row.setHeightInPoints(lines * 12.5f + 5);
    }

    private void bodyRow(TablePlace place, TableRow row, ColumnDigits digits, boolean total) {
        XSSFRow sheetRow = row();
        int lines = 1;
        for (int c = 0; c < row.cells().size(); c++) {
            Column column = place.table().columns().get(c);
            CellValue value = row.cells().get(c);
            boolean quoted = value instanceof CellValue.Text text && startsLikeFormula(text.text());
            String pattern = parts.styles().pattern(column.format(), value, digits.of(c));
            XSSFCellStyle style = column.input() != Column.Input.NONE && !total
                    ? parts.styles().input(pattern)
                    : parts.styles().body(pattern, column.format().isNumeric(), row.emphasis(), total, quoted, c == 0);
            XSSFCell cell = cell(next - 1, c, style);
            String formula = total ? (place.isEmpty() ? "" : column.total()) : column.formula();
            if (!formula.isEmpty() && !(value instanceof CellValue.Blank)) {
                cell.setCellFormula(FormulaText.of(formula, place, tables, next - 1, parts.words()));
            }
            value(cell, value);
            if (column.format() == Format.TEXT) {
                String text = parts.printing().cell(value, Format.TEXT);
                lines = Math.max(lines, parts.lines(text, widths[c] - EDGES));
            }
        }
        sheetRow.setHeightInPoints(Math.min(400, lines * 13f + 2));
    }

    private void value(XSSFCell cell, CellValue value) {
        if (value instanceof CellValue.Text text) {
            cell.setCellValue(parts.fitting(text.text()));
        } else if (value instanceof CellValue.Term term) {
            cell.setCellValue(parts.fitting(term.said()));
        } else if (value instanceof CellValue.YesNo yesNo) {
            cell.setCellValue(parts.words().get(yesNo.yes() ? "yes" : "no"));
        } else if (value instanceof CellValue.Day day) {
            cell.setCellValue(day.date());
        } else if (value instanceof CellValue.Sum sum) {
            cell.setCellValue(sum.money().amount().toDouble());
        } else if (value instanceof CellValue.Figure figure) {
            cell.setCellValue(figure.number().toDouble());
        }
    }

    private double width(Table table, int column, int places) {
        Column head = table.columns().get(column);
        double widest = Math.max(LEAST_WIDTH, parts.widestWord(head.heading()) * HEADING_TYPE + 2);
        List<TableRow> rows = new ArrayList<>(table.rows());
        table.total().ifPresent(rows::add);
        for (TableRow row : rows) {
            String text = parts.printing().cell(row.cells().get(column), head.format(), places);
            widest = Math.max(widest, parts.characters(text) * (row.emphasis() == Emphasis.MARKED ? 1.08 : 1) + 2.2);
        }
        return head.format().isNumeric()
                ? widest
                : Math.min(widest, Math.min(SENTENCE, Math.max(WIDEST_TEXT, widest / MOST_LINES)));
    }

    void widen(int column, double characters) {
        widths[column] = Math.max(widths[column], characters);
    }

    static boolean startsLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    }

    /** One line across the sheet. */
    void text(XSSFCellStyle style, String text) {
        row();
        cell(next - 1, 0, style).setCellValue(text);
    }

    /** A paragraph over the first columns, as high as it needs. */
    void wrapped(XSSFCellStyle style, String text) {
        XSSFRow row = row();
        cell(next - 1, 0, style).setCellValue(parts.fitting(text));
        paragraphs.put(row, text);
    }

    /** Leaves a row free. */
    void skip() {
        next++;
    }

    /** Begins a row and returns its number. */
    int startRow() {
        row();
        return next - 1;
    }

    /** As high as a text in a column of so many characters needs. */
    void fit(int row, String text, double characters) {
        sheet.getRow(row).setHeightInPoints(parts.lines(text, characters) * 13f + 2);
    }

    private XSSFRow row() {
        return sheet.createRow(next++);
    }

    XSSFCell cell(int row, int column, XSSFCellStyle style) {
        XSSFRow existing = sheet.getRow(row);
        XSSFCell cell = (existing == null ? sheet.createRow(row) : existing).createCell(column);
        cell.setCellStyle(style);
        return cell;
    }
}
