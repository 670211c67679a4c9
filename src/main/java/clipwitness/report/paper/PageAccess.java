package clipwitness.report.paper;

import clipwitness.report.picture.Pictures;
import clipwitness.report.picture.UnreadablePictureException;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.extend.FSUriResolver;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** Sends every address on a page to the page's own files: web, disk and class path are out of reach. */
final class PageAccess implements FSUriResolver, FSStreamFactory {
    private static final String SCHEME = "page";

    /** What stands before the name of a file where the renderer speaks of it. */
    static final String PREFIX = SCHEME + ":";

    private static final String INLINE = "data:";

    private final PageFiles files;

    PageAccess(PageFiles files) {
        this.files = files;
    }

    void register(PdfRendererBuilder builder) {
        builder.useUriResolver(this);
        builder.useProtocolsStreamImplementation(this, SCHEME);
    }

    @Override
    public String resolveURI(String baseUri, String uri) {
        return uri.startsWith(PREFIX) ? uri : PREFIX + uri;
    }

    /** What the address itself holds (RFC 2397); nothing where it cannot be read. A picture is written anew from its pixels. */
    private static byte[] inline(String address) {
        int comma = address.indexOf(',');
        try {
            byte[] content = address.substring(0, Math.max(0, comma)).endsWith(";base64")
                    ? Base64.getMimeDecoder().decode(address.substring(comma + 1))
                    : URLDecoder.decode(address.substring(comma + 1).replace("+", "%2B"), StandardCharsets.UTF_8)
                            .getBytes(StandardCharsets.UTF_8);
            return Pictures.isPicture(content) ? Pictures.forPrint(content) : content;
        } catch (IllegalArgumentException | UnreadablePictureException e) {
            return new byte[0]; // which the renderer says it cannot read
        }
    }

    @Override
    public FSStream getUrl(String uri) {
        String name = uri.substring(PREFIX.length());
        byte[] bytes = name.startsWith(INLINE) ? inline(name) : files.find(name).orElse(new byte[0]);
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return new ByteArrayInputStream(bytes);
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
            }
        };
    }
}
