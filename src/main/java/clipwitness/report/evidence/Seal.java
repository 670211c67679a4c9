package clipwitness.report.evidence;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureInterface;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;

/**
 * Signs a report by adding to its end (ISO 32000-1, 12.8.1); what was printed stays byte for byte. The signature is not seen on a page: its place
 * lies outside of the first. It carries no time, so that the same report gives the same bytes.
 */
public final class Seal {
    /** Room for the signature and a chain of certificates. */
    private static final int ROOM = 1 << 14;

    private static final PDRectangle OUTSIDE = new PDRectangle(-1, -1, 0, 0);

    private Seal() {}

    /** The report with the signature of a key. */
    public static byte[] on(byte[] pdf, SigningKey key) {
        return assembled(pdf, key.name(), content -> key.sign(content.readAllBytes()));
    }

    /** The report with a signature that somebody else makes. */
    static byte[] assembled(byte[] pdf, String name, SignatureInterface signer) {
        try (PDDocument document = Loader.loadPDF(pdf);
                SignatureOptions options = new SignatureOptions()) {
            document.setDocumentId(0L); // else the library makes the second half of the identity from the clock
            options.setPreferredSignatureSize(ROOM);
            document.addSignature(signature(name), signer, options);
            place(document, name);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a report that was just printed cannot be signed", e);
        }
    }

    private static PDSignature signature(String name) {
        PDSignature signature = new PDSignature();
        signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
        signature.setSubFilter(PDSignature.SUBFILTER_ADBE_PKCS7_DETACHED);
        signature.setName(name);
        return signature;
    }

    /** A field outside of the page needs no place in the reading order (ISO 14289-1, 7.18.1), and one without size no look (ISO 19005-3, 6.3.3). */
    private static void place(PDDocument document, String name) {
        PDPage page = document.getPage(0);
        COSDictionary pageDictionary = page.getCOSObject();
        pageDictionary.setItem(COSName.getPDFName("Tabs"), COSName.S);
        pageDictionary.setNeedToBeUpdated(true);
        List<PDSignatureField> fields = document.getSignatureFields();
        PDSignatureField field = fields.get(fields.size() - 1);
        field.setAlternateFieldName(name);
        field.getWidgets().get(0).setRectangle(OUTSIDE);
    }
}
