package heeltap.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.source.Cell;
import heeltap.source.Row;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;

/** Whatever another program writes by the rules is read back the same, and damage costs no other row. */
class RoundTripTest {
    private static final List<String> ENCODINGS = List.of("UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252");

    /** How a table is written. */
    record Writing(char delimiter, String lineEnd, Charset charset, QuoteMode quotes) {}

    /** A heading of plain words, then rows of any text. */
    record Table(List<List<String>> rows) {}

    @Provide
    Arbitrary<Writing> writings() {
        return Combinators.combine(
                        Arbitraries.of(',', ';', '\t', '|'),
                        Arbitraries.of("\n", "\r", "\r\n"),
                        Arbitraries.of(ENCODINGS),
                        Arbitraries.of(QuoteMode.MINIMAL, QuoteMode.ALL, QuoteMode.NON_NUMERIC))
                .as((delimiter, end, charset, quotes) -> new Writing(delimiter, end, Charset.forName(charset), quotes));
    }

    @Provide
    Arbitrary<Table> tables() {
        return tables("abcXYZ019 ,;|\t\"'\\.-\n\r\u00a0éü");
    }

    @Provide
    Arbitrary<Table> plainTables() {
        return tables("abcXYZ019 .-éü");
    }

    private static Arbitrary<Table> tables(String alphabet) {
        Arbitrary<String> cell =
                Arbitraries.strings().withChars(alphabet.toCharArray()).ofMaxLength(8);
        return Arbitraries.integers()
                .between(2, 5)
                .flatMap(width -> cell.list()
                        .ofSize(width)
                        .list()
                        .ofMinSize(1)
                        .ofMaxSize(8)
                        .map(rows -> {
                            List<List<String>> all = new ArrayList<>();
                            all.add(Arrays.asList("Item", "Qty", "Net", "Tax", "Note")
                                    .subList(0, width));
                            all.addAll(rows);
                            return new Table(all);
                        }));
    }

    @Property(tries = 800)
    void anyTableIsReadBack(@ForAll("tables") Table table, @ForAll("writings") Writing writing) throws IOException {
        String text = write(table, writing);
        Assume.that(!isAmbiguous(table, writing.delimiter()));
        assertThat(texts(open(text, writing.charset()).rows())).isEqualTo(texts(table));
    }

    /** Line breaks in cells between which whole rows seem to stand are taken for a stray quote, and named. */
    private static boolean isAmbiguous(Table table, char delimiter) throws IOException {
        for (List<String> row : table.rows()) {
            LineReader lines = new LineReader(new StringReader(String.join(String.valueOf(delimiter), row)));
            int whole = 0;
            for (String one = lines.next(); one != null; one = lines.next()) {
                whole += one.chars().filter(c -> c == delimiter).count() >= row.size() - 1 ? 1 : 0;
            }
            if (whole > 1) {
                return true;
            }
        }
        return false;
    }

    /** Both readers of delimited text give the same records and the same lines. */
    @Property(tries = 300)
    void theTwoReadersAgree(@ForAll("tables") Table table, @ForAll("writings") Writing writing) throws IOException {
        String text = write(table, writing);
        Dialect dialect = Dialect.of(writing.delimiter());
        assertThat(all(new QuotedRecords(new LineReader(new StringReader(text)), dialect, 0)))
                .isEqualTo(all(new PlainRecords(new StringReader(text), dialect)));
    }

    private static List<String> all(Records records) throws IOException {
        List<String> all = new ArrayList<>();
        for (List<String> fields = records.next(); fields != null; fields = records.next()) {
            all.add(records.line() + " " + fields);
        }
        return all;
    }

