package heeltap.report;

import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.Map;
import java.util.function.Consumer;

/** One page to draw on; distances in points from its upper left corner. */
final class Canvas {
    private final PdfWriter writer;
    private final PdfContentByte content;
    private final Faces faces;
    private final float pageHeight;
    private final Map<String, Integer> pageOfSection;

    Canvas(PdfWriter writer, Faces faces, float pageHeight, Map<String, Integer> pageOfSection) {
        this.writer = writer;
        this.content = writer.getDirectContent();
        this.faces = faces;
        this.pageHeight = pageHeight;
        this.pageOfSection = pageOfSection;
    }

    /** Number of the page where a section begins; 0 where there is no such section. */
    int pageOf(String section) {
        return pageOfSection.getOrDefault(section, 0);
    }

    /** Text as content of the structure. */
    void text(Tag tag, Ink ink, float x, float baseline, String text) {
        content.beginMarkedContentSequence(tag.element(writer.getStructureTreeRoot()));
        show(ink, x, baseline, text);
        content.endMarkedContentSequence();
    }

    void textRight(Tag tag, Ink ink, float right, float baseline, String text) {
        text(tag, ink, right - ink.width(faces, text), baseline, text);
    }

    /** Text outside the structure: running heads, repeated headings, ornaments. */
    void ornament(Ink ink, float x, float baseline, String text) {
        content.beginMarkedContentSequence(new PdfName("Artifact"));
        show(ink, x, baseline, text);
        content.endMarkedContentSequence();
    }

    void ornamentRight(Ink ink, float right, float baseline, String text) {
        ornament(ink, right - ink.width(faces, text), baseline, text);
    }

    private void show(Ink ink, float x, float baseline, String text) {
        content.beginText();
        content.setColorFill(ink.color());
        content.setTextMatrix(x, pageHeight - baseline);
        for (Faces.Run run : faces.runs(ink.face(), text)) {
            content.setFontAndSize(faces.base(run.face()), ink.size());
            content.showText(run.text());
        }
        content.endText();
    }

    void rule(float x1, float x2, float y, float thickness, Color color) {
        box(x1, y - thickness / 2, x2 - x1, thickness, color);
    }

    void box(float x, float top, float width, float height, Color color) {
        content.beginMarkedContentSequence(new PdfName("Artifact"));
        content.setColorFill(color);
        content.rectangle(x, pageHeight - top - height, width, height);
        content.fill();
        content.endMarkedContentSequence();
    }

    void drawing(Tag tag, float x, float top, float width, float height, Consumer<Graphics2D> drawing) {
        PdfTemplate template = content.createTemplate(width, height);
        Graphics2D graphics = template.createGraphics(width, height, faces);
        drawing.accept(graphics);
        graphics.dispose();
        content.beginMarkedContentSequence(tag.element(writer.getStructureTreeRoot()));
        content.addTemplate(template, x, pageHeight - top - height);
        content.endMarkedContentSequence();
    }

    /** Where links and bookmarks to the section lead. */
    void anchor(String section, String title, float top) {
        content.localDestination(section, new PdfDestination(PdfDestination.XYZ, 0, pageHeight - top, 0));
        PdfOutline outline = new PdfOutline(content.getRootOutline(), PdfAction.gotoLocalPage(section, false), title);
        outline.setOpen(false);
    }

    void link(String section, float x, float top, float width, float height) {
        content.localGoto(section, x, pageHeight - top - height, x + width, pageHeight - top);
    }
}
