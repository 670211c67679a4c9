package clipwitness.report.paper;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** Writes what a document says of itself, twice as PDF wants it: information dictionary and XMP packet (ISO 16684-1). */
final class Metadata {
    private static final int IDENTITY_BYTES = 16;

    private Metadata() {}

    /** The date of a document at midnight, universal time. */
    static Calendar date(DocumentInfo info) {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.setTimeInMillis(
                info.date().atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return date;
    }

    static void write(PDDocument document, DocumentInfo info) throws IOException {
        PDDocumentInformation dictionary = new PDDocumentInformation();
        dictionary.setTitle(info.title());
        dictionary.setAuthor(info.author());
        dictionary.setSubject(info.subject());
        dictionary.setCreator(info.software());
        dictionary.setProducer(info.software());
        dictionary.setCreationDate(date(info));
        dictionary.setModificationDate(date(info));
        document.setDocumentInformation(dictionary);
        PDMetadata packet = new PDMetadata(document);
        packet.importXMPMetadata(XmpPacket.of(info).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(packet);
        identify(document, info.digest());
    }

    private static void identify(PDDocument document, String digest) {
        byte[] identity = new byte[IDENTITY_BYTES];
        for (int i = 0; i < identity.length; i++) {
            identity[i] = (byte) Integer.parseInt(digest.substring(2 * i, 2 * i + 2), 16);
        }
        COSArray pair = new COSArray();
        pair.add(new COSString(identity));
        pair.add(new COSString(identity));
        document.getDocument().getTrailer().setItem(COSName.ID, pair);
    }
}