    /** One more quote anywhere in a row: every other row is as it was, and the damaged line is named. */
    @Property(tries = 800)
    void aStrayQuoteCostsNoOtherRow(
            @ForAll("plainTables") Table table, @ForAll("writings") Writing writing, @ForAll int place)
            throws IOException {
        String text = write(table, writing);
        int at = Math.floorMod(place, text.length());
        Assume.that(text.charAt(at) != '\n' && text.charAt(at) != '\r');
        Assume.that(at >= text.indexOf(writing.lineEnd()));
        Opened damaged = open(text.substring(0, at) + '"' + text.substring(at), writing.charset());
        int line = 1 + count(text.substring(0, at), writing.lineEnd());
        List<Row> rows = damaged.rows();
        List<List<String>> expected = texts(table);
        assertThat(rows).hasSize(expected.size());
        for (int i = 0; i < rows.size(); i++) {
            if (i + 1 != line) {
                assertThat(texts(rows.subList(i, i + 1))).containsExactly(expected.get(i));
            }
        }
        if (!damaged.oddRows().contains(line)) {
            assertIsAsWrittenButForTheQuote(rows.get(line - 1), expected.get(line - 1));
        }
    }

    /** One delimiter more or less in a row of data: every other row is as it was. */
    @Property(tries = 300)
    void aDelimiterTooManyOrTooFewCostsNoOtherRow(
            @ForAll("plainTables") Table table, @ForAll("writings") Writing writing, @ForAll int place)
            throws IOException {
        Assume.that(table.rows().size() > 3);
        String text = write(table, writing);
        int head = text.indexOf(writing.lineEnd()) + writing.lineEnd().length();
        int at = head + Math.floorMod(place, text.length() - head);
        Assume.that(text.charAt(at) != '\n' && text.charAt(at) != '\r');
        boolean less = text.charAt(at) == writing.delimiter();
        String middle = less ? "" : String.valueOf(writing.delimiter());
        Opened damaged = open(text.substring(0, at) + middle + text.substring(less ? at + 1 : at), writing.charset());
        int line = 1 + count(text.substring(0, at), writing.lineEnd());
        List<List<String>> expected = new ArrayList<>(texts(table));
        List<List<String>> found = new ArrayList<>(texts(damaged.rows()));
        expected.remove(line - 1);
        found.remove(line - 1);
        assertThat(found).isEqualTo(expected);
    }

    /** Not named is only what looks like an inch mark or an empty quoted cell. */
    private static void assertIsAsWrittenButForTheQuote(Row row, List<String> expected) {
        String joined = String.join("", texts(List.of(row)).get(0));
        assertThat(joined.replace("\"", "").strip())
                .isEqualTo(String.join("", expected).strip());
    }

    private static int count(String text, String part) {
        int count = 0;
        for (int at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + part.length())) {
            count++;
        }
        return count;
    }

    private static Opened open(String text, Charset charset) throws IOException {
        Path folder = Files.createTempDirectory("sheet");
        Path file = folder.resolve("export.csv");
        try {
            return Opened.text(folder, text, charset);
        } finally {
            // in reverse order, the file before its folder
            folder.toFile().deleteOnExit();
            file.toFile().deleteOnExit();
        }
    }

    private static String write(Table table, Writing writing) throws IOException {
        CSVFormat format = CSVFormat.Builder.create()
                .setDelimiter(writing.delimiter())
                .setQuote('"')
                .setQuoteMode(writing.quotes())
                .setRecordSeparator(writing.lineEnd())
                .get();
        StringBuilder text = new StringBuilder();
        for (List<String> row : table.rows()) {
            format.printRecord(text, row.toArray());
        }
        return text.toString();
    }

    private static List<List<String>> texts(Table table) {
        return table.rows().stream()
                .map(row -> {
                    List<String> texts = new ArrayList<>(row);
                    texts.replaceAll(text -> Blank.is(text) ? "" : text);
                    return trimmed(texts);
                })
                .toList();
    }

    private static List<List<String>> texts(List<Row> rows) {
        return rows.stream()
                .map(row -> {
                    List<String> texts = new ArrayList<>();
                    for (Cell cell : row.cells()) {
                        while (texts.size() < cell.column()) {
                            texts.add("");
                        }
                        texts.add(cell.text());
                    }
                    return texts;
                })
                .toList();
    }

    private static List<String> trimmed(List<String> texts) {
        int size = texts.size();
        while (size > 0 && texts.get(size - 1).isEmpty()) {
            size--;
        }
        return texts.subList(0, size);
    }
}
