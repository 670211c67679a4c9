package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.compare.finding.ClippedSetting;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClippedSettingsTest {
    @TempDir
    private Path folder;

    /** 1.2 ± 0.4 % may be under 1 %: what the sound became is told by the other setting. */
    @Test
    void aSettingThatMayBeCleanDoesNotCount() throws IOException, InputException {
        JobResults results = new TestExamination(folder)
                .of(
                        state("before", 0, 1.2, 0.2),
                        state("before", 100, 10, 0.01),
                        state("new", 0, 0.3, 0.02),
                        state("new", 100, 12, 0.01));
        Comparison changed = results.comparisons().stream()
                .filter(c -> c.to().equals("new"))
                .findFirst()
                .orElseThrow();
        assertThat(new ClippedSettings(results).of(changed))
                .extracting(s -> s.condition().gainPercent().orElseThrow(), ClippedSetting::turn)
                .containsExactly(tuple(100.0, ClippedSetting.Turn.HIGHER));
    }

    private static MadeUpCapture state(String name, double gain, double thd, double uncertainty) {
        return MadeUpCapture.ordinary(name, gain).with(WaveformQuantity.THD, thd, uncertainty);
    }
}
