package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Sine, square and clipped waves, figures from their Fourier series. */
class WaveformFactsTest {
    private static double value(WaveformResult result, WaveformQuantity quantity) {
        return result.get(quantity).value().orElseThrow();
    }

    /** Sum of 1/k² over odd k from 3 to 19 (all harmonics: sqrt(pi²/8 - 1) = 48.34 %). */
    @Test
    void thdOfASquareWaveWith20HarmonicsIs45Point69Percent() {
        WaveformResult square =
                TestRecord.of(p -> p < 0.5 ? 1 : -1).sampled(1000, 8, 0.0004).measured();
        assertThat(value(square, WaveformQuantity.THD)).isCloseTo(45.69, within(0.03));
        assertThat(square.get(WaveformQuantity.THD).unit()).isEqualTo(Unit.PERCENT);
        assertThat(value(square, WaveformQuantity.CREST_FACTOR)).isCloseTo(1, within(3e-3));
    }
}
