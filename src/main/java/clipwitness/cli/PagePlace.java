package clipwitness.cli;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.report.OwnMark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Where a page may be written: nowhere, or over an earlier page. An export or a sheet named by mistake is never written over. */
final class PagePlace {
    private PagePlace() {}

    /**
     * Whether nothing stands at a path but, at most, a page of this program.
     *
     * @throws IOException if what stands there cannot be read
     */
    static boolean mayHold(Path page) throws IOException {
        return !Files.exists(page, LinkOption.NOFOLLOW_LINKS) || OwnMark.isPage(page);
    }

    /** What to say of a place that is taken. */
    static Problem taken(Path page) {
        return taken(page, "--out");
    }

    /** The same where another option names the place. */
    static Problem taken(Path page, String option) {
        return Files.isDirectory(page)
                ? new Problem(
                        ErrorCode.PLACE_TAKEN,
                        Origin.of(page.toString()),
                        "this is a folder",
                        "Name a file in it with " + option)
                : new Problem(
                        ErrorCode.PLACE_TAKEN,
                        Origin.of(page.toString()),
                        "a file stands there that is no page of this program, and it is left as it is",
                        "Name another file with " + option);
    }
}
