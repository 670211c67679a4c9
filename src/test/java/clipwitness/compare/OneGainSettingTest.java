package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Series;
import clipwitness.compare.rule.Findings;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.FigureReason;
import clipwitness.report.data.ResultsJson;
import clipwitness.report.words.FindingText;
import clipwitness.report.words.JobWording;
import clipwitness.words.WordBundle;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A changed state captured at one position of the gain control, at 28.1 % distortion, beside a state before captured at five. */
class OneGainSettingTest {
    private static final double[] BEFORE_PERCENT = {0.8, 2, 6, 14, 30};

    @TempDir
    private Path folder;

    @Test
    void oneSettingIsNoCurveSoItsOnsetsAreRefusedForThat() throws IOException, InputException {
        Series changed = results().series().stream()
                .filter(s -> s.state().equals("new"))
                .findFirst()
                .orElseThrow();
        assertThat(changed.onsetGain())
                .hasSize(3)
                .allMatch(o -> o.gainPercent().reason().orElseThrow().is(FigureReason.ONE_SETTING_ONLY));
        assertThat(results().comparisons().get(1).equivalentGain())
                .extracting(
                        EquivalentGain::fromGainPercent,
                        e -> e.toGainPercent().reason().orElseThrow().resultCode())
                .contains(tuple(50.0, "one-setting-only"));
    }

    /** It may well reach 3 % below that position: the first page must not say that it does not. */
    @Test
    void theFirstPageSaysNothingOfWhereItBeginsToDistort() throws IOException, InputException {
        JobResults results = results();
        assertThat(new FindingText(new JobWording(WordBundle.builtIn(), results)).firstPage(Findings.of(results)))
                .noneMatch(
                        f -> f.text().contains("at every setting") || f.text().contains("distortion at"));
    }

    @Test
    void theResultsSayWhyInWordsAndAsACode() throws IOException, InputException {
        String json = new String(ResultsJson.bytes(results(), "clipwitness"), StandardCharsets.UTF_8);
        assertThat(json)
                .contains("\"reason\" : \"one setting alone does not say where it is reached\"")
                .contains("\"reasonCode\" : \"one-setting-only\"");
    }

    private JobResults results() throws IOException, InputException {
        List<MadeUpCapture> captures = new ArrayList<>();
        for (int i = 0; i < BEFORE_PERCENT.length; i++) {
            captures.add(
                    MadeUpCapture.ordinary("before", 25.0 * i).with(WaveformQuantity.THD, BEFORE_PERCENT[i], 0.01));
        }
        captures.add(MadeUpCapture.ordinary("new", 50).with(WaveformQuantity.THD, 28.1, 0.01));
        return new TestExamination(folder).of(captures.toArray(new MadeUpCapture[0]));
    }
}
