package clipwitness.report.paper;

import clipwitness.report.picture.SrgbProfile;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Says which colours the numbers of a document are: those of screens (ISO 19005-3, 6.2.3). Written without the library's class for it,
 * which loads the platform's colour management to look at the profile.
 */
final class OutputIntent {
    private OutputIntent() {}

    static void write(PDDocument document) throws IOException {
        COSDictionary intent = new COSDictionary();
        intent.setName(COSName.TYPE, "OutputIntent");
        intent.setName(COSName.S, "GTS_PDFA1");
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, SrgbProfile.NAME);
        intent.setString(COSName.INFO, SrgbProfile.NAME);
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile(document));
        COSArray intents = new COSArray();
        intents.add(intent);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.OUTPUT_INTENTS, intents);
    }

    private static COSStream profile(PDDocument document) throws IOException {
        COSStream profile = document.getDocument().createCOSStream();
        profile.setInt(COSName.N, 3);
        try (OutputStream bytes = profile.createOutputStream(COSName.FLATE_DECODE)) {
            bytes.write(SrgbProfile.bytes());
        }
        return profile;
    }
}
