package clipwitness.report.paper;

import java.util.Locale;

/**
 * The metadata of a document as an XMP packet (ISO 16684-1), written by hand: it has no element that varies. It says that the document keeps
 * ISO 19005-3, level A, and ISO 14289-1; the schema of the second is described, as the first demands of schemas that it does not know.
 */
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
                    xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                    xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                   <pdfaid:part>3</pdfaid:part>
                   <pdfaid:conformance>A</pdfaid:conformance>
                   <pdfuaid:part>1</pdfuaid:part>
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
                  <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                    xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
                   <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                    <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                    <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                    <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                    <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                     <pdfaProperty:name>part</pdfaProperty:name>
                     <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                     <pdfaProperty:category>internal</pdfaProperty:category>
                     <pdfaProperty:description>part of ISO 14289 to which the document conforms</pdfaProperty:description>
                    </rdf:li></rdf:Seq></pdfaSchema:property>
                   </rdf:li></rdf:Bag></pdfaExtension:schemas>
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
