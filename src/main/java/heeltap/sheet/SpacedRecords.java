package heeltap.sheet;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The records of a text that is aligned with spaces: one a line. */
final class SpacedRecords implements Records {
    private final LineReader lines;
    private final @Nullable SpacedColumns columns;
    private int line;

    SpacedRecords(LineReader lines, @Nullable SpacedColumns columns) {
        this.lines = lines;
        this.columns = columns;
    }

    @Override
    public @Nullable List<String> next() throws IOException {
        String text = lines.next();
        line++;
        if (text == null) {
            return null;
        }
        return columns == null ? SpacedColumns.pieces(text) : columns.split(text);
    }

    @Override
    public int line() {
        return line;
    }
}
