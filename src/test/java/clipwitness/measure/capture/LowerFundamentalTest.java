package clipwitness.measure.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A tone that the table says lies at a multiple of the wave's period, and hum that is stronger than the tone. */
class LowerFundamentalTest {
    private static final double RATE = 50_000;

    /** Sines of these frequencies, Hz, and amplitudes, V, by turns, with 1 mV of noise. */
    private static Waveform wave(double... tones) {
        Random random = new Random(9);
        double[] values = new double[10_000];
        for (int i = 0; i < values.length; i++) {
            values[i] = 1e-3 * random.nextGaussian();
            for (int t = 0; t < tones.length; t += 2) {
                values[i] += tones[t + 1] * Math.sin(2 * Math.PI * tones[t] * i / RATE + t);
            }
        }
        return new Waveform(Samples.of(values), RATE, Unit.VOLT);
    }

    private static double frequency(double expected, double... tones) {
        WaveformResult result =
                WaveformMeasurement.of(WaveformInput.of(wave(tones)).expecting(expected));
        return result.get(WaveformQuantity.FREQUENCY).value().orElse(0);
    }

    /** Up to six times the period's frequency a multiple is taken for one; to 2 % of it. */
    @Test
    void aStrongerLineAtAWholePartOfTheExpectedFrequencyIsTheFundamental() {
        assertThat(frequency(600, 300, 1, 600, 0.2)).isCloseTo(300, within(0.01));
        assertThat(frequency(900, 300, 1, 900, 0.2)).isCloseTo(300, within(0.01));
        assertThat(frequency(1800, 300, 1, 1800, 0.2)).isCloseTo(300, within(0.01));
        assertThat(frequency(2100, 300, 1, 2100, 0.2)).isNotCloseTo(300, within(1.0));
        assertThat(frequency(750, 300, 1, 750, 0.2)).isNotCloseTo(300, within(1.0));
    }

    @Test
    void humThatIsStrongerThanTheToneIsNoFundamental() {
        assertThat(frequency(200, 50, 1, 200, 0.3)).isCloseTo(200, within(0.5));
        assertThat(frequency(240, 60, 1, 240, 0.3)).isCloseTo(240, within(0.5));
        assertThat(frequency(220, 55, 1, 220, 0.3)).isCloseTo(55, within(0.1));
    }

    /** Where the expected line explains nearly everything nothing else is looked for. */
    @Test
    void aWeakLineBelowTheToneIsLeft() {
        assertThat(frequency(600, 300, 0.1, 600, 1)).isCloseTo(600, within(0.1));
    }

    @Test
    void aRefusedCaptureHasNoFigureAndTheReasonOnEach() {
        Reason reason = Reason.of(FigureReason.CAPTURE_NOT_MEASURED);
        WaveformResult alone = WaveformMeasurement.refused(WaveformInput.of(wave(300, 1)), reason);
        WaveformResult both =
                WaveformMeasurement.refused(WaveformInput.of(wave(300, 1)).withInput(wave(300, 1)), reason);
        for (WaveformQuantity q : WaveformQuantity.values()) {
            assertThat(alone.values().containsKey(q)).as(q.key()).isEqualTo(!q.needsInput());
            assertThat(both.values().get(q).reason().orElseThrow().is(FigureReason.CAPTURE_NOT_MEASURED))
                    .isTrue();
        }
        assertThat(alone.harmonics()).isEmpty();
        assertThat(alone.cycle()).isEmpty();
    }
}
