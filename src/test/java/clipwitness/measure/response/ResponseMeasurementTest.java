package clipwitness.measure.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.capture.Waveform;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.ReasonCode;
import clipwitness.reason.ResponseReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** One point of the response from a steady sine, many from a sweep, and what makes them doubtful. */
class ResponseMeasurementTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final double RATE = 48_000;

    private static WaveformResult wave(MadeUpCapture capture) {
        return capture.done().waveform().orElseThrow();
    }

    private static MadeUpCapture withInput() {
        return MadeUpCapture.ordinary("a", 50)
                .with(WaveformQuantity.THD, 0.1, 0.01)
                .with(WaveformQuantity.GAIN, 12, 0.02)
                .with(WaveformQuantity.PHASE, -30, 0.1)
                .with(WaveformQuantity.FUNDAMENTAL, 2, 0.02)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.25, 0.001);
    }

    private static MadeUpCapture outputAlone(double volts) {
        return MadeUpCapture.capture("a").with(WaveformQuantity.FUNDAMENTAL, volts, 0.02);
    }

    private static List<ReasonCode> doubts(ResponseResult result) {
        return result.doubts().stream().map(d -> d.reason().code()).toList();
    }

    @Test
    void aSineWithItsInputIsAPointWithGainAndPhase() {
        ResponseResult result = ResponseMeasurement.ofSine(wave(withInput()), 440, OptionalDouble.of(7));
        assertThat(result.swept()).isFalse();
        assertThat(result.refused()).isFalse();
        assertThat(result.inputPeak()).hasValue(0.25);
        assertThat(result.points()).singleElement().satisfies(p -> {
            assertThat(p.frequency()).isEqualTo(440);
            assertThat(p.gain().value()).hasValue(12);
            assertThat(p.phase().value()).hasValue(-30);
            assertThat(p.coherence()).isEmpty();
        });
        assertThat(result.doubts()).isEmpty();
    }

    /** 2 V over 0.5 V are 20 lg 4 = 12.04 dB; 1 % of the output is 0.0869 dB. */
    @Test
    void withoutAnInputTheGainIsOverTheLevelOfTheGenerator() {
        ResponseResult result = ResponseMeasurement.ofSine(wave(outputAlone(2)), 440, OptionalDouble.of(0.5));
        Measured.Value gain = result.points().get(0).gain().asValue().orElseThrow();
        assertThat(gain.number()).isCloseTo(12.0412, within(1e-4));
        assertThat(gain.unit()).isEqualTo(Unit.DECIBEL);
        assertThat(gain.standardUncertainty()).isCloseTo(0.08686, within(1e-5));
        assertThat(result.inputPeak()).isEmpty();
    }

    private static ReasonCode why(WaveformResult wave, OptionalDouble level) {
        Measured gain =
                ResponseMeasurement.ofSine(wave, 440, level).points().get(0).gain();
        return gain.reason().orElseThrow().code();
    }

    @Test
    void withoutALevelOrAnOutputThereIsNoGain() {
        assertThat(why(wave(outputAlone(2)), NONE)).isEqualTo(ResponseReason.NO_INPUT_FOR_RESPONSE);
        assertThat(why(wave(outputAlone(0)), OptionalDouble.of(1))).isEqualTo(ResponseReason.NO_INPUT_FOR_RESPONSE);
        WaveformResult hidden =
                wave(MadeUpCapture.capture("a").refused(WaveformQuantity.FUNDAMENTAL, FigureReason.LINE_HIDDEN));
        assertThat(why(hidden, OptionalDouble.of(1))).isEqualTo(FigureReason.LINE_HIDDEN);
    }

    /** Distortion that is more than 1 % beyond its uncertainty: the stage does not answer as a filter does. */
    @Test
    void aSineThatClipsIsDoubted() {
        assertThat(doubts(ResponseMeasurement.ofSine(
                        wave(withInput().with(WaveformQuantity.THD, 1.5, 0.125)), 440, NONE)))
                .containsExactly(DoubtReason.RESPONSE_CLIPPED);
        assertThat(doubts(ResponseMeasurement.ofSine(
                        wave(withInput().with(WaveformQuantity.THD, 1.25, 0.125)), 440, NONE)))
                .isEmpty();
    }

    @Test
    void aRefusedCaptureHasNoPoint() {
        ResponseResult result = ResponseMeasurement.ofSine(
                wave(withInput().doubting(Doubt.of(Severity.REFUSAL, DoubtReason.NO_FUNDAMENTAL))), 440, NONE);
        assertThat(result.points()).isEmpty();
        assertThat(result.refused()).isTrue();
        ResponseResult warned = ResponseMeasurement.ofSine(
                wave(withInput().doubting(Doubt.of(Severity.WARNING, DoubtReason.NO_FUNDAMENTAL))), 440, NONE);
        assertThat(warned.points()).hasSize(1);
        assertThat(warned.refused()).isFalse();
        assertThat(doubts(warned)).containsExactly(DoubtReason.NO_FUNDAMENTAL);
    }

    /** From 20 Hz to 20 kHz in 16,384 samples, 0.05 V peak. */
    private static double[] sweep() {
        double[] values = new double[16_384];
        double octaves = Math.log(1000);
        for (int i = 0; i < values.length; i++) {
            double t = (double) i / values.length;
            values[i] = 0.05 * Math.sin(2 * Math.PI * 20 * values.length / RATE / octaves * Math.expm1(octaves * t));
        }
        return values;
    }

    private static ResponseResult swept(double[] input, DoubleUnaryOperator stage) {
        double[] output = new double[input.length];
        for (int i = 0; i < output.length; i++) {
            output[i] = stage.applyAsDouble(input[i]);
        }
        return ResponseMeasurement.ofSweep(
                WaveformInput.of(volts(output)).withInput(volts(input)), VerticalRange.UNKNOWN);
    }

    private static Waveform volts(double... values) {
        return new Waveform(Samples.of(values), RATE, Unit.VOLT);
    }

    /** A stage of ten times: 20 dB everywhere, without a phase. */
    @Test
    void aSweepThroughAnAmplifierIsItsGain() {
        ResponseResult result = swept(sweep(), x -> 10 * x);
        assertThat(result.swept()).isTrue();
        assertThat(result.inputPeak().orElseThrow()).isCloseTo(0.05, within(1e-4));
        assertThat(result.doubts()).isEmpty();
        assertThat(new ResponseCurve(result.points()).measured())
                .hasSizeGreaterThan(60)
                .allSatisfy(p -> assertThat(p.gain().value().orElseThrow()).isCloseTo(20, within(1e-6)));
    }

    @Test
    void aSweepWithoutItsInputIsRefused() {
        ResponseResult result = ResponseMeasurement.ofSweep(WaveformInput.of(volts(sweep())), VerticalRange.UNKNOWN);
        assertThat(result.refused()).isTrue();
        assertThat(result.points()).isEmpty();
        assertThat(result.inputPeak()).isEmpty();
        assertThat(doubts(result)).containsExactly(DoubtReason.NOT_COMPARABLE_RESPONSE_INPUT);
    }

    /** One percent of 16,384 samples are 163; a gap repeats the sample before it. */
    @Test
    void aSweepMayMissOnePercentOfItsSamples() {
        assertThat(doubts(swept(gaps(164), x -> 10 * x))).containsExactly(DoubtReason.NOT_COMPARABLE_RESPONSE_GAPS);
        ResponseResult few = swept(gaps(5), x -> 10 * x);
        assertThat(few.refused()).isFalse();
        assertThat(new ResponseCurve(few.points()).gainAt(200).orElseThrow().number())
                .isCloseTo(20, within(0.05));
    }

    private static double[] gaps(int count) {
        double[] values = sweep();
        for (int i = 0; i < count; i++) {
            values[97 * i + 50] = Double.NaN;
        }
        return values;
    }

    @Test
    void silenceHasNoResponse() {
        assertThat(doubts(swept(new double[16_384], x -> x))).containsExactly(DoubtReason.NOT_COMPARABLE_RESPONSE_NONE);
    }
}
