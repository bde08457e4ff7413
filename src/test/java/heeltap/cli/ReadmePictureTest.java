package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
 * README's pictures are pages of the sample's report: the first, and the plots of cost and margin. {@code
 * -Dheeltap.golden.update=true} paints them anew.
 */
class ReadmePictureTest {
    private static final Path FOLDER = Path.of("src/site");
    private static final int DPI = 80;

    @Test
    void showTheReportAsItIsNow(@TempDir Path temp) throws IOException {
        assertThat(Run.of("review", "sample-input", "2026-10", "--out", temp.toString())
                        .code())
                .isZero();
        try (PDDocument document =
                Loader.loadPDF(temp.resolve("2026-10-review.pdf").toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            isAsNow("report.png", renderer.renderImageWithDPI(0, DPI));
            isAsNow("plots.png", renderer.renderImageWithDPI(pageOfMarginPlot(document), DPI));
        }
    }

    private static void isAsNow(String name, BufferedImage now) throws IOException {
        Path picture = FOLDER.resolve(name);
        if (Boolean.getBoolean("heeltap.golden.update")) {
            Files.createDirectories(FOLDER);
            ImageIO.write(now, "png", picture.toFile());
        }
        BufferedImage shown = ImageIO.read(picture.toFile());
        assertThat(shown.getWidth()).isEqualTo(now.getWidth());
        assertThat(shown.getHeight()).isEqualTo(now.getHeight());
        // machines smooth letters differently; a changed page differs by far more
        assertThat(difference(shown, now)).as(name).isLessThan(0.01);
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
