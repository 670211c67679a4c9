package clipwitness.measure.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** An input that is not fit takes the figures with it that need it, and leaves those of the output. */
class InputScreenTest {
    private static final TestRecord SINE = TestRecord.of(TestRecord.SINE).noisy(2e-3, 0, 1);

    /** A sine at the output, and what an operation makes of it at the input. */
    private static WaveformResult beside(UnaryOperator<double[]> input) {
        Waveform output = SINE.waveform();
        Samples samples = Samples.of(input.apply(output.samples().toArray()));
        return WaveformMeasurement.of(new WaveformInput(
                output,
                Optional.of(new Waveform(samples, output.sampleRate(), Unit.VOLT)),
                OptionalDouble.of(TestRecord.FREQUENCY),
                Optional.empty(),
                Optional.empty()));
    }

    private static UnaryOperator<double[]> gaps(double share) {
        return v -> {
            Arrays.fill(v, 0, (int) (share * v.length), Double.NaN);
            return v;
        };
    }

    private static void warnsOf(WaveformResult result, DoubtCode code) {
        assertThat(result.doubts())
                .extracting(Doubt::code, Doubt::severity)
                .containsExactly(tuple(code, Severity.WARNING));
        assertThat(Said.doubt(result.doubts().get(0))).contains("input");
    }

    private static void onlyTheOutputIsMeasured(WaveformResult result) {
        assertThat(result.get(WaveformQuantity.RMS).value()).isPresent();
        assertThat(result.get(WaveformQuantity.GAIN).reason())
                .contains(result.doubts().get(0).reason());
        assertThat(result.transfer()).isEmpty();
    }

    @Test
    void anInputLikeTheOutputGivesAGainWithoutDoubt() {
        WaveformResult result = beside(v -> v);
        assertThat(result.doubts()).isEmpty();
        assertThat(result.get(WaveformQuantity.GAIN).value().orElseThrow()).isZero();
    }

    @Test
    void anInputWithoutTheToneGivesNoGain() {
        WaveformResult result = beside(v ->
                TestRecord.of(p -> 0).noisy(2e-3, 0, 2).waveform().samples().toArray());
        warnsOf(result, DoubtCode.NO_FUNDAMENTAL);
        onlyTheOutputIsMeasured(result);
    }

    @Test
    void anInputWithFewGapsIsUsedAndOneWithManyIsNot() {
        WaveformResult few = beside(gaps(0.009));
        warnsOf(few, DoubtCode.MISSING_SAMPLES);
        assertThat(few.get(WaveformQuantity.GAIN).value()).isPresent();
        WaveformResult many = beside(gaps(0.011));
        warnsOf(many, DoubtCode.MISSING_SAMPLES);
        onlyTheOutputIsMeasured(many);
    }

    /** In codes of a hundredth of its peak, cut at 127 of them, behind noise of half a code. */
    @Test
    void anInputBeyondItsConverterGivesNoGain() {
        WaveformResult result = beside(v -> cut(v.length));
        warnsOf(result, DoubtCode.OVER_RANGE);
        onlyTheOutputIsMeasured(result);
    }

    private static double[] cut(int count) {
        double[] wave = TestRecord.of(p -> 0.4 + 1.2 * TestRecord.SINE.applyAsDouble(p))
                .noisy(5e-3, 0.01, 3)
                .waveform()
                .samples()
                .toArray();
        return Arrays.stream(Arrays.copyOf(wave, count))
                .map(v -> Math.min(v, 1.27))
                .toArray();
    }
}
