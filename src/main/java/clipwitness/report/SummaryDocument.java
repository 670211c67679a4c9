package clipwitness.report;

import clipwitness.fault.InputException;
import clipwitness.report.data.SummaryRow;
import clipwitness.report.page.PageTemplate;
import clipwitness.report.page.TemplateSource;
import clipwitness.words.WordBundle;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** The summary of many jobs as a page for a browser: one file, which loads nothing and runs nothing. */
public final class SummaryDocument {
    private static final Pattern HEAD = Pattern.compile("<!DOCTYPE html>\\s*<html lang=\"en\">\\s*<head>\\s*"
            + "<meta charset=\"utf-8\" />\\s*<meta name=\"generator\" content=\"clipwitness [^\"]*, summary\" />");

    private SummaryDocument() {}

    /**
     * The page as UTF-8. The same arguments give the same bytes.
     *
     * @param rows     the jobs
     * @param software program and version
     */
    public static byte[] bytes(List<SummaryRow> rows, String software) {
        try {
            return new PageTemplate(TemplateSource.summary(), WordBundle.builtIn())
                    .fill(SummaryPage.of(rows, software))
                    .text()
                    .getBytes(StandardCharsets.UTF_8);
        } catch (InputException e) {
            throw new IllegalArgumentException("the program's own template has a fault", e);
        }
    }

    /** Whether a file that begins so is such a page. */
    static boolean isHead(String text) {
        return HEAD.matcher(text).lookingAt();
    }
}
