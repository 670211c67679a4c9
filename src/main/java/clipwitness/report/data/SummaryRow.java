package clipwitness.report.data;

import java.util.List;
import java.util.Optional;

/**
 * One job in the summary of many.
 *
 * @param job       its folder, as the user named it or as it was found
 * @param said      what its report says; empty where there is none
 * @param unchanged whether the report of an earlier run was left as it is
 * @param problems  why there is no report, or what the report could not show as it was meant
 * @param pdfs      file names of its PDFs, that of the first template first
 */
public record SummaryRow(
        String job, Optional<JobSummary> said, boolean unchanged, List<String> problems, List<String> pdfs) {
    /** Copies what it is given. */
    public SummaryRow {
        problems = List.copyOf(problems);
        pdfs = List.copyOf(pdfs);
    }

    /** What was done: {@code made}, {@code unchanged} or {@code not reported}. */
    String done() {
        if (said.isEmpty()) {
            return "not reported";
        }
        return unchanged ? "unchanged" : "made";
    }
}
