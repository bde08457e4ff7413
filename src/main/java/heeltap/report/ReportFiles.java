package heeltap.report;

import heeltap.document.Document;
import heeltap.document.Table;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;

/** Writes a document's three outputs: PDF, workbook and plain tables. */
public final class ReportFiles {
    /**
     * Where the outputs are.
     *
     * @param tables the folder of the CSV tables
     */
    public record Written(Path pdf, Path workbook, Path tables) {}

    private ReportFiles() {}

    /** The date in the reports' metadata unless one is given: the end of the month, in UTC. */
    public static Instant stampOf(YearMonth month) {
        return month.plusMonths(1).atDay(1).atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    /**
     * Writes {@code YYYY-MM-review.pdf}, {@code YYYY-MM-review.xlsx} and {@code tables/*.csv}, all or nothing: earlier
     * reports in the folder stay as they were when anything fails, and no table of an earlier run remains. The same
     * document and stamp give the same bytes.
     *
     * @param stamp date in the metadata
     * @param folder made if it is not there
     * @throws IOException if the reports cannot be written there
     */
    public static Written write(Document document, Instant stamp, Path folder) throws IOException {
        String base = document.month() + "-review";
        byte[] pdf = PdfReport.write(document, stamp);
        byte[] workbook = WorkbookReport.write(document, stamp);
        Staging.replace(folder, List.of(base + ".pdf", base + ".xlsx", "tables"), stage -> {
            Files.write(stage.resolve(base + ".pdf"), pdf);
            Files.write(stage.resolve(base + ".xlsx"), workbook);
            Path tables = Files.createDirectory(stage.resolve("tables"));
            for (Table table : document.tables()) {
                CsvFiles.write(table, document.currency(), tables.resolve(table.name() + ".csv"));
            }
        });
        return new Written(folder.resolve(base + ".pdf"), folder.resolve(base + ".xlsx"), folder.resolve("tables"));
    }
}
