package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.source.MemorySheet;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TemplatesTest {
    private static final Path FOLDER = Path.of("templates");

    /** Run with {@code -Dheeltap.templates=write} to write the folder anew. */
    @Test
    void theFolderHoldsWhatTheDefinitionsSay() throws IOException {
        List<TemplateFile> files = Templates.files();
        if ("write".equals(System.getProperty("heeltap.templates"))) {
            for (TemplateFile file : files) {
                Path path = FOLDER.resolve(file.path());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.text());
            }
        }
        for (TemplateFile file : files) {
            assertThat(FOLDER.resolve(file.path())).content().as(file.path()).isEqualTo(file.text());
        }
        try (Stream<Path> found = Files.walk(FOLDER)) {
            List<String> paths = found.filter(Files::isRegularFile)
                    .map(path -> FOLDER.relativize(path).toString().replace('\\', '/'))
                    .toList();
            assertThat(paths)
                    .containsExactlyInAnyOrderElementsOf(
                            files.stream().map(TemplateFile::path).toList());
        }
    }

    @Test
    void aBlankBookLacksOnlyTheRequiredSettings() {
        WithProblems<LoadedBook> loaded = BookLoader.load("my-bar", blankBook());
        assertThat(loaded.problems())
                .filteredOn(problem -> problem.severity() == Problem.Severity.FATAL)
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SETTING_MISSING, ProblemKind.SETTING_MISSING);
        assertThat(loaded.problems())
                .filteredOn(problem -> problem.severity() != Problem.Severity.FATAL)
                .extracting(Problem::reason)
                .containsExactly("The sheet Drinks has no drink.");
        assertThat(loaded.value().files()).hasSize(11).allMatch(file -> file.headingRow() == 1);
    }

    private static List<Sheet> blankBook() {
        List<Sheet> sheets = new ArrayList<>();
        Templates.book()
                .forEach(sheet -> sheets.add(
                        MemorySheet.of("book/" + sheet.name().toLowerCase(Locale.ROOT) + ".csv", "", sheet.rows())));
        return sheets;
    }

    @Test
    void explanationsAreNoData() {
        List<Sheet> sheets = new ArrayList<>();
        Templates.book().forEach(sheet -> sheets.add(MemorySheet.of("book.xlsx", sheet.name(), sheet.rows())));
        TemplateSheet explanations = Templates.explanations();
        sheets.add(MemorySheet.of("book.xlsx", explanations.name(), explanations.rows()));
        assertThat(BookLoader.load("my-bar", sheets).problems())
                .extracting(Problem::kind)
                .doesNotContain(ProblemKind.SHEET_NOT_READ);
    }

    @Test
    void everyHeadingIsExplained() {
        assertThat(Templates.explanations().rows())
                .allSatisfy(row -> assertThat(row.get(5)).isNotBlank());
    }
}
