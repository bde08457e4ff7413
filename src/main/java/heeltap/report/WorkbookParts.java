package heeltap.report;

import heeltap.report.Faces.Face;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;

/** What all sheets of a workbook share. Widths are in characters of the normal font. */
record WorkbookParts(WorkbookStyles styles, Printing printing, Faces faces) {
    private static final int MOST_CHARACTERS = SpreadsheetVersion.EXCEL2007.getMaxTextLength();

    Words words() {
        return printing.words();
    }

    double characters(String text) {
        return faces.width(Face.PLAIN, text, 10) / faces.width(Face.PLAIN, "0", 10);
    }

    double widestWord(String text) {
        double widest = 0;
        for (String word : text.split("[ \n]", -1)) {
            widest = Math.max(widest, characters(word));
        }
        return widest;
    }

    /** How many lines the text takes in a cell so wide. */
    int lines(String text, double width) {
        Ink ink = new Ink(Face.PLAIN, 10, Look.INK);
        float points = (float) (width * faces.width(Face.PLAIN, "0", 10));
        return ink.wrap(faces, text, Math.max(points, 20)).size();
    }

    /** A cell holds so many characters and no more; a longer text ends in three points. */
    String fitting(String text) {
        return text.length() <= MOST_CHARACTERS ? text : text.substring(0, MOST_CHARACTERS - 1) + "\u2026";
    }

    /** A note that opens over the cell. */
    void note(XSSFCell cell, String text) {
        if (text.isEmpty()) {
            return;
        }
        XSSFDrawing drawing = cell.getSheet().createDrawingPatriarch();
        int column = cell.getColumnIndex();
        int row = cell.getRowIndex();
        int rows = 1 + lines(text, 30);
        XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, column + 1, row, column + 4, row + rows);
        XSSFComment comment = drawing.createCellComment(anchor);
        comment.setString(new XSSFRichTextString(text));
        comment.setAuthor("Heeltap");
        cell.setCellComment(comment);
    }
}
