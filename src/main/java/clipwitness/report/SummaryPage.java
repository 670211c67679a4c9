package clipwitness.report;

import clipwitness.compare.result.Decision;
import clipwitness.report.build.Signs;
import clipwitness.report.data.JobSummary;
import clipwitness.report.data.SummaryRow;
import clipwitness.report.data.Tally;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the template of the summary receives: finished texts, empty where there is nothing to say.
 *
 * @param title    how many jobs there are
 * @param counts   how many of them ended in which way
 * @param jobs     the jobs, in order
 * @param software program and version
 */
record SummaryPage(String title, String counts, List<JobLine> jobs, String software) {
    /**
     * A job.
     *
     * @param folder   its folder
     * @param number   number of its report
     * @param verdicts one entry a comparison
     * @param remark   what is to be said where there is no comparison, or no new report
     * @param hints    its hints
     * @param problems why there is no report, or what it could not show
     * @param links    its PDFs
     */
    record JobLine(
            String folder,
            String number,
            List<VerdictLine> verdicts,
            String remark,
            List<String> hints,
            List<String> problems,
            List<Link> links) {}

    /**
     * A verdict.
     *
     * @param style name of the verdict, for its colour
     * @param sign  a sign that can be told without colour
     * @param text  verdict and states in words
     * @param items the items that led to it
     */
    record VerdictLine(String style, String sign, String text, String items) {}

    /**
     * A link to a file beside the page.
     *
     * @param address relative, in the characters of an address
     * @param name    file name
     */
    record Link(String address, String name) {
        static Link to(String file) {
            try {
                return new Link(new URI(null, null, "./" + file, null).toASCIIString(), file);
            } catch (URISyntaxException e) {
                throw new IllegalArgumentException("no file name: " + file, e);
            }
        }
    }

    static SummaryPage of(List<SummaryRow> rows, String software) {
        return new SummaryPage(
                "Summary of " + rows.size() + " jobs",
                counts(rows),
                rows.stream().map(SummaryPage::job).toList(),
                software);
    }

    private static JobLine job(SummaryRow row) {
        List<VerdictLine> verdicts = new ArrayList<>();
        List<String> hints = new ArrayList<>();
        row.said().ifPresent(said -> {
            said.comparisons().forEach(c -> verdicts.add(verdict(c)));
            said.hints().forEach(h -> hints.add(h.state().isEmpty() ? h.text() : h.state() + ": " + h.text()));
        });
        return new JobLine(
                row.job(),
                row.said().map(JobSummary::number).orElse(""),
                verdicts,
                remark(row, verdicts.isEmpty()),
                hints,
                row.problems(),
                row.pdfs().stream().map(Link::to).toList());
    }

    private static String remark(SummaryRow row, boolean nothingCompared) {
        if (row.said().isEmpty()) {
            return "no report was made";
        }
        return Stream.of(
                        nothingCompared ? "nothing is compared" : "",
                        row.unchanged() ? "unchanged: the report of an earlier run stands" : "")
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static VerdictLine verdict(JobSummary.Compared c) {
        String failed = Tally.failed(c.tallies());
        String undecided = Tally.undecided(c.tallies());
        String items = Stream.of(
                        failed.isEmpty() ? "" : "failed: " + failed,
                        undecided.isEmpty() ? "" : "undecided: " + undecided)
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(" · "));
        return new VerdictLine(
                c.verdict().code(),
                Signs.of(c.verdict()),
                c.verdict().code() + ": " + c.state() + " against " + c.against(),
                items);
    }

    private static String counts(List<SummaryRow> rows) {
        List<String> counts = new ArrayList<>();
        add(counts, rows, Optional.of(Decision.FAIL), "with a verdict fail");
        add(counts, rows, Optional.of(Decision.UNDECIDED), "undecided");
        add(counts, rows, Optional.of(Decision.PASS), "passed");
        add(counts, rows, Optional.of(Decision.DESCRIBED), "with nothing to judge");
        add(counts, rows, Optional.empty(), "without a report");
        return String.join(", ", counts);
    }

    private static void add(List<String> counts, List<SummaryRow> rows, Optional<Decision> ending, String words) {
        long count = rows.stream()
                .filter(r -> r.said().map(SummaryPage::worst).equals(ending))
                .count();
        if (count > 0) {
            counts.add(count + " " + words);
        }
    }

    /** The verdict that counts most: a fail before what is undecided, and that before a pass. */
    private static Decision worst(JobSummary said) {
        return Stream.of(Decision.FAIL, Decision.UNDECIDED, Decision.PASS)
                .filter(d -> said.comparisons().stream().anyMatch(c -> c.verdict() == d))
                .findFirst()
                .orElse(Decision.DESCRIBED);
    }
}
