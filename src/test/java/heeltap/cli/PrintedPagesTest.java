package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample's pages in every language: no text is cut, lies on another, or heads nothing. */
class PrintedPagesTest {
    /** Text may touch the margins of {@code PageShape} by so much. */
    private static final double HAIR = 0.6;

    private static final double SIDE = 50;
    private static final double FOOT = 46;
    /** Headings inside a section are set in this size and bold, nothing else is. */
    private static final float HEADING = 10.5f;

    private static final float SECTION = 18;

    /** Letters that were shown one after the other on one line. */
    private record Line(int page, String text, String font, float size, Rectangle2D box) {}

    @TempDir
    private Path temp;

    @ParameterizedTest
    @ValueSource(strings = {"en-US", "de", "es", "fr", "it"})
    void everyPageIsWhole(String language) throws IOException {
        Path bar = CommandsTest.copy(Path.of("sample-input"), temp.resolve("bar"));
        Path settings = bar.resolve("book/settings.csv");
        Files.writeString(settings, Files.readString(settings).replace("language,en", "language," + language));
        Path out = temp.resolve("out");
        assertThat(Run.of("review", bar.toString(), "2026-10", "--out", out.toString(), "--quiet")
                        .code())
                .isZero();
        try (PDDocument pdf = Loader.loadPDF(out.resolve("2026-10-review.pdf").toFile())) {
            PDRectangle paper = pdf.getPage(0).getMediaBox();
            List<List<Line>> pages = new ArrayList<>();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                pages.add(lines(pdf, page));
            }
            assertThat(pages.stream().mapToInt(List::size).sum()).isGreaterThan(2_000);
            for (List<Line> lines : pages) {
                insideTheMargins(lines, paper);
                nothingOnAnother(lines);
                noHeadingAtTheFoot(lines, paper);
            }
            theFirstPageIsOnePage(pdf, pages);
        }
    }

    /** Their plots have a page's width, and the first still stands under the section's heading. */
    @Test
    void thePlotsOfALongMenuStandUnderTheirHeadings() throws IOException {
        List<String> drinks = new ArrayList<>(List.of("Drink|Price"));
        List<String> specs = new ArrayList<>(List.of("Item|Ingredient|Amount|Unit"));
        List<String> sales = new ArrayList<>(List.of("Date|Item|Quantity|Net"));
        for (int i = 0; i < 70; i++) {
            String name = "Pilot boat " + (char) ('A' + i % 26) + i;
            int sold = 10 + i * 37 % 60;
            drinks.add(name + "|" + (9 + i % 5));
            specs.add(name + "|Gin|" + (30 + i * 13 % 41) + "|ml");
            sales.add("2026-10-05|" + name + "|" + sold + "|" + sold * (9 + i % 5));
        }
        Path bar = new WrittenBar()
                .file("book/settings.csv", "Setting|Value", "currency|EUR", "menu prices include tax|no")
                .file("book/ingredients.csv", "Ingredient|Measure|List price|List pack", "Gin|ml|14|70cl")
                .file("book/drinks.csv", drinks.toArray(String[]::new))
                .file("book/specs.csv", specs.toArray(String[]::new))
                .file("2026-10/sales.csv", sales.toArray(String[]::new))
                .write(temp.resolve("long"));
        Path out = temp.resolve("out");
        assertThat(Run.of("review", bar.toString(), "--out", out.toString(), "--quiet")
                        .code())
                .isZero();
        try (PDDocument pdf = Loader.loadPDF(out.resolve("2026-10-review.pdf").toFile())) {
            for (int page = 2; page <= 3; page++) {
                List<Line> lines = lines(pdf, page);
                assertThat(lines)
                        .filteredOn(line -> line.text().contains("Pilot boat"))
                        .hasSize(70);
                nothingOnAnother(lines);
                insideTheMargins(lines, pdf.getPage(0).getMediaBox());
            }
        }
    }

    private static void insideTheMargins(List<Line> lines, PDRectangle paper) {
        for (Line line : lines) {
            assertThat(line.box().getMinX()).as(line.toString()).isGreaterThanOrEqualTo(SIDE - HAIR);
            assertThat(line.box().getMaxX()).as(line.toString()).isLessThanOrEqualTo(paper.getWidth() - SIDE + HAIR);
            assertThat(line.box().getMaxY()).as(line.toString()).isLessThanOrEqualTo(paper.getHeight() - FOOT / 2);
        }
    }

    private static void nothingOnAnother(List<Line> lines) {
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                Rectangle2D common =
                        lines.get(i).box().createIntersection(lines.get(j).box());
                assertThat(Math.min(common.getWidth(), common.getHeight()))
                        .as("%s on %s", lines.get(i), lines.get(j))
                        .isLessThanOrEqualTo(HAIR);
            }
        }
    }

    private static void noHeadingAtTheFoot(List<Line> lines, PDRectangle paper) {
        double foot = paper.getHeight() - FOOT;
        for (Line line : lines) {
            boolean heading = (line.size() == HEADING && line.font().endsWith("Bold")) || line.size() == SECTION;
            if (heading) {
                assertThat(lines)
                        .as("under " + line)
                        .anyMatch(other -> other.box().getMinY() > line.box().getMaxY()
                                && other.box().getMaxY() < foot + HAIR
                                && other.box().getMinX() < line.box().getMaxX()
                                && other.box().getMaxX() > line.box().getMinX());
            }
        }
    }

    /** The second section begins on the second page, whatever the first says. */
    private static void theFirstPageIsOnePage(PDDocument pdf, List<List<Line>> pages) throws IOException {
        List<PDOutlineItem> parts = new ArrayList<>();
        pdf.getDocumentCatalog().getDocumentOutline().children().forEach(parts::add);
        String second = parts.get(1).getTitle();
        assertThat(pages.get(0)).noneMatch(line -> line.text().equals(second));
        assertThat(pages.get(1))
                .anyMatch(line ->
                        line.size() == SECTION && second.startsWith(line.text().strip()));
    }

    private static List<Line> lines(PDDocument pdf, int page) throws IOException {
        Collector collector = new Collector(page);
        collector.setStartPage(page);
        collector.setEndPage(page);
        collector.getText(pdf);
        collector.end();
        return collector.lines;
    }

    private static final class Collector extends PDFTextStripper {
        private final int page;
        private final List<Line> lines = new ArrayList<>();
        private final List<TextPosition> open = new ArrayList<>();

        private Collector(int page) {
            this.page = page;
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            if (letter.getDir() != 0) {
                return;
            }
            TextPosition last = open.isEmpty() ? null : open.get(open.size() - 1);
            if (last != null && !follows(last, letter)) {
                end();
            }
            open.add(letter);
        }

        private static boolean follows(TextPosition last, TextPosition letter) {
            float gap = letter.getX() - last.getX() - last.getWidth();
            return last.getY() == letter.getY()
                    && Math.abs(gap) < 0.3
                    && last.getFontSizeInPt() == letter.getFontSizeInPt();
        }

        private void end() {
            if (open.isEmpty()) {
                return;
            }
            TextPosition first = open.get(0);
            TextPosition last = open.get(open.size() - 1);
            StringBuilder text = new StringBuilder();
            open.forEach(letter -> text.append(letter.getUnicode()));
            double high = first.getFontSizeInPt() * 0.62;
            lines.add(new Line(
                    page,
                    text.toString(),
                    first.getFont().getName(),
                    first.getFontSizeInPt(),
                    new Rectangle2D.Double(
                            first.getX(), first.getY() - high, last.getX() + last.getWidth() - first.getX(), high)));
            open.clear();
        }
    }
}
