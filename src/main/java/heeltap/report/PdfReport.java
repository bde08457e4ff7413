package heeltap.report;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import heeltap.document.Document;
import heeltap.document.Section;
import heeltap.report.Faces.Face;
import heeltap.report.PageFlow.Page;
import heeltap.report.PageFlow.Placed;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A document as PDF: laid out in full first, so that page numbers are known, then drawn. */
final class PdfReport {
    private final Document document;
    private final Instant stamp;
    private final Faces faces = new Faces();
    private final Printing printing;
    private final PageShape shape;

    private PdfReport(Document document, Instant stamp) {
        this.document = document;
        this.stamp = stamp;
        this.printing = new Printing(document.language(), document.currency());
        this.shape = PageShape.of(document.language());
    }

    /** The same bytes for the same document and stamp. */
    static byte[] write(Document document, Instant stamp) {
        return new PdfReport(document, stamp).write();
    }

    private byte[] write() {
        Tag root = Tag.root();
        Map<String, Integer> pageOfSection = new LinkedHashMap<>();
        List<Page> pages = layOut(root, pageOfSection);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        com.lowagie.text.Document pdf = new com.lowagie.text.Document(size(), 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(pdf, bytes);
        writer.setPdfVersion(PdfWriter.VERSION_1_7);
        writer.setTagged();
        describe(writer);
        pdf.open();
        writer.getInfo().put(PdfName.PRODUCER, text("Heeltap"));
        for (int i = 0; i < pages.size(); i++) {
            if (i > 0) {
                pdf.newPage();
            }
            writer.setPageEmpty(false);
            draw(pages.get(i), i + 1, pages.size(), new Canvas(writer, faces, shape.height(), pageOfSection));
        }
        pdf.close();
        return SubsetNames.fixed(bytes.toByteArray());
    }

    private List<Page> layOut(Tag root, Map<String, Integer> pageOfSection) {
        PageFlow flow = new PageFlow(shape);
        BlockLayout layout = new BlockLayout(faces, printing, shape, shape.contentWidth());
        List<Section> sections = document.sections();
        Slab masthead = masthead(root.child("H1"), sections.isEmpty() ? null : sections.get(0));
        flow.add(List.of(masthead));
        float room = shape.contentHeight() + PageShape.TOP - PageShape.FIRST_TOP - masthead.height();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (i > 0) {
                flow.begin(section.newPage());
            }
            List<Piece> pieces = i == 0 ? layout.first(section, room, root) : layout.section(section, root);
            pageOfSection.put(section.id(), flow.add(pieces));
        }
        return flow.pages();
    }

    private Slab masthead(Tag tag, @Nullable Section first) {
        Ink bar = new Ink(Face.BOLD, 10, Look.ACCENT);
        Ink title = new Ink(Face.SERIF, Look.TITLE, Look.INK);
        List<String> bars = bar.wrap(faces, document.bar(), shape.contentWidth());
        List<String> titles = title.wrap(faces, document.title(), shape.contentWidth());
        float titleTop = bars.size() * bar.leading() + 2;
        float height = titleTop + titles.size() * title.leading() + 2;
        return Slab.of(0, height, (canvas, x, top) -> {
                    if (first != null) {
                        canvas.anchor(first.id(), first.title(), top);
                    }
                    TextSlabs.lines(canvas, tag, bar, x, top, bars);
                    TextSlabs.lines(canvas, tag, title, x, top + titleTop, titles);
                })
                .keptWithNext();
    }

    private void draw(Page page, int number, int of, Canvas canvas) {
        if (number > 1) {
            canvas.ornament(Ink.SMALL, PageShape.SIDE, 36, document.bar());
            canvas.ornamentRight(Ink.SMALL, shape.right(), 36, printing.month(document.month()));
            canvas.rule(PageShape.SIDE, shape.right(), 43, 0.4f, Look.HAIRLINE);
        }
        for (Placed placed : page.placed()) {
            placed.slab().painter().paint(canvas, PageShape.SIDE + placed.left(), placed.top());
        }
        float foot = shape.height() - 28;
        String amounts = printing.words().get("amounts", document.currency().getCurrencyCode());
        canvas.ornament(Ink.SMALL, PageShape.SIDE, foot, amounts);
        canvas.ornamentRight(Ink.SMALL, shape.right(), foot, number + " / " + of);
    }

    private void describe(PdfWriter writer) {
        String language = document.language().toLanguageTag();
        String title = document.bar() + " \u2013 " + document.title();
        PdfDate date = new PdfDate(GregorianCalendar.from(stamp.atZone(ZoneOffset.UTC)));
        PdfDictionary info = writer.getInfo();
        info.put(PdfName.TITLE, text(title));
        info.put(PdfName.AUTHOR, text(document.bar()));
        info.put(PdfName.SUBJECT, text(document.title()));
        info.put(PdfName.CREATOR, text("Heeltap"));
        info.put(PdfName.CREATIONDATE, date);
        info.put(PdfName.MODDATE, date);
        byte[] id = FileId.of(title + stamp);
        info.put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
        writer.getExtraCatalog().put(PdfName.LANG, text(language));
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle | PdfWriter.PageModeUseOutlines);
        writer.setXmpMetadata(Xmp.packet(title, document.bar(), document.title(), language, stamp)
                .getBytes(StandardCharsets.UTF_8));
    }

    private static PdfString text(String text) {
        return new PdfString(text, PdfObject.TEXT_UNICODE);
    }

    private Rectangle size() {
        return new Rectangle(shape.width(), shape.height());
    }
}
