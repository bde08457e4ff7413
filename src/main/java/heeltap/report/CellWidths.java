package heeltap.report;

import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;

/** How wide the texts of a table are in type of one point; widths grow with the size. */
final class CellWidths {
    /** Lines do not fill their column to the end. */
    private static final float RAGGED = 1.05f;

    /** By row, the total row last, then by column. */
    private final List<float[]> rows = new ArrayList<>();

    private final float[] widest;
    private final float[] widestWord;

    /** What a cell prints. */
    interface Texts {
        String of(TableRow row, int column);
    }

    CellWidths(Table table, Faces faces, Texts texts) {
        widest = new float[table.columns().size()];
        widestWord = new float[table.columns().size()];
        table.rows().forEach(row -> add(row, row.emphasis() == Emphasis.MARKED, faces, texts));
        table.total().ifPresent(row -> add(row, true, faces, texts));
    }

    private void add(TableRow row, boolean bold, Faces faces, Texts texts) {
        Face face = bold ? Face.BOLD : row.emphasis() == Emphasis.FAINT ? Face.ITALIC : Face.PLAIN;
        Ink ink = new Ink(face, 1, Look.INK);
        float[] widths = new float[widest.length];
        for (int c = 0; c < widths.length; c++) {
            String text = texts.of(row, c);
            widths[c] = ink.width(faces, text);
            widest[c] = Math.max(widest[c], widths[c]);
            widestWord[c] = Math.max(widestWord[c], ink.widestWord(faces, text));
        }
        rows.add(widths);
    }

    float widest(int column, float size) {
        return widest[column] * size;
    }

    float widestWord(int column, float size) {
        return widestWord[column] * size;
    }

    /**
     * About how many lines the rows take together.
     *
     * @param room for the words of each of the columns
     */
    int lines(List<Integer> columns, float[] room, float size) {
        int all = 0;
        for (float[] row : rows) {
            int most = 1;
            for (int c = 0; c < room.length; c++) {
                float width = row[columns.get(c)] * size;
                most = width <= room[c] + 0.05f ? most : Math.max(most, (int) Math.ceil(width * RAGGED / room[c]));
            }
            all += most;
        }
        return all;
    }
}
