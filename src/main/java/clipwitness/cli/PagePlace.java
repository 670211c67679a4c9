package clipwitness.cli;

import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Where a page may be written: nowhere, or over an earlier page. An export or a sheet named by mistake is never written over. */
final class PagePlace {
    private static final byte[] PDF = "%PDF".getBytes(StandardCharsets.US_ASCII);

    private PagePlace() {}

    /**
     * Whether nothing stands at a path but, at most, a PDF document.
     *
     * @throws IOException if what stands there cannot be read
     */
    static boolean mayHold(Path page) throws IOException {
        if (!Files.exists(page)) {
            return true;
        }
        if (!Files.isRegularFile(page)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(page)) {
            return Arrays.equals(in.readNBytes(PDF.length), PDF);
        }
    }

    /** What to say of a place that is taken. */
    static Problem taken(Path page) {
        return Files.isDirectory(page)
                ? new Problem(Origin.of(page.toString()), "this is a folder", "Name a file in it with --out")
                : new Problem(
                        Origin.of(page.toString()),
                        "a file stands there that is no page, and it is left as it is",
                        "Name another file with --out");
    }
}
