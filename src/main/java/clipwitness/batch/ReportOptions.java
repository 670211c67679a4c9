package clipwitness.batch;

import clipwitness.job.Job;
import clipwitness.report.evidence.SigningKey;
import clipwitness.report.page.PageBudget;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What the user asks of a report.
 *
 * @param out       folder for the results; empty: the folder {@code report} of each job
 * @param templates templates instead of the sheet's; the first makes {@code N.pdf}, each further one {@code N-TEMPLATE.pdf}
 * @param software  name and version of the program
 * @param budget    time and pages that each document may take
 * @param key       the shop's key, which signs each PDF; empty: none is signed
 * @param changedOnly whether a job is left as it is whose report would come out the same
 */
public record ReportOptions(
        Optional<Path> out,
        List<String> templates,
        String software,
        PageBudget budget,
        Optional<SigningKey> key,
        boolean changedOnly) {
    /** With the usual budget, not signed, every job made. */
    public ReportOptions(Optional<Path> out, List<String> templates, String software) {
        this(out, templates, software, PageBudget.USUAL, Optional.empty(), false);
    }

    /** With so much time and so many pages for each document. */
    public ReportOptions within(Duration time, int pages) {
        return new ReportOptions(out, templates, software, new PageBudget(time, pages), key, changedOnly);
    }

    /** Signed with a key. */
    public ReportOptions signedWith(SigningKey shop) {
        return new ReportOptions(out, templates, software, budget, Optional.of(shop), changedOnly);
    }

    /** With the jobs left as they are whose report would come out the same, or with all made again. */
    public ReportOptions changedOnly(boolean only) {
        return new ReportOptions(out, templates, software, budget, key, only);
    }

    /** Copies what it is given. */
    public ReportOptions {
        templates = List.copyOf(templates);
    }

    /** The folder for the results of a job. */
    Path outputOf(Path jobFolder) {
        return out.orElseGet(() -> jobFolder.resolve(Job.REPORT_FOLDER));
    }
}
