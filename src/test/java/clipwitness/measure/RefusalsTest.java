package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.measure.pair.HarmonicAtEqualLevel;
import clipwitness.measure.series.ThdCurve;
import clipwitness.quantity.Unit;
import clipwitness.reason.DoubtCode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Each figure that cannot be given says why. */
class RefusalsTest {
    private static final TestRecord SINE = TestRecord.of(TestRecord.SINE).noisy(1e-3, 0, 1);

    @Test
    void aCurveWithoutAnyDistortionFigure() {
        Measured mark = Measured.withNoise(3, Unit.PERCENT, 0.01);
        assertThat(Said.reason(ThdCurve.of(List.of(), List.of())
                        .gainAt(mark.asValue().orElseThrow())
                        .reason()))
                .hasValue("no setting has a distortion figure");
    }

    @Test
    void tooFewSamplesInTheStraightPart() {
        WaveformResult result = WaveformMeasurement.of(SINE.sampled(30, 2.5, 0).through(x -> x));
        assertThat(Said.reason(result.get(WaveformQuantity.SMALL_SIGNAL_GAIN).reason()))
                .hasValue("too few samples lie in the straight part");
    }

    /** 4 x³ - x falls through its centre, although its fundamental (x (3 x² - 1) for a sine of peak x) is upright at full drive. */
    @Test
    void anOutputThatFallsWhereTheInputRises() {
        WaveformResult result = WaveformMeasurement.of(SINE.through(x -> 4 * x * x * x - x));
        assertThat(Said.reason(result.get(WaveformQuantity.SMALL_SIGNAL_GAIN).reason()))
                .hasValue("the output does not rise with the input at its centre");
    }

    /** The highest point is a needle amid the lower half of a square wave, narrower than a bin of the mean cycle. */
    @Test
    void anUpperHalfWaveOfOneBinHasNoLean() {
        DoubleUnaryOperator needle = p -> p < 0.5 ? 0.5 : Math.abs(p - 0.7511) < 0.0015 ? 3 : -0.5;
        WaveformResult result = TestRecord.of(needle).sampled(997.3, 10.2, 0).measured();
        assertThat(Said.reason(result.get(WaveformQuantity.LEAN).reason()))
                .hasValue("the upper half-wave cannot be distinguished from the lower one");
    }

    /** 0.45 of 9 samples a period is 4.05. */
    @Test
    void nineSamplesAPeriodHoldFourHarmonics() {
        WaveformResult result = SINE.sampled(9, 40, 0).measured();
        assertThat(Said.reason(result.get(WaveformQuantity.HIGH_HARMONICS).reason()))
                .hasValue("only 4 harmonics lie below 0.45 of the sample rate");
    }

    @Test
    void levelMatchedNeedsTheHarmonicInBothAboveTheNoise() {
        WaveformResult sine = SINE.measured();
        assertThat(Said.reason(HarmonicAtEqualLevel.of(SINE.sampled(500, 0.8, 0).measured(), 1)
                        .reason()))
                .hasValue("one of the captures could not be measured");
        assertThat(Said.reason(HarmonicAtEqualLevel.of(sine, 21).reason()))
                .hasValue("harmonic 21 was not measured in both captures");
        assertThat(Said.reason(HarmonicAtEqualLevel.of(sine, 7).reason()))
                .hasValue("harmonic 7 is known too roughly in at least one state");
    }

    /** A screen of 0.2 V a division ends the wave at 4 divisions: the noise that the rest of the record has is gone there. */
    @Test
    void aSideWithoutNoiseAtAWholeNumberOfDivisionsIsOverRange() {
        assertThat(cutAt(0.8).doubts())
                .filteredOn(d -> d.code() == DoubtCode.OVER_RANGE)
                .extracting(Said::doubt)
                .singleElement()
                .asString()
                .endsWith("samples lie on the upper extreme, where the noise vanishes");
        assertThat(cutAt(0.87).doubts()).isEmpty();
    }

    private static WaveformResult cutAt(double end) {
        Waveform wave = TestRecord.of(TestRecord.SINE).noisy(0.01, 0.01, 3).waveform();
        Waveform cut = new Waveform(wave.samples().map(v -> Math.min(v, end)), wave.sampleRate(), Unit.VOLT);
        VerticalScale scale = new VerticalScale(0.2, OptionalDouble.empty());
        return WaveformMeasurement.of(new WaveformInput(
                cut, Optional.empty(), OptionalDouble.of(TestRecord.FREQUENCY), Optional.of(scale), Optional.empty()));
    }
}
