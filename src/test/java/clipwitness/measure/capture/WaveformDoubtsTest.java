package clipwitness.measure.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Each doubt on a record that has just enough of it, and none on its neighbour. */
class WaveformDoubtsTest {
    private static final TestRecord CLEAN = TestRecord.of(TestRecord.SINE).noisy(2e-3, 0, 1);

    private static void hasOnly(WaveformResult result, DoubtCode code, Severity severity) {
        assertThat(result.doubts()).extracting(Doubt::code, Doubt::severity).containsExactly(tuple(code, severity));
    }

    private static void hasNone(WaveformResult result) {
        assertThat(result.doubts()).isEmpty();
    }

    private static WaveformResult withGaps(int gaps) {
        double[] values = CLEAN.sampled(500, 10, 0).waveform().samples().toArray();
        Arrays.fill(values, 1000, 1000 + gaps, Double.NaN);
        return WaveformMeasurement.of(
                WaveformInput.of(new Waveform(Samples.of(values), 500 * TestRecord.FREQUENCY, Unit.VOLT))
                        .expecting(TestRecord.FREQUENCY));
    }

    @Test
    void fewerThanThreePeriodsWarnAndFewerThanOneRefuses() {
        hasNone(CLEAN.sampled(500, 3.2, 0).measured());
        hasOnly(CLEAN.sampled(500, 2.8, 0).measured(), DoubtCode.FEW_PERIODS, Severity.WARNING);
        hasOnly(CLEAN.sampled(500, 0.9, 0).measured(), DoubtCode.FEW_PERIODS, Severity.REFUSAL);
    }

    @Test
    void fewerThan45SamplesAPeriodWarnAndFewerThan8Refuse() {
        hasNone(CLEAN.sampled(45.7, 40, 0).measured());
        hasOnly(CLEAN.sampled(44.3, 40, 0).measured(), DoubtCode.UNDERSAMPLED, Severity.WARNING);
        hasOnly(CLEAN.sampled(7.7, 200, 0).measured(), DoubtCode.UNDERSAMPLED, Severity.REFUSAL);
    }

    /** A pulse of a fiftieth of the period has a 20th harmonic of much more than 1 % (Fourier series); noise of 20 % has none that shows. */
    @Test
    void aLastHarmonicAboveOnePercentWarnsWhereNoiseDoesNotExplainIt() {
        hasOnly(
                TestRecord.of(p -> p < 0.02 ? 1 : 0).noisy(1e-3, 0, 7).measured(),
                DoubtCode.UNDERSAMPLED,
                Severity.WARNING);
        hasNone(CLEAN.sampled(50, 10, 0).noisy(0.2, 0, 8).measured());
    }

    @Test
    void gapsOfMoreThanOnePercentRefuse() {
        hasNone(withGaps(0));
        hasOnly(withGaps(40), DoubtCode.MISSING_SAMPLES, Severity.WARNING);
        hasOnly(withGaps(60), DoubtCode.MISSING_SAMPLES, Severity.REFUSAL);
    }

    @Test
    void aSwingOfFewerThan32CodesWarns() {
        hasNone(CLEAN.noisy(0.03, 2.0 / 40, 2).measured());
        hasOnly(CLEAN.noisy(0.03, 2.0 / 24, 2).measured(), DoubtCode.LOW_RESOLUTION, Severity.WARNING);
    }

    @Test
    void aFundamentalMoreThanTwoPercentOffWarns() {
        hasNone(WaveformMeasurement.of(WaveformInput.of(CLEAN.waveform()).expecting(TestRecord.FREQUENCY / 1.015)));
        hasOnly(
                WaveformMeasurement.of(WaveformInput.of(CLEAN.waveform()).expecting(TestRecord.FREQUENCY / 1.025)),
                DoubtCode.WRONG_FREQUENCY,
                Severity.WARNING);
    }

    /** The sheet says 3 kHz, where a clipped wave of 1 kHz has its third harmonic. */
    @Test
    void aHarmonicIsNotTakenForTheFundamental() {
        DoubleUnaryOperator clipped = p -> TestRecord.clip(0.4, 0.4).applyAsDouble(TestRecord.SINE.applyAsDouble(p));
        WaveformResult result = WaveformMeasurement.of(
                WaveformInput.of(TestRecord.of(clipped).noisy(1e-3, 0, 6).waveform())
                        .expecting(3 * TestRecord.FREQUENCY));
        hasOnly(result, DoubtCode.WRONG_FREQUENCY, Severity.WARNING);
        assertThat(Said.doubt(result.doubts().get(0)))
                .startsWith("the fundamental lies at 999.99")
                .endsWith("expected was 3000.00 Hz");
    }

    @Test
    void whereNothingIsAtTheExpectedFrequencyTheLineThatIsThereIsNamed() {
        WaveformResult result = WaveformMeasurement.of(
                WaveformInput.of(CLEAN.noisy(0.05, 0, 7).waveform()).expecting(TestRecord.FREQUENCY / 3));
        hasOnly(result, DoubtCode.NO_FUNDAMENTAL, Severity.REFUSAL);
        assertThat(Said.doubt(result.doubts().get(0)))
                .isEqualTo("no line near 333.333 Hz stands above the noise: the strongest line lies at 1000 Hz");
    }

    @Test
    void noiseAloneHasNoFundamental() {
        hasOnly(TestRecord.of(p -> 0).noisy(0.1, 0, 3).measured(), DoubtCode.NO_FUNDAMENTAL, Severity.REFUSAL);
    }

    @Test
    void anInputWithMoreThanOnePercentDistortionWarns() {
        DoubleUnaryOperator halved = x -> x / 2;
        hasNone(WaveformMeasurement.of(distorted(0.009).through(halved)));
        hasOnly(WaveformMeasurement.of(distorted(0.011).through(halved)), DoubtCode.DISTORTED_INPUT, Severity.WARNING);
    }

    private static TestRecord distorted(double second) {
        return TestRecord.of(p -> TestRecord.SINE.applyAsDouble(p) + second * Math.cos(4 * Math.PI * p))
                .noisy(1e-3, 0, 4);
    }

    /** The span of 255 codes is that of an eight-bit converter; the same plateau over 150 codes is the unit's own. */
    @Test
    void aPlateauAtTheConvertersEndIsOverRangeAndOneInsideIsNot() {
        DoubleUnaryOperator flat = p -> TestRecord.clip(0.8, 0.8).applyAsDouble(TestRecord.SINE.applyAsDouble(p));
        hasOnly(TestRecord.of(flat).noisy(0, 1.6 / 255, 5).measured(), DoubtCode.OVER_RANGE, Severity.REFUSAL);
        hasNone(TestRecord.of(flat).noisy(0, 1.6 / 150, 5).measured());
    }
}
