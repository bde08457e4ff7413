package heeltap.source;

import java.util.ArrayList;
import java.util.List;

/** A sheet held in memory, for tests. */
public final class MemorySheet implements Sheet {
    private final SheetFacts facts;
    private final List<Row> rows;

    private MemorySheet(SheetFacts facts, List<Row> rows) {
        this.facts = facts;
        this.rows = rows;
    }

    /**
     * A text sheet: the first row has number 1, and cells that are blank are no cells.
     *
     * @param file path from the bar folder
     * @param sheet the sheet's name; empty for a text file
     */
    public static MemorySheet of(String file, String sheet, List<List<String>> rows) {
        List<Row> numbered = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<Cell> cells = new ArrayList<>();
            for (int column = 0; column < rows.get(i).size(); column++) {
                String text = rows.get(i).get(column);
                if (!text.isBlank()) {
                    cells.add(Cell.text(column, text));
                }
            }
            numbered.add(new Row(i + 1, cells));
        }
        return ofRows(file, sheet, numbered);
    }

    /** A sheet of rows that are ready. */
    public static MemorySheet ofRows(String file, String sheet, List<Row> rows) {
        boolean textFile = sheet.isEmpty();
        return new MemorySheet(
                new SheetFacts(
                        Place.of(file, sheet), textFile ? "UTF-8" : "", textFile ? "comma" : "", false, List.of()),
                List.copyOf(rows));
    }

    @Override
    public SheetFacts facts() {
        return facts;
    }

    @Override
    public void read(RowReader reader) {
        for (Row row : rows) {
            if (!reader.take(row)) {
                return;
            }
        }
    }
}
