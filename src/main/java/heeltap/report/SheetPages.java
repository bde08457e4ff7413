package heeltap.report;

import heeltap.document.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How a sheet prints and scrolls: on its side, as wide as one page where that is legible, else in bands of columns of
 * which each repeats the first; headings repeat on every page and stay when scrolling.
 */
final class SheetPages {
    /** Of the full size: at less the type of a page would be too small to read. */
    private static final double SMALL = 0.6;

    /** Of the full size: what fits prints in it, so that type is about as large on every page. */
    private static final double USUAL = 0.75;

    private static final int LAST_HEADING_ROW = 14;
    private static final int FEW_COLUMNS = 6;

    /** Margins in inches. */
    private static final double SIDE = 0.5;

    private static final double TOP = 0.75;
    private static final double BOTTOM = 0.6;
    private static final double INCH = 72;
    /** Seven dots of 96 an inch are a digit of the normal font. */
    private static final double POINTS_A_CHARACTER = 5.25;

    /** Rows around a chart on its page: the sheet's title, its link and what keeps them apart. */
    private static final int CHART_SURROUND = 5;

    /** The same where the machine lacks the font and takes a wide one instead. */
    private static final double WIDE_CHARACTER = 6.4;

    private static final int MOST_COLUMNS = 256;
    /** So much smaller than full size a sheet may print without a reader minding. */
    private static final double MILD = 1.22;
    /** The same where the type is as small already as is legible. */
    private static final double SLIGHT = 1.12;
    /** For machines whose fonts run wider. */
    private static final double SAFE = 0.97;

    private final Document document;
    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final Optional<SheetWriter> writer;
    private final PageShape paper;

    SheetPages(Document document, WorkbookParts parts, XSSFSheet sheet, Optional<SheetWriter> writer) {
        this.document = document;
        this.parts = parts;
        this.sheet = sheet;
        this.writer = writer;
        this.paper = PageShape.of(document.language());
    }

