package clipwitness.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a results file says is read back from it alone. */
class StandingResultsTest {
    private static final JobResults RESULTS = ExampleJob.good().results();
    private static final byte[] DOCUMENT =
            ResultsJson.bytes(RESULTS, Map.of(), List.of("customer"), "clipwitness 1.2.3");

    @Test
    void aFileIsReadBackAsWhatWasWritten() {
        StandingResults read = StandingResults.read(DOCUMENT).orElseThrow();
        assertThat(read.software()).isEqualTo("clipwitness 1.2.3");
        assertThat(read.digest()).isEqualTo(RESULTS.inputsDigest());
        assertThat(read.templates()).containsExactly("customer");
        assertThat(read.summary()).isEqualTo(JobSummary.of(RESULTS));
        assertThat(read.summary().comparisons()).hasSameSizeAs(RESULTS.comparisons());
    }

    @Test
    void whatIsNoWholeResultsFileOfThisVersionIsNotRead() {
        String text = new String(DOCUMENT, StandardCharsets.UTF_8);
        assertThat(List.of(
                        "",
                        "no document",
                        "[]",
                        "{}",
                        text.substring(0, text.length() / 2),
                        text.replace("clipwitness-results/1", "clipwitness-results/2"),
                        text.replace("\"verdict\" : \"", "\"verdict\" : \"perhaps "),
                        "[".repeat(5_000)))
                .allMatch(t ->
                        StandingResults.read(t.getBytes(StandardCharsets.UTF_8)).isEmpty());
    }
}
