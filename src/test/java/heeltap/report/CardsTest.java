package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import heeltap.document.Block;
import heeltap.document.Card;
import heeltap.document.Card.Fact;
import heeltap.document.Card.Line;
import heeltap.document.Card.Measured;
import heeltap.document.Document;
import heeltap.document.Section;
import heeltap.document.WorkbookSheet;
import heeltap.quantity.Exact;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class CardsTest {
    private static final Instant STAMP = Instant.parse("2026-10-31T00:00:00Z");

    private static Card card(String title, int lines) {
        List<Line> all = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            all.add(new Line(
                    title + " line " + i,
                    i % 3 == 0 ? "note " + i : "",
                    List.of(Optional.of(new Measured(Exact.of("3.2"), 2, 2, "g")), Optional.empty())));
        }
        return new Card(
                title,
                "A line under the title",
                List.of("A batch", "November"),
                all,
                Optional.of(new Line(
                        "Makes", "", List.of(Optional.of(new Measured(Exact.of(1000), 0, 0, "ml")), Optional.empty()))),
                "Your batch",
                List.of(new Fact("Cost", "7.50"), new Fact("Allergens", "Nuts; Sulphites; " + "Milk; ".repeat(12))),
                List.of("Weigh.", "Strain."),
                List.of("Food acid: weigh it."));
    }

    private static Document document(List<Card> cards) {
        Block block = new Block.Cards(2, cards);
        return new Document(
                "The Test Bar",
                YearMonth.of(2026, 10),
                Locale.ENGLISH,
                Currency.getInstance("EUR"),
                "Review",
                List.of(
                        new Section("first", "First", false, List.of(new Block.Paragraph("Words."))),
                        new Section("cards", "Cards", true, List.of(block))),
                List.of(
                        new WorkbookSheet("Summary", List.of(new Block.Paragraph("Words."))),
                        new WorkbookSheet("Cards", List.of(block))),
                List.of());
    }

    /** A card too long for a page goes on over several, and none of its lines is lost; short ones share a page. */
    @Test
    void longCardsRunOnAndShortOnesShareAPage() throws IOException {
        List<Card> cards = List.of(card("Alpha", 3), card("Beta", 120), card("Gamma", 3), card("Delta", 3));
        PdfReader pdf = new PdfReader(PdfReport.write(document(cards), STAMP));
        StringBuilder all = new StringBuilder();
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            all.append(new PdfTextExtractor(pdf).getTextFromPage(page));
        }
        String text = all.toString().replaceAll("\\s+", "");
        for (int i = 0; i < 120; i++) {
            assertThat(text).contains("Betaline" + i);
        }
        assertThat(text).contains("3.20", "1,000", "Makes", "Foodacid:weighit.");
        PdfReader few = new PdfReader(
                PdfReport.write(document(List.of(card("A", 3), card("B", 3), card("C", 3), card("D", 3))), STAMP));
        assertThat(few.getNumberOfPages()).isEqualTo(1);
    }

    /** Half of the usual batch typed in, half of each amount comes out; the number shows as a scale shows it. */
    @Test
    void amountsFollowTheBatchThatIsTypedIn() throws IOException {
        byte[] bytes = WorkbookReport.write(document(List.of(card("Alpha", 2))), STAMP);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            XSSFSheet sheet = workbook.getSheet("Cards");
            int makes = 0;
            while (sheet.getRow(makes) == null
                    || sheet.getRow(makes).getCell(0) == null
                    || !sheet.getRow(makes).getCell(0).getStringCellValue().equals("Makes")) {
                makes++;
            }
            assertThat(sheet.getRow(makes).getCell(3).getNumericCellValue()).isEqualTo(1000);
            assertThat(sheet.getRow(makes + 1).getCell(3).getNumericCellValue()).isEqualTo(3.2);
            sheet.getRow(makes).getCell(3).setCellValue(500);
            XSSFFormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            assertThat(evaluator.evaluate(sheet.getRow(makes + 1).getCell(3)).getNumberValue())
                    .isCloseTo(1.6, within(1e-12));
            assertThat(sheet.getRow(makes + 1).getCell(1).getCellStyle().getDataFormatString())
                    .isEqualTo("#,##0.00\" g\"");
            assertThat(sheet.getDataValidations()).hasSize(1);
        }
    }
}
