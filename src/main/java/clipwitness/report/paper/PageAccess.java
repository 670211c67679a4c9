package clipwitness.report.paper;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.extend.FSUriResolver;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/** Sends every address on a page to the page's own files: web, disk and class path are out of reach. */
final class PageAccess implements FSUriResolver, FSStreamFactory {
    private static final String SCHEME = "page";
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
        return uri.startsWith(INLINE) || uri.startsWith(SCHEME + ":") ? uri : SCHEME + ":" + uri;
    }

    @Override
    public FSStream getUrl(String uri) {
        byte[] bytes = files.find(uri.substring(SCHEME.length() + 1)).orElse(new byte[0]);
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
