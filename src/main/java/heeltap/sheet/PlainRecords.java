package heeltap.sheet;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** The records of an undamaged delimited text. */
final class PlainRecords implements Records {
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private int line;

    PlainRecords(Reader reader, Dialect dialect) throws IOException {
        CSVFormat format = CSVFormat.Builder.create()
                .setDelimiter(dialect.delimiter())
                .setQuote(dialect.quote())
                .setIgnoreEmptyLines(false)
                .get();
        parser = CSVParser.builder().setReader(reader).setFormat(format).get();
        records = parser.iterator();
    }

    @Override
    public @Nullable List<String> next() throws IOException {
        line = (int) parser.getCurrentLineNumber() + 1;
        try {
            return records.hasNext() ? Arrays.asList(records.next().values()) : null;
        } catch (UncheckedIOException failure) {
            throw new IOException("The text changed while it was read", failure);
        }
    }

    @Override
    public int line() {
        return line;
    }
}
