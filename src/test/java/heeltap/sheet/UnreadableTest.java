package heeltap.sheet;

import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that cannot be understood is refused as a whole, with the reason and what would make it readable. */
class UnreadableTest {
    @TempDir
    Path folder;

    private void refused(byte[] content, String reason, String remedy) {
        Opened opened = Opened.bytes(folder, "sales.xls", content);
        assertThat(opened.sheets()).isEmpty();
        assertThat(opened.problems()).hasSize(1);
        Problem problem = opened.problems().get(0);
        assertThat(problem.kind()).isEqualTo(ProblemKind.FILE_UNREADABLE);
        assertThat(problem.severity()).isEqualTo(Problem.Severity.FAULT);
        assertThat(problem.place().toString()).isEqualTo("sales.xls");
        assertThat(problem.reason()).contains(reason).endsWith(".");
        assertThat(problem.remedy()).contains(remedy).endsWith(".");
    }

    @Test
    void anEmptyFile() {
        refused(new byte[0], "empty", "Export it again");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", " \r\n\t\r\n", "\ufeff", "\ufeff\n"})
    void aFileOfWhiteSpace(String content) {
        refused(content.getBytes(UTF_8), "", "Export it again");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<html><body><table><tr><td>Gin</td></tr></table>", "\n<!DOCTYPE html>\n<html>", "\ufeff<TABLE>"
            })
    void aWebPageSavedAsWorkbook(String content) {
        refused(content.getBytes(UTF_8), "web page", "save it as .xlsx");
        refused(content.getBytes(UTF_16LE), "web page", "save it as .xlsx");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "<?xml version='1.0'?><Workbook xmlns='urn:schemas-microsoft-com:office:spreadsheet'/> # XML format of 2003",
                "<?xml version='1.0'?><a/> # XML document",
                "{\\rtf1\\ansi # word processor",
                "%PDF-1.7 # PDF document",
            })
    void documentsOfOtherKinds(String content, String reason) {
        refused(content.getBytes(UTF_8), reason, ".");
    }

    @Test
    void binaryRubbish() {
        byte[] rubbish = new byte[5000];
        for (int seed = 1; seed <= 20; seed++) {
            new Random(seed).nextBytes(rubbish);
            refused(rubbish, "no text table and no workbook", "Export it again");
        }
        refused(new byte[5000], "no text table and no workbook", "Export it again");
    }

    @Test
    void aLineWithoutEnd() {
        refused("a,b".repeat(400_000).getBytes(UTF_8), "a million characters", "Export it again");
    }

    @Test
    void aZipArchiveThatIsNoWorkbook() throws Exception {
        refused(zip("sales.csv"), "no Excel workbook", "Unpack it");
        refused(zip("[Content_Types].xml", "word/document.xml"), "no Excel workbook", "save");
        refused(zip("[Content_Types].xml", "xl/workbook.bin"), "binary kind", "Save it as .xlsx");
    }

    private static byte[] zip(String... names) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (String name : names) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write("Item,Qty\n".getBytes(UTF_8));
            }
        }
        return bytes.toByteArray();
    }

    @Test
    void aTruncatedWorkbook() throws Exception {
        byte[] xlsx = workbook(new XSSFWorkbook());
        for (int length = 10; length < xlsx.length; length += 97) {
            refused(Arrays.copyOf(xlsx, length), "damaged or cut off", "again");
        }
    }

    @Test
    void aTruncatedLegacyWorkbook() throws Exception {
        byte[] xls = workbook(new HSSFWorkbook());
        for (int length = 10; length < 1024; length += 97) {
            refused(Arrays.copyOf(xls, length), "damaged or cut off", "again");
        }
    }

    /** Whatever byte is damaged, the file is read in full, or refused; no other exception leaves. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aDamagedWorkbookIsReadInFullOrRefused(boolean xml) throws Exception {
        byte[] good = workbook(xml ? new XSSFWorkbook() : new HSSFWorkbook());
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            byte[] bad = good.clone();
            bad[8 + random.nextInt(bad.length - 8)] ^= (byte) (1 + random.nextInt(255));
            Opened opened = Opened.bytes(folder, "sales.xls", bad);
            if (opened.problems().isEmpty()) {
                opened.sheets().forEach(Opened::rows);
            } else {
                assertThat(opened.problems().get(0).kind()).isEqualTo(ProblemKind.FILE_UNREADABLE);
            }
        }
    }

    private static byte[] workbook(Workbook workbook) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (workbook) {
            for (int i = 0; i < 40; i++) {
                var row = workbook.getNumberOfSheets() == 0
                        ? workbook.createSheet("Sales").createRow(0)
                        : workbook.getSheetAt(0).createRow(i);
                row.createCell(0).setCellValue("Item " + i);
                row.createCell(1).setCellValue(i * 1.25);
            }
            workbook.write(bytes);
        }
        return bytes.toByteArray();
    }

    @Test
    void aWorkbookUnderAPassword() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("secret");
            try (OutputStream out = encryptor.getDataStream(files)) {
                out.write(workbook(new XSSFWorkbook()));
            }
            files.writeFilesystem(bytes);
        }
        refused(bytes.toByteArray(), "password", "without a password");
    }

    @Test
    void aLegacyWorkbookUnderAPassword() throws Exception {
        Biff8EncryptionKey.setCurrentUserPassword("secret");
        byte[] content;
        try {
            content = workbook(new HSSFWorkbook());
        } finally {
            Biff8EncryptionKey.setCurrentUserPassword(null);
        }
        refused(content, "password", "without a password");
    }

    @Test
    void aFileThatIsNotThere() {
        Opened opened = Opened.file(folder, folder.resolve("gone.csv"));
        assertThat(opened.problems().get(0).reason()).contains("could not be opened");
    }

    @Test
    void theNameIsToldFromTheRootWithSlashes() throws Exception {
        Path month = Files.createDirectories(folder.resolve("2026-10"));
        Files.write(month.resolve("sales.csv"), new byte[0]);
        Opened opened = Opened.file(folder, month.resolve("sales.csv"));
        assertThat(opened.problems().get(0).place().file()).isEqualTo("2026-10/sales.csv");
    }

    @Test
    void filesAreListedByNameWithoutFolders() throws Exception {
        for (String name : new String[] {"b.csv", "a.csv", "B.csv", "ä.csv", "i.csv", "I.csv"}) {
            Files.writeString(folder.resolve(name), "x");
        }
        Files.createDirectory(folder.resolve("sub"));
        assertThat(SheetFiles.list(folder).stream()
                        .map(path -> folder.relativize(path).toString()))
                .containsExactly("B.csv", "I.csv", "a.csv", "b.csv", "i.csv", "ä.csv");
    }
}
