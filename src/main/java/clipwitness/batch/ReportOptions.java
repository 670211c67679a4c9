package clipwitness.batch;

import clipwitness.job.Job;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the user asks of a report.
 *
 * @param out       folder for the results; empty: the folder {@code report} of each job
 * @param templates templates instead of the sheet's; the first makes {@code N.pdf}, each further one {@code N-TEMPLATE.pdf}
 * @param software  name and version of the program
 */
public record ReportOptions(Optional<Path> out, List<String> templates, String software) {
    /** Copies what it is given. */
    public ReportOptions {
        templates = List.copyOf(templates);
    }

    /** The folder for the results of a job. */
    Path outputOf(Path jobFolder) {
        return out.orElseGet(() -> jobFolder.resolve(Job.REPORT_FOLDER));
    }
}
