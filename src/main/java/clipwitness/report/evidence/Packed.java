package clipwitness.report.evidence;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** Unpacks an attachment as this program packs it, and no further than it may be long: a kilobyte can stand for a gigabyte. */
final class Packed {
    private Packed() {}

    /**
     * The content; empty where it is packed otherwise, damaged, or longer.
     *
     * @param stream the attachment
     * @param most   bytes that it may have
     */
    static Optional<byte[]> content(COSStream stream, int most) {
        COSBase filter = stream.getFilters();
        boolean plain = filter == null;
        if (!plain && !COSName.FLATE_DECODE.equals(filter)) {
            return Optional.empty();
        }
        try (InputStream raw = stream.createRawInputStream();
                InputStream in = plain ? raw : new InflaterInputStream(raw)) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            byte[] buffer = new byte[1 << 14];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                bytes.write(buffer, 0, n);
                if (bytes.size() > most) {
                    return Optional.empty();
                }
            }
            return Optional.of(bytes.toByteArray());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
