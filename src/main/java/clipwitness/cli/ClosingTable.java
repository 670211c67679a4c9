package clipwitness.cli;

import clipwitness.batch.JobOutcome;
import clipwitness.compare.Comparison;
import clipwitness.compare.Decision;
import clipwitness.compare.Intent;
import java.util.ArrayList;
import java.util.List;

/** The table that closes a batch: how each job ended. */
final class ClosingTable {
    private static final String GAP = "   ";

    private ClosingTable() {}

    /** One line a job under a heading, columns aligned. */
    static String of(List<JobOutcome> outcomes) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"Job", "Number", "Ended"});
        outcomes.forEach(o -> rows.add(row(o)));
        int first = rows.stream().mapToInt(r -> r[0].length()).max().orElse(0);
        int second = rows.stream().mapToInt(r -> r[1].length()).max().orElse(0);
        StringBuilder table = new StringBuilder("\n");
        for (String[] r : rows) {
            table.append(pad(r[0], first))
                    .append(GAP)
                    .append(pad(r[1], second))
                    .append(GAP)
                    .append(r[2])
                    .append('\n');
        }
        return table.toString();
    }

    private static String[] row(JobOutcome outcome) {
        String folder = outcome.folder().toString();
        if (outcome instanceof JobOutcome.Reported reported) {
            return new String[] {
                folder, reported.results().job().sheet().report().number(), verdicts(reported)
            };
        }
        int problems = ((JobOutcome.Failed) outcome).problems().size();
        return new String[] {
            folder, "–", "not reported: " + problems + (problems == 1 ? " problem" : " problems") + ", named above"
        };
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

    private static String pad(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