    void setUp() {
        sheet.getPrintSetup()
                .setPaperSize(PageShape.isLetter(document.language()) ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
        sheet.setMargin(PageMargin.LEFT, SIDE);
        sheet.setMargin(PageMargin.RIGHT, SIDE);
        sheet.setMargin(PageMargin.TOP, TOP);
        sheet.setMargin(PageMargin.BOTTOM, BOTTOM);
        sheet.getHeader().setLeft("&\"Arial,Bold\"" + plain(document.bar()));
        sheet.getHeader().setRight(plain(parts.printing().month(document.month())));
        String amounts = parts.words().get("amounts", document.currency().getCurrencyCode());
        sheet.getFooter().setLeft(plain(sheet.getSheetName() + " \u00B7 " + amounts));
        sheet.getFooter().setRight("&P / &N");
        sheet.getCTWorksheet().getHeaderFooter().setScaleWithDoc(false);
        writer.ifPresentOrElse(this::fit, () -> lay(false, 0));
        writer.filter(filled -> !filled.tables().isEmpty()).ifPresent(this::tableSheet);
        printArea();
    }

    /** What holds something, charts included, and no more. */
    private void printArea() {
        int lastRow = sheet.getLastRowNum();
        int lastColumn = 0;
        for (Row row : sheet) {
            lastColumn = Math.max(lastColumn, row.getLastCellNum() - 1);
        }
        for (CellRangeAddress merged : sheet.getMergedRegions()) {
            lastColumn = Math.max(lastColumn, merged.getLastColumn());
        }
        if (sheet.getDrawingPatriarch() != null) {
            for (XSSFShape shape : sheet.getDrawingPatriarch()) {
                if (shape.getAnchor() instanceof XSSFClientAnchor anchor) {
                    lastRow = Math.max(lastRow, anchor.getRow2());
                    lastColumn = Math.max(lastColumn, anchor.getCol2());
                }
            }
        }
        XSSFWorkbook workbook = sheet.getWorkbook();
        workbook.setPrintArea(workbook.getSheetIndex(sheet), 0, lastColumn, 0, lastRow);
    }

    /** Upright where that is wide enough and the rows are many; shrunk a little where a few rows would stand alone. */
    private void fit(SheetWriter filled) {
        double wide = columns(filled) * POINTS_A_CHARACTER;
        if (!filled.charts().isEmpty()) {
            charts(filled);
            return;
        } else if (!filled.cards().isEmpty()) {
            cards(filled);
            return;
        } else if (filled.summary().keepsContents()) {
            lay(true, 1);
            return;
        }
        boolean upright = pages(wide, true) > 1 && wide <= across(false) * MILD;
        if (columns(filled) * WIDE_CHARACTER * USUAL <= across(!upright)) {
            set(!upright, USUAL);
            return;
        }
        double pages = pages(wide, !upright);
        double most = Math.floor(pages);
        lay(!upright, most >= 1 && pages <= most * MILD ? (int) most : 0);
    }

    /** Two on an upright page; a set scale, since sheets that are fitted lose the breaks before their charts. */
    private void charts(SheetWriter filled) {
        List<SheetWriter.ChartPlace> charts = filled.charts();
        int first = charts.get(0).row();
        double highest = height(first);
        for (int i = 0; i < charts.size(); i += 2) {
            SheetWriter.ChartPlace last = charts.get(Math.min(i + 1, charts.size() - 1));
            int from = i == 0 && first <= CHART_SURROUND ? 0 : charts.get(i).row() - 1;
            highest = Math.max(highest, height(last.row() + last.rows() + 1) - height(from));
        }
        double wide =
                Math.max(NativeCharts.WIDTH * WIDE_CHARACTER / POINTS_A_CHARACTER, columns(filled) * WIDE_CHARACTER);
        set(false, Math.min(USUAL, Math.min(across(false) / wide, down(false) / highest)));
    }

    /** No card is parted by a page's end. */
    private void cards(SheetWriter filled) {
        double scale = Math.min(USUAL, across(false) / (columns(filled) * WIDE_CHARACTER));
        set(false, scale);
        double room = down(false) / scale;
        double top = 0;
        List<Integer> cards = filled.cards();
        for (int i = 0; i < cards.size(); i++) {
            int end = i + 1 < cards.size() ? cards.get(i + 1) : sheet.getLastRowNum() + 1;
            if (height(end) - top > room && height(cards.get(i)) > top) {
                sheet.setRowBreak(cards.get(i) - 1);
                top = height(cards.get(i));
            }
        }
    }

    private void set(boolean onItsSide, double scale) {
        sheet.getPrintSetup().setLandscape(onItsSide);
        sheet.setFitToPage(false);
        sheet.getPrintSetup().setScale((short) Math.floor(100 * SAFE * scale));
    }

    private double pages(double wide, boolean onItsSide) {
        return height(sheet.getLastRowNum() + 1) * Math.min(1, across(onItsSide) / wide) / down(onItsSide);
    }

    /** As wide as one page and so many pages high, 0 for as many as it takes. */
    private void lay(boolean onItsSide, int high) {
        sheet.getPrintSetup().setLandscape(onItsSide);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) high);
    }

    /** Room for what is printed, in points. */
    private double across(boolean onItsSide) {
        return (onItsSide ? paper.width() : paper.height()) - 2 * SIDE * INCH;
    }

    private double down(boolean onItsSide) {
        return (onItsSide ? paper.height() : paper.width()) - (TOP + BOTTOM) * INCH;
    }

    private static double columns(SheetWriter filled) {
        double columns = 0;
        for (int c = 0; c < MOST_COLUMNS; c++) {
            columns += filled.width(c);
        }
        return columns;
    }

    /** Of so many rows from the top, in points. */
    private double height(int rows) {
        double high = 0;
        for (int r = 0; r < rows; r++) {
            high += sheet.getRow(r) == null
                    ? sheet.getDefaultRowHeightInPoints()
                    : sheet.getRow(r).getHeightInPoints();
        }
        return high;
    }

    private void tableSheet(SheetWriter filled) {
        TablePlace place = filled.tables().get(0);
        int columns = place.table().columns().size();
        boolean chartBefore = filled.charts().stream().anyMatch(chart -> chart.row() < place.headingRow());
        boolean banded = filled.tables().size() == 1 && filled.charts().isEmpty() && band(filled, columns);
        if (!chartBefore && place.headingRow() < LAST_HEADING_ROW) {
            sheet.createFreezePane(columns > FEW_COLUMNS ? 1 : 0, place.firstRow());
            if (filled.tables().size() == 1) {
                sheet.setRepeatingRows(new CellRangeAddress(place.headingRow(), place.headingRow(), -1, -1));
            }
        }
        if (banded) {
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
        }
        sheet.setAutoFilter(new CellRangeAddress(
                place.headingRow(), Math.max(place.headingRow(), place.lastRow()), 0, columns - 1));
    }

    /** Breaks the columns over pages where they are too wide for one; returns whether it did. */
    private boolean band(SheetWriter filled, int columns) {
        double legible = across(true) / (SMALL * WIDE_CHARACTER);
        if (bands(filled, columns, Double.MAX_VALUE).get(0) <= legible) {
            return false;
        }
        int fewest = bands(filled, columns, legible).size();
        double most = legible;
        // of about one width, so that none holds one column alone
        while (bands(filled, columns, most - 1).size() == fewest) {
            most--;
        }
        double used = 0;
        for (int c = 0; c < columns; c++) {
            if (c > 1 && used + filled.width(c) > most) {
                sheet.setColumnBreak(c - 1);
                used = filled.width(0);
            }
            used += filled.width(c);
        }
        double pages = height(sheet.getLastRowNum() + 1) * SMALL / down(true);
        double whole = Math.max(1, Math.floor(pages));
        double scale = pages > whole && pages <= whole * SLIGHT ? SMALL * SAFE * whole / pages : SMALL;
        sheet.getPrintSetup().setLandscape(true);
        sheet.setFitToPage(false);
        sheet.getPrintSetup().setScale((short) Math.floor(100 * scale));
        return true;
    }

    /** The widths of bands of columns no wider than {@code most} where a column is not, each with the first column. */
    private static List<Double> bands(SheetWriter filled, int columns, double most) {
        List<Double> bands = new ArrayList<>();
        double used = 0;
        for (int c = 0; c < columns; c++) {
            if (c > 1 && used + filled.width(c) > most) {
                bands.add(used);
                used = filled.width(0);
            }
            used += filled.width(c);
        }
        bands.add(used);
        return bands;
    }

    /** In headers and footers an ampersand begins a command. */
    private static String plain(String text) {
        return text.replace("&", "&&");
    }
}
