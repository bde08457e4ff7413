package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.cli.DamagedExport.Kind;
import heeltap.load.BookLoader;
import heeltap.load.MonthFile;
import heeltap.load.MonthLoader;
import heeltap.match.NameBook;
import heeltap.quantity.Packs;
import heeltap.record.Book;
import heeltap.record.FileAccount;
import heeltap.record.Month;
import heeltap.sheet.SheetFiles;
import heeltap.source.Problem;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * A clean export is known, so what is read of a damaged one must be exactly right, or the file refused, or the rows that are
 * missing from the figures named: set aside by row, or the place named in a message. Never silently wrong.
 */
class DamagePropertiesTest {
    private static Path folder = Path.of("");
    private static Book book = readBook();

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("damage");
    }

    @AfterContainer
    static void removeFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    private static Book readBook() {
        Path exports = Path.of("src/test/resources/heeltap/exports");
        List<Sheet> sheets = new ArrayList<>();
        try {
            for (Path file : SheetFiles.list(exports.resolve("book"))) {
                sheets.addAll(SheetFiles.open(exports, file).value());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return BookLoader.load("Bar", sheets).value().book();
    }

    private static WithProblems<Month> load(DamagedExport export) {
        Path file = folder.resolve(export.kind().file());
        try {
            Files.write(file, export.bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        WithProblems<List<Sheet>> opened = SheetFiles.open(folder, file);
        String path = export.kind().file();
        MonthFile month = opened.value().isEmpty()
                ? MonthFile.unreadable(path, opened.problems())
                : MonthFile.of(path, opened.value());
        return MonthLoader.load(
                YearMonth.of(2026, 10), List.of(month), book, NameBook.of(book), Packs::parse, rows -> {});
    }

    /** What counts towards the figures must be the clean rows but for those that are named. */
    private static void check(DamagedExport export) {
        WithProblems<Month> read = load(export);
        Month month = read.value();
        FileAccount account = month.files().get(0);
        List<String> found = export.kind().figures(month);
        if (account.kind().equals("refused")) {
            assertThat(found).as(export.text()).isEmpty();
            assertThat(month.setAside()).as(export.text()).isNotEmpty();
            return;
        }
        Set<Integer> named =
                month.setAside().stream().map(row -> row.place().row()).collect(Collectors.toCollection(TreeSet::new));
        List<String> expected = new ArrayList<>();
        List<String> doubtful = new ArrayList<>();
        Set<Integer> told = read.problems().stream()
                .filter(problem -> problem.severity() == Problem.Severity.NOTICE)
                .map(problem -> problem.place().row())
                .collect(Collectors.toCollection(TreeSet::new));
        export.rows().forEach((line, figure) -> {
            if (!named.contains(line)) {
                (told.contains(line) ? doubtful : expected).add(figure);
            }
        });
        List<String> rest = new ArrayList<>(found);
        for (String figure : expected) {
            assertThat(rest.remove(figure))
                    .as(export.text() + "\nmissing " + figure + " in " + found + " aside " + named)
                    .isTrue();
        }
        assertThat(rest.size()).as(export.text() + "\nleft " + rest).isLessThanOrEqualTo(doubtful.size());
        if (!export.mayLoseRows()) {
            assertThat(account.rows()).isEqualTo(account.used() + account.ignored() + account.setAside());
        }
    }

    @Property(tries = 200)
    void sales(@ForAll long seed, @ForAll DamagedExport.Damage damage) {
        check(DamagedExport.of(Kind.SALES, damage, new Random(seed)));
    }

    @Property(tries = 200)
    void invoices(@ForAll long seed, @ForAll DamagedExport.Damage damage) {
        check(DamagedExport.of(Kind.INVOICES, damage, new Random(seed)));
    }

    @Property(tries = 200)
    void counts(@ForAll long seed, @ForAll DamagedExport.Damage damage) {
        check(DamagedExport.of(Kind.STOCK, damage, new Random(seed)));
    }
}
