package heeltap.report;

import heeltap.document.Block;
import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.document.TableRow.Emphasis;
import heeltap.report.SheetWriter.LinkPlace;
import heeltap.report.SheetWriter.TotalPlace;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;

/** What the sheet that opens the workbook has and no other: the month's figures, the findings, and the list of sheets. */
final class SummaryRows {
    private static final int CONTENTS_ROW = 3;
    private static final int CONTENTS_COLUMN = 4;
    /** Side by side, beside the figures. */
    private static final int CONTENTS_COLUMNS = 3;

    private static final double WIDEST_TEXT = 60;
    private static final double SENTENCE = 88;
    /** Beside the change on last month, which has one line on every machine. */
    private static final double CHANGE_EDGES = 5;

    private final WorkbookParts parts;
    private final SheetRows rows;
    private final List<LinkPlace> links = new ArrayList<>();
    private final List<TotalPlace> totals = new ArrayList<>();
    /** The row behind the list of sheets; 0 where there is none. */
    private int contentsEnd;

    SummaryRows(WorkbookParts parts, SheetRows rows) {
        this.parts = parts;
        this.rows = rows;
    }

    List<LinkPlace> links() {
        return links;
    }

    List<TotalPlace> totals() {
        return totals;
    }

    boolean keepsContents() {
        return contentsEnd > 0;
    }

    /** Beside the figures that begin the sheet, whose rows are of one height. */
    void contents(List<String> sheets) {
        int high = contentsRows(sheets.size());
        for (int c = 0; c < CONTENTS_COLUMNS; c++) {
            rows.cell(CONTENTS_ROW, CONTENTS_COLUMN + c, parts.styles().heading(false))
                    .setCellValue(c == 0 ? parts.words().get("contents") : "");
        }
        for (int i = 0; i < sheets.size(); i++) {
            String name = sheets.get(i);
            int column = CONTENTS_COLUMN + i / high;
            XSSFCell cell = rows.cell(
                    CONTENTS_ROW + 1 + i % high, column, parts.styles().link());
            cell.setCellValue(name);
            SheetRows.link(cell, TablePlace.quoted(name) + "!A1");
            rows.widen(column, parts.characters(name) + 3);
        }
    }

    private static int contentsRows(int sheets) {
        return (sheets + CONTENTS_COLUMNS - 1) / CONTENTS_COLUMNS;
    }

    /** Keeps rows free for the contents of a workbook of so many sheets. */
    void keepContents(int sheets) {
        contentsEnd = CONTENTS_ROW + contentsRows(sheets) + 1;
    }

    void figures(List<Block.Figure> figures) {
        rows.skip();
        headings(List.of("figure", "value", "change"), 1);
        for (Block.Figure figure : figures) {
            rows.row();
            boxed(rows.next() - 1, 0, figure.name());
            String pattern = parts.styles().pattern(figure.format(), 0);
            XSSFCell cell = rows.cell(
                    rows.next() - 1, 1, parts.styles().body(pattern, true, Emphasis.MARKED, false, false, true));
            rows.value(cell, figure.value());
            if (!figure.total().isEmpty()) {
                totals.add(new TotalPlace(cell, figure.total()));
            }
            boxed(rows.next() - 1, 2, figure.change());
            rows.widen(2, parts.characters(figure.change()) + CHANGE_EDGES);
        }
        rows.goTo(contentsEnd);
    }

    void findings(List<Finding> findings) {
        rows.skip();
        headings(List.of("finding", "amount", "readOn"), 1);
        rows.widen(0, SENTENCE);
        for (Finding finding : findings) {
            XSSFRow row = rows.row();
            int lines = parts.lines(finding.sentence(), SENTENCE - 2 * SheetRows.EDGES);
            row.setHeightInPoints(lines * 13.5f + 2);
            boxed(rows.next() - 1, 0, finding.sentence());
            String pattern = parts.styles().pattern(Format.MONEY, 0);
            XSSFCell cell = rows.cell(
                    rows.next() - 1, 1, parts.styles().body(pattern, true, Emphasis.PLAIN, false, false, false));
            if (finding.amount() != null) {
                cell.setCellValue(finding.amount().amount().toDouble());
            }
            links.add(new LinkPlace(rows.cell(rows.next() - 1, 2, parts.styles().link()), finding.section()));
        }
    }

    private void headings(List<String> keys, int numericColumn) {
        rows.row();
        for (int i = 0; i < keys.size(); i++) {
            rows.cell(rows.next() - 1, i, parts.styles().heading(i == numericColumn))
                    .setCellValue(parts.words().get(keys.get(i)));
            rows.widen(i, 16);
        }
    }

    private void boxed(int row, int column, String text) {
        rows.cell(
                        row,
                        column,
                        parts.styles().body("", false, Emphasis.PLAIN, false, SheetRows.startsLikeFormula(text), false))
                .setCellValue(text);
        rows.widen(column, Math.min(WIDEST_TEXT, parts.characters(text) + 2));
    }
}
