package clipwitness.cli;

import clipwitness.batch.JobOutcome;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import java.util.ArrayList;
import java.util.List;

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
        String number = outcome instanceof JobOutcome.Reported reported
                ? reported.results().job().sheet().report().number()
                : "–";
        return List.of(outcome.folder().toString(), number, ended(outcome));
    }

    /** How a job ended, in a few words. */
    static String ended(JobOutcome outcome) {
        if (outcome instanceof JobOutcome.Reported reported) {
            return verdicts(reported);
        }
        int problems = ((JobOutcome.Failed) outcome).problems().size();
        return "not reported: " + problems + (problems == 1 ? " problem" : " problems") + ", named above";
    }

    private static String verdicts(JobOutcome.Reported reported) {
        List<String> verdicts = new ArrayList<>();
        for (Comparison c : reported.results().comparisons()) {
            if (c.intent() != Intent.DESCRIBED && c.verdict() != Decision.DESCRIBED) {
                verdicts.add(c.to() + " " + c.verdict().code());
            }
        }
        return verdicts.isEmpty() ? "reported, nothing to judge" : String.join(", ", verdicts);
    }
}
