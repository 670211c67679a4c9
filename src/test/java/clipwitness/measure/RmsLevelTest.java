package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Spread;
import clipwitness.fixture.TestRecord;
import org.junit.jupiter.api.Test;

class RmsLevelTest {
    /**
     * A record too short for a mean cycle in bins is described by up to 60 harmonics. Each of those holds noise of a power of 2 s² / N
     * (a least-squares fit in white noise): together 4 % of the power here, 2 % of the rms, if none were taken off.
     */
    @Test
    void noiseInHarmonicsAboveTheTwentiethDoesNotRaiseTheRms() {
        Spread spread = new Spread();
        for (int record = 0; record < 150; record++) {
            spread.add(TestRecord.of(TestRecord.SINE)
                    .sampled(150, 3.37, record * 0.61803)
                    .noisy(0.3, 0, record)
                    .measured()
                    .get(WaveformQuantity.RMS));
        }
        assertThat(spread.mean()).isCloseTo(Math.sqrt(0.5), within(0.006));
    }
}
