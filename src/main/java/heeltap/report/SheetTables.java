package heeltap.report;

import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.ColumnDigits;
import heeltap.document.Format;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;

/** The tables of one sheet, beginning in its first column. */
final class SheetTables {
    private static final double LEAST_WIDTH = 9;
    private static final double WIDEST_TEXT = 60;
    /** A text that would take more lines than this has a wider column. */
    private static final int MOST_LINES = 2;
    /** No column of text is wider. */
    private static final double SENTENCE = 88;
    /** The bold type of headings against the plain type that widths are measured in. */
    private static final double HEADING_TYPE = 0.98;

    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final SheetRows rows;
    private final List<TablePlace> tables = new ArrayList<>();
    /** The columns that tables show; those beyond hold what only formulas need. */
    private final BitSet shown = new BitSet();

    SheetTables(WorkbookParts parts, XSSFSheet sheet, SheetRows rows) {
        this.parts = parts;
        this.sheet = sheet;
        this.rows = rows;
    }

    /** Where they stand, in order. */
    List<TablePlace> places() {
        return tables;
    }

    /** @param hides whether columns in which nothing stands are hidden */
    void write(Block.TableView view, boolean hides) {
        table(view.table(), hides);
        shown.set(0, Math.max(shown.length(), view.keys().size()));
    }

    /** Hides what holds nothing and folds away what only formulas need. */
    void finish(boolean hides) {
        for (int c = 1; hides && c < tables.get(0).table().columns().size(); c++) {
            if (isEmpty(tables.get(0).table(), c)) {
                sheet.setColumnHidden(c, true);
            }
        }
        foldWorkings();
    }

    private void table(Table table, boolean hides) {
        if (rows.next() > 3) {
            rows.skip();
        }
        if (!table.title().equals(sheet.getSheetName())) {
            rows.text(parts.styles().subtitle(), table.title());
        }
        if (!table.note().isEmpty()) {
            rows.wrapped(parts.styles().note(), table.note());
        }
        boolean someHidden = hides && IntStream.range(1, table.columns().size()).anyMatch(c -> isEmpty(table, c));
        if (someHidden) {
            rows.wrapped(parts.styles().note(), parts.words().get("hidden"));
        }
        TablePlace place = new TablePlace(sheet.getSheetName(), table, rows.next());
        tables.add(place);
        ColumnDigits digits = new ColumnDigits(table, parts.printing().currencyDecimals());
        for (int c = 0; c < table.columns().size(); c++) {
            rows.widen(c, width(table, c, digits.of(c)));
        }
        headingRow(table);
        table.rows().forEach(row -> bodyRow(place, row, digits, false));
        table.total().ifPresent(row -> bodyRow(place, row, digits, true));
        new LiveCells(parts, sheet, place).setUp();
        rows.skip();
    }

    private void headingRow(Table table) {
        XSSFRow row = rows.row();
        int lines = 1;
        for (int c = 0; c < table.columns().size(); c++) {
            Column column = table.columns().get(c);
            XSSFCell cell = rows.cell(
                    rows.next() - 1, c, parts.styles().heading(column.format().isNumeric()));
            cell.setCellValue(column.heading());
            lines = Math.max(lines, parts.lines(column.heading(), (rows.given(c) - SheetRows.EDGES) / HEADING_TYPE));
            parts.note(cell, column.explanation());
        }
        row.setHeightInPoints(lines * 12.5f + 5);
    }

    private void bodyRow(TablePlace place, TableRow row, ColumnDigits digits, boolean total) {
        XSSFRow sheetRow = rows.row();
        int lines = 1;
        for (int c = 0; c < row.cells().size(); c++) {
            Column column = place.table().columns().get(c);
            CellValue value = row.cells().get(c);
            boolean quoted = value instanceof CellValue.Text text && SheetRows.startsLikeFormula(text.text());
            String pattern = parts.styles().pattern(column.format(), value, digits.of(c));
            XSSFCellStyle style = column.input() != Column.Input.NONE && !total
                    ? parts.styles().input(pattern)
                    : parts.styles().body(pattern, column.format().isNumeric(), row.emphasis(), total, quoted, c == 0);
            XSSFCell cell = rows.cell(rows.next() - 1, c, style);
            String formula = total ? (place.isEmpty() ? "" : column.total()) : column.formula();
            if (!formula.isEmpty() && !(value instanceof CellValue.Blank)) {
                cell.setCellFormula(FormulaText.of(formula, place, tables, rows.next() - 1, parts.words()));
            }
            rows.value(cell, value);
            if (column.format() == Format.TEXT) {
                String text = parts.printing().cell(value, Format.TEXT);
                lines = Math.max(lines, parts.lines(text, rows.given(c) - SheetRows.EDGES));
            }
        }
        sheetRow.setHeightInPoints(Math.min(400, lines * 13f + 2));
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
        rows.widenEmpty(index);
        return sheet.getColumnHelper().getColumn(index, false);
    }

    /** A column that the reader may fill is never empty in this sense. */
    private static boolean isEmpty(Table table, int column) {
        return table.columns().get(column).input() == Column.Input.NONE && table.isEmpty(column);
    }
}
