package clipwitness.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.ExampleSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsJsonTest {
    private static String findings(JobResults results) {
        String text = new String(ResultsJson.bytes(results, "test"), StandardCharsets.UTF_8);
        return text.substring(text.indexOf("\"findings\""), text.indexOf("\"hints\""));
    }

    /** In German the report writes decimal commas; the results never do. */
    @Test
    void theFindingsAreInEnglishWhateverTheLanguageOfTheReport() {
        JobResults german = ExampleJob.with(ExampleSheet.plain().in("de")).results();
        assertThat(findings(german))
                .contains("quieter than as received at full gain")
                .contains("5.93")
                .isEqualTo(findings(ExampleJob.good().results()));
    }

    @Test
    void aFigureHasItsUnitAndUncertaintyUnderItsName() {
        assertThat(findings(ExampleJob.good().results()))
                .containsSubsequence(
                        "\"code\" : \"asymmetry\"",
                        "\"from\" : \"received\"",
                        "\"to\" : \"new\"",
                        "\"gainPercent\" : 100.0",
                        "\"word\" : \"unlike\"",
                        "\"clipAsymmetryNow\" : -33.1",
                        "\"clipAsymmetryNow\" : \"%\"",
                        "\"clipAsymmetryNow\" : 0.")
                .containsPattern("\"text\" : \"Clips unevenly. New clippers: its two halves are clipped");
    }

    @Test
    void theDocumentEndsWithALineFeed() {
        String text = new String(ResultsJson.bytes(ExampleJob.good().results(), "test"), StandardCharsets.UTF_8);
        assertThat(text).startsWith("{").endsWith("}\n");
    }

    @Test
    void aJobWithoutCapturesHasNoFindings() {
        JobResults good = ExampleJob.good().results();
        JobResults none = new JobResults(good.job(), good.inputsDigest(), List.of(), List.of(), List.of(), List.of());
        assertThat(findings(none)).startsWith("\"findings\" : [ ]");
    }
}
