package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.WaveformQuantity;
import org.junit.jupiter.api.Test;

/** Curves whose figures have exact values. */
class PredictedCurveTest {
    private static final double ONE_DECIBEL = 1.1220184543019633; // 10^(1/20), the standard's ratio of 1 dB

    private static double figure(PredictedWave wave, WaveformQuantity quantity) {
        return wave.get(quantity).value().orElseThrow();
    }

    /** A perfect corner at 0.3 V up and 0.45 V down: the line is the curve itself, and 1 dB short of it lies 1 dB above the corner. */
    @Test
    void anOnsetLiesOneDecibelAboveAPerfectCorner() {
        PredictedWave wave = PredictedWave.of(x -> 0.1 + 2 * Math.max(-0.45, Math.min(x, 0.3)), 1);
        assertThat(figure(wave, WaveformQuantity.ONSET_UP)).isCloseTo(0.3 * ONE_DECIBEL, within(1e-9));
        assertThat(figure(wave, WaveformQuantity.ONSET_DOWN)).isCloseTo(0.45 * ONE_DECIBEL, within(1e-9));
        assertThat(figure(wave, WaveformQuantity.CLIP_UP)).isCloseTo(0.6, within(1e-12));
        assertThat(figure(wave, WaveformQuantity.CLIP_DOWN)).isCloseTo(0.9, within(1e-12));
        assertThat(figure(wave, WaveformQuantity.CLIP_ASYMMETRY)).isCloseTo(-20, within(1e-9));
    }

    /** The same curve turned over: the halves are named by the output. */
    @Test
    void theHalvesAreThoseOfTheOutput() {
        PredictedWave wave = PredictedWave.of(x -> -2 * Math.max(-0.45, Math.min(x, 0.3)), 1);
        assertThat(figure(wave, WaveformQuantity.ONSET_UP)).isCloseTo(0.45 * ONE_DECIBEL, within(1e-9));
        assertThat(figure(wave, WaveformQuantity.ONSET_DOWN)).isCloseTo(0.3 * ONE_DECIBEL, within(1e-9));
        assertThat(wave.cycle().swing().at(64)).isPositive(); // a quarter period after the rise through zero
    }

    /** The third Chebyshev polynomial makes the third harmonic of a cosine, and nothing else. */
    @Test
    void aPolynomialOfChebyshevMakesOneHarmonic() {
        PredictedWave wave = PredictedWave.of(x -> x + 0.1 * (4 * x * x * x - 3 * x), 1);
        assertThat(wave.levels().get(3).value().orElseThrow()).isCloseTo(-20, within(1e-9));
        assertThat(wave.levels().get(2).reason()).isPresent();
        assertThat(figure(wave, WaveformQuantity.THD)).isCloseTo(10, within(1e-9));
        assertThat(figure(wave, WaveformQuantity.RMS)).isCloseTo(Math.sqrt(1.01 / 2), within(1e-12));
    }

    /** y = 3 x - 3.9 x³ turns back: its slope is 0 at x² = 1 / 3.9, where y = 2 x. */
    @Test
    void aPeakMayLieWithinTheCycle() {
        PredictedWave wave = PredictedWave.of(x -> 3 * x - 3.9 * x * x * x, 1);
        double extreme = 2 * Math.sqrt(1 / 3.9);
        assertThat(figure(wave, WaveformQuantity.PEAK_UP)).isCloseTo(extreme, within(1e-6));
    }

    @Test
    void aStraightLineHasNoOnset() {
        PredictedWave wave = PredictedWave.of(x -> 5 * x, 0.1);
        assertThat(wave.get(WaveformQuantity.ONSET_UP).reason()).isPresent();
        assertThat(figure(wave, WaveformQuantity.CREST_FACTOR)).isCloseTo(Math.sqrt(2), within(1e-9));
    }
}
