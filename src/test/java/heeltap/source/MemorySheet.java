package heeltap.source;

import java.util.ArrayList;
import java.util.List;

/** A sheet held in memory: rows of texts, blank ones for blank cells. */
public final class MemorySheet implements Sheet {
    private final SheetFacts facts;
    private final List<Row> rows;

    private MemorySheet(SheetFacts facts, List<Row> rows) {
        this.facts = facts;
        this.rows = rows;
    }

    public static MemorySheet of(String file, String sheet, List<List<String>> rows) {
        List<Row> read = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<Cell> cells = new ArrayList<>();
            for (int column = 0; column < rows.get(i).size(); column++) {
                String text = rows.get(i).get(column);
                if (!text.isBlank()) {
                    cells.add(Cell.text(column, text));
                }
            }
            read.add(new Row(i + 1, List.copyOf(cells)));
        }
        return ofRows(file, sheet, read);
    }

    /** Of rows with any kind of cells. */
    public static MemorySheet ofRows(String file, String sheet, List<Row> rows) {
        String encoding = sheet.isEmpty() ? "UTF-8" : "";
        String delimiter = sheet.isEmpty() ? "comma" : "";
        return new MemorySheet(
                new SheetFacts(Place.of(file, sheet), encoding, delimiter, false, List.of()), List.copyOf(rows));
    }

    /** The same sheet, hidden. */
    public MemorySheet hidden() {
        return new MemorySheet(
                new SheetFacts(facts.place(), facts.encoding(), facts.delimiter(), true, facts.problems()), rows);
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
