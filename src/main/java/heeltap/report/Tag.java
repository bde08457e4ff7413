package heeltap.report;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfStructureTreeRoot;
import org.jspecify.annotations.Nullable;

/**
 * An element of the PDF's structure, for readers that speak the page. It enters the tree when first drawn, so that the
 * tree is in reading order; only elements without children hold content.
 */
final class Tag {
    private final String role;
    private final @Nullable Tag parent;
    private final String alternative;
    private @Nullable PdfStructureElement element;

    private Tag(String role, @Nullable Tag parent, String alternative) {
        this.role = role;
        this.parent = parent;
        this.alternative = alternative;
    }

    static Tag root() {
        return new Tag("Document", null, "");
    }

    Tag child(String childRole) {
        return new Tag(childRole, this, "");
    }

    /** @param words what a picture shows, for those who do not see it */
    Tag picture(String words) {
        return new Tag("Figure", this, words);
    }

    PdfStructureElement element(PdfStructureTreeRoot tree) {
        PdfStructureElement made = element;
        if (made == null) {
            PdfName name = new PdfName(role);
            made = parent == null
                    ? new PdfStructureElement(tree, name)
                    : new PdfStructureElement(parent.element(tree), name);
            if (!alternative.isEmpty()) {
                made.put(PdfName.ALT, new PdfString(alternative, com.lowagie.text.pdf.PdfObject.TEXT_UNICODE));
            }
            if ("TH".equals(role)) {
                made.put(PdfName.A, scope());
            }
            element = made;
        }
        return made;
    }

    private static com.lowagie.text.pdf.PdfDictionary scope() {
        com.lowagie.text.pdf.PdfDictionary attributes = new com.lowagie.text.pdf.PdfDictionary();
        attributes.put(PdfName.O, new PdfName("Table"));
        attributes.put(new PdfName("Scope"), new PdfName("Column"));
        return attributes;
    }
}
