package clipwitness.cli;

import clipwitness.batch.JobOutcome;
import clipwitness.report.data.JobSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The table that closes a batch: how each job ended. */
final class ClosingTable {
    private ClosingTable() {}

    /** One line a job under a heading, columns aligned. */
    static String of(List<JobOutcome> outcomes) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Job", "Number", "Ended"));
        outcomes.forEach(o -> rows.add(row(o)));
        return "\n" + TextTable.of(rows);
    }

    private static List<String> row(JobOutcome outcome) {
        String number = outcome.said().map(JobSummary::number).orElse("–");
        return List.of(outcome.folder().toString(), number, ended(outcome));
    }

    /** How a job ended, in a few words. */
    static String ended(JobOutcome outcome) {
        if (outcome instanceof JobOutcome.Failed failed) {
            int problems = failed.problems().size();
            return "not reported: " + problems + (problems == 1 ? " problem" : " problems") + ", named above";
        }
        String verdicts = outcome.said().map(ClosingTable::verdicts).orElseThrow();
        return outcome instanceof JobOutcome.Unchanged ? verdicts + " (unchanged)" : verdicts;
    }

    private static String verdicts(JobSummary said) {
        String verdicts = said.comparisons().stream()
                .filter(JobSummary.Compared::judged)
                .map(c -> c.state() + " " + c.verdict().code())
                .collect(Collectors.joining(", "));
        return verdicts.isEmpty() ? "reported, nothing to judge" : verdicts;
    }
}
