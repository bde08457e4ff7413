package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;

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

    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final SheetRows rows;
    private final SheetTables tables;
    private final SummaryRows summary;
    private final List<ChartPlace> charts = new ArrayList<>();
    private final List<Integer> cards = new ArrayList<>();
    /** Whether columns in which nothing stands are hidden: where the sheet holds one table and nothing else. */
    private boolean hides;

    SheetWriter(WorkbookParts parts, XSSFSheet sheet) {
        this.parts = parts;
        this.sheet = sheet;
        this.rows = new SheetRows(parts, sheet);
        this.tables = new SheetTables(parts, sheet, rows);
        this.summary = new SummaryRows(parts, rows);
    }

    List<TablePlace> tables() {
        return tables.places();
    }

    List<ChartPlace> charts() {
        return charts;
    }

    /** The rows in which cards begin, in order. */
    List<Integer> cards() {
        return cards;
    }

    SummaryRows summary() {
        return summary;
    }

    double width(int column) {
        return rows.width(column);
    }

    void title(String above, String title) {
        if (!above.isEmpty()) {
            rows.text(parts.styles().bar(), above);
        }
        rows.row().setHeightInPoints(24);
        rows.cell(rows.next() - 1, 0, parts.styles().title()).setCellValue(title);
    }

    void blocks(List<Block> blocks) {
        hides = tables.places().isEmpty() && blocks.size() == 1 && blocks.get(0) instanceof Block.TableView;
        blocks.forEach(this::block);
    }

    void backLink(String firstSheet) {
        rows.row();
        XSSFCell cell = rows.cell(rows.next() - 1, 0, parts.styles().link());
        cell.setCellValue(parts.words().get("back", firstSheet));
        SheetRows.link(cell, TablePlace.quoted(firstSheet) + "!A1");
        rows.skip();
    }

    void finish() {
        rows.setWidths();
        tables.finish(hides);
        widenUnderCharts();
        rows.layParagraphs(tables.places().isEmpty() && charts.isEmpty());
        sheet.setDisplayGridlines(false);
        sheet.setPrintGridlines(false);
    }

    /** A chart's place is counted in columns, and programs differ in how wide they take one that says nothing. */
    private void widenUnderCharts() {
        for (int c = 0; c < CHART_COLUMNS && !charts.isEmpty(); c++) {
            rows.widenEmpty(c);
        }
    }

    private void block(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            rows.wrapped(parts.styles().text(), paragraph.text());
        } else if (block instanceof Block.Heading heading) {
            rows.skip();
            rows.text(parts.styles().subtitle(), heading.text());
        } else if (block instanceof Block.Caution caution) {
            rows.wrapped(parts.styles().caution(), parts.words().get("caution") + ": " + caution.text());
        } else if (block instanceof Block.Points points) {
            points.points().forEach(point -> rows.wrapped(parts.styles().text(), "\u2022 " + point));
        } else if (block instanceof Block.Figures figures) {
            summary.figures(figures.figures());
        } else if (block instanceof Block.Findings findings) {
            summary.findings(findings.findings());
        } else if (block instanceof Block.Columns columns) {
            blocks(columns.blocks());
        } else if (block instanceof Block.Beside beside) {
            blocks(beside.left());
            blocks(beside.right());
        } else if (block instanceof Block.Cards cards) {
            CardRows writer = new CardRows(parts, rows);
            cards.cards().forEach(card -> {
                this.cards.add(rows.next());
                writer.write(card);
            });
        } else if (block instanceof Block.TableView view) {
            tables.write(view, hides);
        } else if (block instanceof ScatterChart || block instanceof BarChart || block instanceof LineChart) {
            int high = block instanceof ScatterChart chart
                    ? CHART_ROWS + Math.min(20, chart.points().size() / 4)
                    : 18;
            // two on a page
            if (rows.next() > 4 && charts.size() % 2 == 0) {
                sheet.setRowBreak(rows.next() - 1);
            }
            charts.add(new ChartPlace(sheet, block, rows.next() + 1, high));
            rows.skip(high + 2);
        }
    }
}
