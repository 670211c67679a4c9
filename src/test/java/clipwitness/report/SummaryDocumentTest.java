package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Decision;
import clipwitness.report.data.JobSummary;
import clipwitness.report.data.SummaryCsv;
import clipwitness.report.data.SummaryRow;
import clipwitness.report.data.Tally;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The summary of many jobs, for a browser and for a spreadsheet. */
class SummaryDocumentTest {
    private static final String HOSTILE = "<script>alert(1)</script>\"'&{{ 1 }}";

    @TempDir
    private Path temp;

    @Test
    void aJobIsOneRowWithSignAndWordOfEachVerdict() {
        String page = page(row("week/a", summary(Decision.PASS, Decision.FAIL, Decision.UNDECIDED), "T-1.pdf"));
        assertThat(page)
                .contains("<span class=\"pass\">✓ <bdi>pass: s0 against before</bdi></span>")
                .contains("<span class=\"fail\">✗ <bdi>fail: s1 against before</bdi></span>")
                .contains("<span class=\"undecided\">? <bdi>undecided: s2 against before</bdi></span>")
                .contains("failed: level (2 of 12)")
                .contains("<a href=\"./T-1.pdf\"><bdi>T-1.pdf</bdi></a>")
                .contains("1 with a verdict fail.");
        assertThat(page.split("<th scope=\"row\">", -1)).hasSize(2);
    }

    @Test
    void aJobWithoutAReportHasItsProblem() {
        SummaryRow failed = new SummaryRow(
                "week/b", Optional.empty(), false, List.of("job.yaml: there is no such file"), List.of());
        assertThat(page(failed, row("week/a", summary(Decision.PASS), "T-1.pdf")))
                .contains("no report was made", "Problem: <bdi>job.yaml: there is no such file</bdi>")
                .contains("1 passed, 1 without a report.");
        assertThat(table(failed)).contains("week/b,,,,,,,job.yaml: there is no such file,,not reported\n");
    }

    @Test
    void textsOfTheUserAreTextsAndNothingElse() {
        SummaryRow row = new SummaryRow(
                HOSTILE,
                Optional.of(new JobSummary(
                        "T-1",
                        List.of(new JobSummary.Compared(HOSTILE, HOSTILE, false, Decision.FAIL, List.of())),
                        List.of(new JobSummary.Hinted("no-output", HOSTILE, HOSTILE)))),
                false,
                List.of(HOSTILE),
                List.of("T-1.pdf", "T-1-a b#c%d:e?\"f<.pdf"));
        assertThat(page(row))
                .doesNotContain("<script")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;&amp;{{ 1 }}")
                .contains("href=\"./T-1-a%20b%23c%25d:e%3F%22f%3C.pdf\"");
    }

    @Test
    void thePageLoadsNothingAndRunsNothing() {
        assertThat(page(row("week/a", summary(Decision.PASS), "T-1.pdf")))
                .startsWith("<!DOCTYPE html>")
                .doesNotContainPattern("(?i)<script|<link|<img|@import|url\\(|http|javascript")
                .contains("prefers-color-scheme: dark", "<th scope=\"col\">Job</th>");
    }

    @Test
    void theTableHasARowForEachComparison() {
        assertThat(table(row("week/a", summary(Decision.PASS, Decision.FAIL), "T-1.pdf"))
                        .lines())
                .containsExactly(
                        "job,number,state,against,verdict,failedItems,hints,problem,pdf,done",
                        "week/a,T-1,s0,before,pass,,no-output (s0),,T-1.pdf,made",
                        "week/a,T-1,s1,before,fail,level (2 of 12),no-output (s0),,T-1.pdf,made");
    }

    @Test
    void aFolderThatASpreadsheetWouldRunIsMadeHarmless() {
        assertThat(table(new SummaryRow("=1+1", Optional.empty(), false, List.of("@x"), List.of())))
                .contains("'=1+1,,,,,,,'@x,,not reported");
    }

    @Test
    void bothCarryTheMarkByWhichTheyAreReplaced() throws IOException {
        SummaryRow row = row("week/a", summary(Decision.PASS), "T-1.pdf");
        assertThat(OwnMark.isOn(file("summary.html", page(row)))).isTrue();
        assertThat(OwnMark.isOn(file("summary.csv", table(row)))).isTrue();
        assertThat(OwnMark.isOn(file("mine.html", "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n")))
                .isFalse();
        assertThat(OwnMark.isOn(file("mine.csv", "job,number\n"))).isFalse();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(temp.resolve(name), text);
    }

    private static JobSummary summary(Decision... verdicts) {
        List<JobSummary.Compared> comparisons = IntStream.range(0, verdicts.length)
                .mapToObj(i -> new JobSummary.Compared(
                        "s" + i,
                        "before",
                        false,
                        verdicts[i],
                        List.of(
                                new Tally("level", 12, verdicts[i] == Decision.FAIL ? 2 : 0, 0),
                                new Tally("thd", 12, 0, 0))))
                .toList();
        return new JobSummary("T-1", comparisons, List.of(new JobSummary.Hinted("no-output", "s0", "No output.")));
    }

    private static SummaryRow row(String folder, JobSummary said, String pdf) {
        return new SummaryRow(folder, Optional.of(said), false, List.of(), List.of(pdf));
    }

    private static String page(SummaryRow... rows) {
        return new String(SummaryDocument.bytes(List.of(rows), "clipwitness 1.2.3"), StandardCharsets.UTF_8);
    }

    private static String table(SummaryRow... rows) {
        return new String(SummaryCsv.bytes(List.of(rows)), StandardCharsets.UTF_8);
    }
}
