package heeltap.report;

import heeltap.document.Document;
import java.util.Optional;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * How a sheet prints and scrolls: on its side, as wide as one page where that is legible, else in bands of columns of
 * which each repeats the first; headings repeat on every page and stay when scrolling.
 */
final class SheetPages {
    /** In characters of the normal font: at more the type of a page would be too small to read. */
    private static final double LEGIBLE = 212;
    /** Percent of the full size at which so many characters fill a page. */
    private static final short SMALL = 60;

    private static final int LAST_HEADING_ROW = 14;
    private static final int FEW_COLUMNS = 6;

    private final Document document;
    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final Optional<SheetWriter> writer;

    SheetPages(Document document, WorkbookParts parts, XSSFSheet sheet, Optional<SheetWriter> writer) {
        this.document = document;
        this.parts = parts;
        this.sheet = sheet;
        this.writer = writer;
    }

    void setUp() {
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup()
                .setPaperSize(PageShape.isLetter(document.language()) ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, 0.5);
        sheet.setMargin(PageMargin.RIGHT, 0.5);
        sheet.setMargin(PageMargin.TOP, 0.75);
        sheet.setMargin(PageMargin.BOTTOM, 0.6);
        sheet.getHeader().setLeft("&\"Arial,Bold\"" + plain(document.bar()));
        sheet.getHeader().setRight(plain(parts.printing().month(document.month())));
        String amounts = parts.words().get("amounts", document.currency().getCurrencyCode());
        sheet.getFooter().setLeft(plain(sheet.getSheetName() + " \u00B7 " + amounts));
        sheet.getFooter().setRight("&P / &N");
        writer.filter(filled -> !filled.tables().isEmpty()).ifPresent(this::tableSheet);
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
        double all = 0;
        for (int c = 0; c < columns; c++) {
            all += filled.width(c);
        }
        if (all <= LEGIBLE) {
            return false;
        }
        sheet.setFitToPage(false);
        sheet.getPrintSetup().setScale(SMALL);
        double name = filled.width(0);
        double bands = Math.ceil((all - name) / (LEGIBLE - name));
        // bands of about one width, so that none holds one column alone
        double most = Math.min(LEGIBLE, name + (all - name) / bands * 1.15);
        double used = 0;
        for (int c = 0; c < columns; c++) {
            if (used + filled.width(c) > most) {
                sheet.setColumnBreak(c - 1);
                used = filled.width(0);
            }
            used += filled.width(c);
        }
        return true;
    }

    /** In headers and footers an ampersand begins a command. */
    private static String plain(String text) {
        return text.replace("&", "&&");
    }
}
