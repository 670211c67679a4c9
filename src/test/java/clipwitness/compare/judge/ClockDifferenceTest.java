package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClockDifferenceTest {
    @TempDir
    private Path folder;

    /** 1000.1 Hz over 1000 Hz is 100 parts in a million; 1 mHz each is 1 part, sqrt 2 together. */
    @Test
    void aTenthOfAHertzOnOneKilohertzIs100PartsPerMillion() throws IOException, InputException {
        List<ClockDifference> found = differences(1000.1);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).ratio().number()).isCloseTo(1e-4, within(1e-12));
        assertThat(found.get(0).ratio().standardUncertainty()).isCloseTo(1.414e-6, within(1e-9));
    }

    @Test
    void whatLiesWithinItsUncertaintyIsNone() throws IOException, InputException {
        assertThat(differences(1000.002)).isEmpty();
    }

    private List<ClockDifference> differences(double after) throws IOException, InputException {
        JobResults results = new TestExamination(folder)
                .of(
                        MadeUpCapture.ordinary("before", 100).with(WaveformQuantity.FREQUENCY, 1000, 1e-3),
                        MadeUpCapture.ordinary("old", 100).with(WaveformQuantity.FREQUENCY, after, 1e-3));
        return ClockDifference.of(results, results.comparisons().get(0));
    }
}
