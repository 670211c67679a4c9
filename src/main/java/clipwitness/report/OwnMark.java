package clipwitness.report;

import clipwitness.report.data.ResultsCsv;
import clipwitness.report.data.ResultsJson;
import clipwitness.report.data.SummaryCsv;
import clipwitness.report.paper.PdfMark;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Distinguishes files that this program has written from all others by a mark in them; only such files are replaced. */
public final class OwnMark {
    private static final int HEAD = 1 << 10;
    private static final Pattern STACK_TRACE = Pattern.compile("clipwitness [^\\n]*, Java [^\\n]*\\n");

    private OwnMark() {}

    /**
     * Whether a file carries the mark; never so of a link or of what is no ordinary file.
     *
     * @throws IOException if it cannot be read
     */
    public static boolean isOn(Path file) throws IOException {
        return isPage(file) || isText(file);
    }

    /**
     * Whether a file is a PDF that carries the mark.
     *
     * @throws IOException if it cannot be read
     */
    public static boolean isPage(Path file) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return PdfMark.isIn(in);
        }
    }

    private static boolean isText(Path file) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            String head = new String(in.readNBytes(HEAD), StandardCharsets.UTF_8);
            return ResultsJson.isHead(head)
                    || ResultsCsv.isHead(head)
                    || SummaryCsv.isHead(head)
                    || SummaryDocument.isHead(head)
                    || STACK_TRACE.matcher(head).lookingAt();
        }
    }
}
