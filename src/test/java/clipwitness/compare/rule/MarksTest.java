package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.finding.Mark;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The marks of the first page. */
class MarksTest {
    @TempDir
    private Path folder;

    @Test
    void aSoundThatIsMeantToChangeDoesNotPassBecauseItsPolarityDoes() throws IOException, InputException {
        JobResults results = new TestExamination(folder).of(withInput("before", 0.5), withInput("new", 0.9));
        assertThat(results.comparisons().get(1).items())
                .anyMatch(i -> i.quantity() == ItemQuantity.POLARITY && i.decision() == Decision.PASS);
        Mark sound = Marks.of(results.comparisons().get(1)).get(0);
        assertThat(sound.part()).isEqualTo(Mark.Part.SOUND);
        assertThat(sound.decision()).contains(Decision.DESCRIBED);
        assertThat(sound.telling().orElseThrow().quantity()).isEqualTo(ItemQuantity.LEVEL);
    }

    private static MadeUpCapture withInput(String state, double rms) {
        return MadeUpCapture.ordinary(state, 50)
                .with(WaveformQuantity.RMS, rms, 0.001)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.1, 0.0001)
                .with(WaveformQuantity.GAIN, 10, 0.01)
                .with(WaveformQuantity.PHASE, 0, 0.1);
    }
}
