package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.Document;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PdfReportTest {
    private static final Document DOCUMENT = SampleDocument.english();
    private static byte[] bytes;
    private static PDDocument pdf;

    @BeforeAll
    static void write() throws IOException {
        bytes = PdfReport.write(DOCUMENT, ReportFiles.stampOf(DOCUMENT.month()));
        pdf = Loader.loadPDF(bytes);
    }

    @AfterAll
    static void close() throws IOException {
        pdf.close();
    }

    @Test
    void twiceTheSameBytes() {
        assertThat(PdfReport.write(SampleDocument.english(), ReportFiles.stampOf(DOCUMENT.month())))
                .isEqualTo(bytes);
    }

    @Test
    void saysWhatItIs() {
        assertThat(pdf.getDocumentInformation().getTitle())
                .isEqualTo("The Salt & Anchor, Hôtel de la Mer \u2013 Review of October 2026");
        assertThat(pdf.getDocumentInformation().getAuthor()).isEqualTo("The Salt & Anchor, Hôtel de la Mer");
        assertThat(pdf.getDocumentInformation().getCreationDate().toInstant()).hasToString("2026-11-01T00:00:00Z");
        assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
        assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        assertThat(pdf.getDocumentCatalog().getStructureTreeRoot().getKids()).isNotEmpty();
        assertThat(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                .isTrue();
    }

    @Test
    void readsInOrder() throws IOException {
        String first = text(1, 1);
        assertThat(first)
                .containsSubsequence(
                        "The Salt & Anchor, Hôtel de la Mer",
                        "Review of October 2026",
                        "Net sales",
                        "48,250.40",
                        "Cost of goods",
                        "Unexplained stock",
                        "\u2212€412.50",
                        "Findings",
                        "Kelp & Tonic sells well",
                        "\u2212€412.50",
                        "page 2",
                        "Harbour Sour could carry",
                        "To decide today",
                        "Caution",
                        "12 rows of the till export");
    }

    @Test
    void holdsEveryCellThatAViewShows() throws IOException {
        String all = text(1, pdf.getNumberOfPages()).replaceAll("\\s+", "");
        for (String drink : SampleDocument.DRINKS) {
            assertThat(all).contains(drink.replace(" ", ""));
        }
        assertThat(all).contains("Inventedproduct149", "Nothingtoshow.", "effectonmargin,EUR", "\u2212612.40");
    }

    @Test
    void repeatsTheHeadingsOfALongTable() throws IOException {
        int pages = 0;
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            String text = text(page, page);
            if (text.contains("Invented product")) {
                pages++;
                assertThat(text).contains("Product", "Goods");
            }
        }
        assertThat(pages).isGreaterThan(2);
    }

    @Test
    void everyPageCarriesBarMonthAndNumber() throws IOException {
        int pages = pdf.getNumberOfPages();
        for (int page = 1; page <= pages; page++) {
            assertThat(text(page, page))
                    .contains(page + " / " + pages, "Amounts in EUR", "October 2026", "The Salt & Anchor");
        }
    }

    @Test
    void hasBookmarksAndLinks() throws IOException {
        List<String> titles = new ArrayList<>();
        for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
            titles.add(item.getTitle());
            assertThat(item.findDestinationPage(pdf)).isNotNull();
        }
        assertThat(titles)
                .containsExactly(
                        "The month in short", "Cost, margin and popularity", "Drinks", "Invoice lines", "Set aside");
        int links = 0;
        for (PDAnnotation annotation : pdf.getPage(0).getAnnotations()) {
            links += annotation instanceof PDAnnotationLink ? 1 : 0;
        }
        assertThat(links).isEqualTo(4);
    }

    @Test
    void embedsEveryFontAsASubset() throws IOException {
        for (PDPage page : pdf.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).matches("HEELT[A-Z]\\+Liberation.*");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Faces.Face.class)
    void everyFaceHoldsTheLettersAndCurrencySignsOfEurope(Faces.Face face) {
        String text =
                "ÆØÅæøåßÉÑñčďłőřšžŽĐđĞğİıŞşŢţ ΑΒΓΔΩαβγδωάέήίόύώ АБВЖЩЮЯабвжщюяЄєІіЇїҐґЂђЋћ € £ ₴ ¥ ₤ ₪ ¢ zł Kč \u2212 \u2013 \u2026 ×÷";
        assertThat(new Faces().printable(face, text)).isEqualTo(text);
    }

    /** Currency signs in the Unicode block 20A0 that states use, and where each typeface must come from. */
    @ParameterizedTest
    @EnumSource(
            value = Faces.Face.class,
            names = {"PLAIN", "BOLD", "ITALIC", "SERIF"})
    void aSignThatTheFaceLacksIsLentByAnother(Faces.Face face) {
        Faces faces = new Faces();
        String signs = "₡₦₨₩₪₫€₭₮₱₲₴₵₸₹₺₽";
        List<Faces.Run> runs = faces.runs(face, "Σ 12" + signs + " за Ж");
        assertThat(runs.stream().map(Faces.Run::text).collect(Collectors.joining()))
                .isEqualTo("Σ 12" + signs + " за Ж");
        assertThat(runs)
                .hasSizeGreaterThan(2)
                .allSatisfy(run -> run.text()
                        .codePoints()
                        .forEach(letter -> assertThat(faces.base(run.face()).charExists(letter))
                                .as(run.text())
                                .isTrue()));
        assertThat(faces.width(face, "₽", 10)).isGreaterThan(4);
    }

    /** The manat, the lari and the som are younger than all bundled typefaces. */
    @Test
    void aSignThatNoFaceHasIsSetAsItsCodeAndAnotherLetterAsASquare() {
        assertThat(new Faces().runs(Faces.Face.PLAIN, "₼1,200.00 and 350,00\u00A0\u20C0"))
                .containsExactly(new Faces.Run(Faces.Face.PLAIN, "AZN\u00A01,200.00 and 350,00\u00A0KGS"));
        assertThat(new Faces().runs(Faces.Face.PLAIN, "\u0634 \uD83C\uDF78"))
                .containsExactly(new Faces.Run(Faces.Face.PLAIN, "\u25A1 \u25A1"));
    }

    @Test
    void lentSignsAreEmbeddedAndReadInTheirPlace() throws IOException {
        Document plain = SampleDocument.english();
        Document lira = new Document(
                "Λιμάνι и Якорь ₺",
                plain.month(),
                plain.language(),
                Currency.getInstance("TRY"),
                "₽ and ₺, ₹ too",
                plain.sections(),
                plain.sheets(),
                plain.tables());
        byte[] written = PdfReport.write(lira, ReportFiles.stampOf(lira.month()));
        assertThat(PdfReport.write(lira, ReportFiles.stampOf(lira.month()))).isEqualTo(written);
        try (PDDocument read = Loader.loadPDF(written)) {
            assertThat(new PDFTextStripper().getText(read)).contains("Λιμάνι и Якорь ₺", "₽ and ₺, ₹ too");
            for (COSName name : read.getPage(0).getResources().getFontNames()) {
                PDFont font = read.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).matches("HEELT[A-Z]\\+(Liberation|DejaVu).*");
            }
        }
    }

    @Test
    void everyPageLiesOnItsSide() {
        for (PDPage page : pdf.getPages()) {
            assertThat(page.getMediaBox().getWidth()).isEqualTo(842);
            assertThat(page.getMediaBox().getHeight()).isEqualTo(595);
        }
    }

    @Test
    void americaReadsLetter() throws IOException {
        Document american = SampleDocument.of(Locale.US, Currency.getInstance("USD"));
        try (PDDocument letter = Loader.loadPDF(PdfReport.write(american, ReportFiles.stampOf(american.month())))) {
            assertThat(letter.getPage(0).getMediaBox().getWidth()).isEqualTo(792);
        }
    }

    private static String text(int from, int to) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(from);
        stripper.setEndPage(to);
        return stripper.getText(pdf);
    }
}
