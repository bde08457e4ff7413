package heeltap.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only the XML kind of workbook has; the sheets are written by hand as other programs write them. */
class XlsxTest {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    @TempDir
    Path folder;

    private Opened sheet(String rows) {
        return sheet(rows, "", MAIN, RELATIONS);
    }

    /** A whole workbook around the XML of some rows. */
    private Opened sheet(String rows, String behind, String main, String relations) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put(
                "[Content_Types].xml",
                "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
                        + "<Default Extension='rels' ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
                        + "<Default Extension='xml' ContentType='application/xml'/>"
                        + "<Override PartName='/xl/workbook.xml' ContentType="
                        + "'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'/></Types>");
        String relationships = "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>";
        parts.put(
                "_rels/.rels",
                relationships + "<Relationship Id='r1' Type='" + relations
                        + "/officeDocument' Target='xl/workbook.xml'/></Relationships>");
        parts.put(
                "xl/_rels/workbook.xml.rels",
                relationships + "<Relationship Id='s1' Type='" + relations
                        + "/worksheet' Target='worksheets/sheet1.xml'/>" + "<Relationship Id='s2' Type='" + relations
                        + "/sharedStrings' Target='sharedStrings.xml'/><Relationship Id='s3' Type='" + relations
                        + "/chartsheet' Target='chartsheets/sheet1.xml'/></Relationships>");
        parts.put("xl/chartsheets/sheet1.xml", "<chartsheet xmlns='" + main + "'/>");
        parts.put(
                "xl/workbook.xml",
                "<x:workbook xmlns:x='" + main + "' xmlns:r='" + relations + "'><x:sheets>"
                        + "<x:sheet name='Chart' sheetId='2' r:id='s3'/><x:sheet name='S' sheetId='1' r:id='s1'/>"
                        + "</x:sheets></x:workbook>");
        parts.put(
                "xl/sharedStrings.xml",
                "<sst xmlns='" + main + "' count='2' uniqueCount='2'><si><r><t>Gin</t></r><r><t xml:space='preserve'>"
                        + " Fizz</t></r><rPh sb='0' eb='1'><t>PHON</t></rPh></si><si><t>a_x000D_b_x005F_x</t></si></sst>");
        parts.put(
                "xl/worksheets/sheet1.xml",
                "<worksheet xmlns='" + main + "'><sheetData>" + rows + "</sheetData>" + behind + "</worksheet>");
        return Opened.bytes(folder, "a.xlsx", zip(parts));
    }

    private static byte[] zip(Map<String, String> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(UTF_8));
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return bytes.toByteArray();
    }

    @Test
    void sharedAndInlineTexts() {
        Opened opened = sheet("<row r='2'><c r='B2' t='s'><v>0</v></c><c r='C2' t='s'><v>1</v></c>"
                + "<c r='D2' t='inlineStr'><is><r><t>In</t></r><r><t>line</t></r></is></c></row>");
        assertThat(opened.lines()).containsExactly("2||Gin Fizz|a\rb_x|Inline");
        assertThat(opened.sheets()).hasSize(1);
    }

    @Test
    void numbersAreReadFromTheirRawText() {
        Opened opened =
                sheet("<row r='1'><c r='A1'><v>0.30000000000000004</v></c><c r='B1'><v>4.4999999999999996</v></c>"
                        + "<c r='C1'><v>1.2E3</v></c><c r='D1' t='str'><v>0.30</v></c><c r='E1'><v>x</v></c></row>");
        assertThat(opened.lines()).containsExactly("1|0.3|4.5|1200|0.30|x");
        assertThat(opened.rows().get(0).cells().stream().map(Cell::number))
                .containsExactly(new BigDecimal("0.3"), new BigDecimal("4.5"), new BigDecimal("1200"), null, null);
    }

    @Test
    void cellsAndRowsWithoutReferencesFollowEachOther() {
        assertThat(sheet("<row><c><v>1</v></c><c/><c><v>2</v></c></row><row r='7'><c r='$AB$7'><v>3</v></c></row>"
                                + "<row><c><v>4</v></c></row>")
                        .lines())
                .containsExactly("1|1||2", "7" + "|".repeat(28) + "3", "8|4");
    }

    @Test
    void aReferenceThatLeadsNowhereIsAnErrorNotAnotherText() {
        assertThat(sheet("<row r='1'><c r='A1' t='s'><v>9</v></c><c r='B1' t='s'><v>x</v></c></row>")
                        .lines())
                .containsExactly("1|#REF!|#REF!");
    }

    @Test
    void aFormulaWithoutResultIsShownAndNamed() {
        Opened opened = sheet("<row r='3'><c r='A3'><f>SUM(A1:A2)</f><v></v></c><c r='B3'><f t='shared' si='0'/></c>"
                + "<c r='C3' t='str'><f>\"\"</f><v></v></c><c r='D3'><f>1+1</f><v>2</v></c>"
                + "<c r='E3' t='e'><f>X1</f><v>#REF!</v></c></row>");
        assertThat(opened.lines()).containsExactly("3|=SUM(A1:A2)|=(formula)||2|#REF!");
        assertThat(opened.sheet().facts().problems().stream()
                        .map(problem ->
                                problem.place().column() + problem.place().row() + " " + problem.raw()))
                .containsExactly("A3 =SUM(A1:A2)", "B3 =(formula)");
    }

    @Test
    void datesWrittenAsIsoTexts() {
        Cell cell = sheet("<row r='1'><c r='A1' t='d'><v>2026-10-05T18:00:00Z</v></c></row>")
                .rows()
                .get(0)
                .cells()
                .get(0);
        assertThat(cell.moment()).isEqualTo(LocalDateTime.of(2026, 10, 5, 18, 0));
        assertThat(cell.number()).isNull();
    }

    @Test
    void theStrictVariantIsReadToo() {
        Opened opened = sheet(
                "<row r='1'><c r='A1' t='s'><v>0</v></c></row>",
                "",
                "http://purl.oclc.org/ooxml/spreadsheetml/main",
                "http://purl.oclc.org/ooxml/officeDocument/relationships");
        assertThat(opened.lines()).containsExactly("1|Gin Fizz");
    }

    @Test
    void brokenXmlIsRefusedWhenTheFileIsOpened() {
        Opened opened = sheet("<row r='1'><c r='A1'><v>1</v></c></row><row>");
        assertThat(opened.sheets()).isEmpty();
        assertThat(opened.problems().get(0).kind()).isEqualTo(ProblemKind.FILE_UNREADABLE);
    }

    @Test
    void externalEntitiesAreRefused() {
        Opened opened = sheet("", "<!DOCTYPE x [<!ENTITY e SYSTEM 'file:///etc/hostname'>]>", MAIN, RELATIONS);
        assertThat(opened.sheets()).isEmpty();
    }

    /** The real sheet said 90,000 rows and held 24. */
    @Test
    void phantomRowsAreNoRows() {
        StringBuilder rows = new StringBuilder();
        for (int i = 1; i <= 90_000; i++) {
            rows.append("<row r='").append(i).append("' spans='1:12' s='1' customFormat='1'>");
            rows.append(i <= 24 ? "<c r='A" + i + "'><v>" + i + "</v></c>" : "").append("<c r='B' s='1'/></row>");
        }
        Opened opened = sheet(rows.toString());
        List<Row> read = opened.rows();
        assertThat(read).hasSize(24);
        assertThat(read.get(23).number()).isEqualTo(24);
    }

    /** 200,000 rows take far more than the rows' own memory if they are all kept. */
    @Test
    void aLongSheetIsStreamed() throws Exception {
        Path file = folder.resolve("long.xlsx");
        try (SXSSFWorkbook workbook = new SXSSFWorkbook(50);
                OutputStream out = Files.newOutputStream(file)) {
            var sheet = workbook.createSheet("S");
            for (int i = 0; i < 200_000; i++) {
                var row = sheet.createRow(i);
                row.createCell(0).setCellValue("Item " + i % 100);
                row.createCell(1).setCellValue(i);
                row.createCell(2).setCellValue(i * 0.01);
            }
            workbook.write(out);
        }
        Opened opened = Opened.file(folder, file);
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        long before = runtime.totalMemory() - runtime.freeMemory();
        long[] seen = new long[2];
        opened.sheet().read(row -> {
            if (++seen[0] == 199_999) {
                System.gc();
                seen[1] = runtime.totalMemory() - runtime.freeMemory();
            }
            return true;
        });
        assertThat(seen[0]).isEqualTo(200_000);
        assertThat(seen[1] - before).isLessThan(16 << 20);
    }
}
