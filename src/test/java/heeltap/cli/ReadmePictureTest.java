package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * README's picture is the sample's report: its first page beside the first plot of margin. {@code
 * -Dheeltap.golden.update=true} paints it anew.
 */
class ReadmePictureTest {
    private static final Path PICTURE = Path.of("src/site/report.png");
    private static final int DPI = 80;
    private static final int GAP = 12;

    @Test
    void showsTheReportAsItIsNow(@TempDir Path temp) throws IOException {
        assertThat(Run.of("review", "sample-input", "2026-10", "--out", temp.toString())
                        .code())
                .isZero();
        BufferedImage now = paint(temp.resolve("2026-10-review.pdf"));
        if (Boolean.getBoolean("heeltap.golden.update")) {
            Files.createDirectories(PICTURE.getParent());
            ImageIO.write(now, "png", PICTURE.toFile());
        }
        BufferedImage shown = ImageIO.read(PICTURE.toFile());
        assertThat(shown.getWidth()).isEqualTo(now.getWidth());
        assertThat(shown.getHeight()).isEqualTo(now.getHeight());
        // machines smooth letters differently; a changed page differs by far more
        assertThat(difference(shown, now)).isLessThan(0.01);
    }

    private static BufferedImage paint(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            BufferedImage first = renderer.renderImageWithDPI(0, DPI);
            BufferedImage plot = renderer.renderImageWithDPI(pageOfMarginPlot(document), DPI);
            int height = Math.max(first.getHeight(), plot.getHeight());
            BufferedImage both =
                    new BufferedImage(first.getWidth() + GAP + plot.getWidth(), height, BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = both.createGraphics();
            graphics.setColor(new Color(0xCC, 0xCC, 0xCC));
            graphics.fillRect(0, 0, both.getWidth(), height);
            graphics.drawImage(first, 0, 0, null);
            graphics.drawImage(plot, first.getWidth() + GAP, 0, null);
            graphics.dispose();
            return both;
        }
    }

    private static int pageOfMarginPlot(PDDocument document) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            if (stripper.getText(document).contains("Cocktails: margin against popularity")) {
                return page - 1;
            }
        }
        throw new AssertionError("the report has no plot of margin");
    }

    /** Mean difference of the pixels, 0 to 1. */
    private static double difference(BufferedImage a, BufferedImage b) {
        double sum = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                for (int shift = 0; shift <= 16; shift += 8) {
                    sum += Math.abs(((p >> shift) & 0xFF) - ((q >> shift) & 0xFF)) / 255.0;
                }
            }
        }
        return sum / 3 / a.getWidth() / a.getHeight();
    }
}
