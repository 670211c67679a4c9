package clipwitness.report.paper;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Distinguishes the PDFs of this program from others: by the producer that their metadata name, which is never compressed. */
public final class PdfMark {
    private static final String START = "%PDF-";
    private static final String PRODUCER = "<pdf:Producer>clipwitness ";
    private static final int BLOCK = 1 << 16;

    private PdfMark() {}

    /**
     * Whether a document is this program's.
     *
     * @param in the document; read, not closed
     */
    public static boolean isIn(InputStream in) throws IOException {
        String held = text(in.readNBytes(BLOCK));
        if (!held.startsWith(START)) {
            return false;
        }
        while (!held.contains(PRODUCER)) {
            byte[] more = in.readNBytes(BLOCK);
            if (more.length == 0) {
                return false;
            }
            held = held.substring(Math.max(0, held.length() - PRODUCER.length())) + text(more);
        }
        return true;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
