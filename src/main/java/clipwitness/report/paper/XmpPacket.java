package clipwitness.report.paper;

import java.util.Locale;

/** The metadata of a document as an XMP packet (ISO 16684-1), written by hand: it has no element that varies. */
final class XmpPacket {
    private XmpPacket() {}

    static String of(DocumentInfo info) {
        return String.format(
                Locale.ROOT,
                """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                 <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                  <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                    xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
                   <dc:format>application/pdf</dc:format>
                   <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
                   <dc:creator><rdf:Seq><rdf:li>%2$s</rdf:li></rdf:Seq></dc:creator>
                   <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%3$s</rdf:li></rdf:Alt></dc:description>
                   <dc:language><rdf:Bag><rdf:li>%4$s</rdf:li></rdf:Bag></dc:language>
                   <xmp:CreateDate>%5$sT00:00:00Z</xmp:CreateDate>
                   <xmp:ModifyDate>%5$sT00:00:00Z</xmp:ModifyDate>
                   <xmp:CreatorTool>%6$s</xmp:CreatorTool>
                   <pdf:Producer>%6$s</pdf:Producer>
                  </rdf:Description>
                 </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="w"?>
                """,
                xml(info.title()),
                xml(info.author()),
                xml(info.subject()),
                xml(info.language()),
                info.date(),
                xml(info.software()));
    }

    private static String xml(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
