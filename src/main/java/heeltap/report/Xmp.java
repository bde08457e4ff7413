package heeltap.report;

import java.time.Instant;
import org.apache.commons.text.StringEscapeUtils;

/** The PDF's description as an XMP packet. */
final class Xmp {
    private Xmp() {}

    static String packet(String title, String creator, String subject, String language, Instant stamp) {
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" \
                xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>
                <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:description>
                <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
                <xmp:CreateDate>%5$s</xmp:CreateDate><xmp:ModifyDate>%5$s</xmp:ModifyDate>
                <xmp:CreatorTool>Heeltap</xmp:CreatorTool><pdf:Producer>Heeltap</pdf:Producer>
                </rdf:Description></rdf:RDF></x:xmpmeta>
                <?xpacket end="r"?>
                """.formatted(escape(title), escape(creator), escape(subject), escape(language), stamp);
    }

    private static String escape(String text) {
        return StringEscapeUtils.escapeXml10(text);
    }
}
