package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import heeltap.document.Document;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
    private static final Document DOCUMENT = SampleDocument.english();
    private static final Instant STAMP = ReportFiles.stampOf(DOCUMENT.month());

    @TempDir
    Path folder;

    @Test
    void writesAllThreeOutputs() throws IOException {
        ReportFiles.Written written = ReportFiles.write(DOCUMENT, STAMP, folder.resolve("out"));
        assertThat(written.pdf()).exists().hasFileName("2026-10-review.pdf");
        assertThat(written.workbook()).exists().hasFileName("2026-10-review.xlsx");
        assertThat(names(written.tables())).containsExactly("drinks.csv", "invoice_lines.csv", "set_aside.csv");
        assertThat(written.tables().resolve("set_aside.csv")).hasContent("file,row");
        assertThat(names(folder.resolve("out"))).containsExactly("2026-10-review.pdf", "2026-10-review.xlsx", "tables");
    }

    @Test
    void aFileInPlaceOfTheFolderIsAnError() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        assertThatThrownBy(() -> ReportFiles.write(DOCUMENT, STAMP, file)).isInstanceOf(IOException.class);
        assertThat(file).hasContent("mine");
    }

    private static List<String> names(Path of) throws IOException {
        try (Stream<Path> files = Files.list(of)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
