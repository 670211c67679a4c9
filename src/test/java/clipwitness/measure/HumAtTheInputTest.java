package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hum at the input of a stage in clipping bends its output; hum between harmonics; a slow wave close to the tone; hum of the input channel. */
class HumAtTheInputTest {
    private static final double RATE = 1e6;

    /**
     * 2 mV of 50 Hz beside 100 mV of 1 kHz into a symmetrical stage, tanh(30 x): without the hum there is no even harmonic. In half a period of the
     * mains the hum is 1.3 mV on average, and makes one of about -50 dBc.
     */
    @ParameterizedTest
    @ValueSource(doubles = {10, 15})
    void evenHarmonicsThatHumMakesAreBoundsAndTheDoubtSaysSo(double milliseconds) {
        WaveformResult result = clipped(milliseconds, 0.002, 11);
        assertThat(result.doubts()).extracting(Doubt::code).contains(DoubtCode.SLOW_WAVE);
        assertThat(result.doubts()).extracting(d -> d.reason().code()).contains(DoubtReason.SLOW_WAVE_MOVES);
        assertThat(result.harmonics())
                .filteredOn(h -> h.order() % 2 == 0)
                .allSatisfy(h -> assertThat(h.level().asValue().orElseThrow().isUpperBound())
                        .as("harmonic %s", h.order())
                        .isTrue());
        assertThat(result.get(WaveformQuantity.EVEN_HARMONICS)
                        .asValue()
                        .orElseThrow()
                        .isUpperBound())
                .isTrue();
        assertThat(result.get(WaveformQuantity.HALF_WAVE_RESIDUE)
                        .asValue()
                        .orElseThrow()
                        .isUpperBound())
                .isTrue();
    }

    /** Without the hum both halves are alike: the intervals hold 0. */
    @Test
    void figuresOfBothHalvesHoldThatTheyAreAlike() {
        WaveformResult result = clipped(15, 0.0005, 11);
        for (WaveformQuantity q : List.of(WaveformQuantity.ASYMMETRY, WaveformQuantity.CLIP_ASYMMETRY)) {
            Measured.Value figure = result.get(q).asValue().orElseThrow();
            assertThat(Math.abs(figure.number())).as(q.key()).isLessThan(figure.expanded());
        }
    }

    /** Odd harmonics and level of the same stage without hum lie within their intervals. */
    @Test
    void whatTheHumDoesNotMoveIsStillMeasured() {
        WaveformResult with = clipped(10, 0.002, 11);
        WaveformResult without = clipped(10, 0, 11);
        assertThat(without.doubts()).extracting(Doubt::code).doesNotContain(DoubtCode.SLOW_WAVE);
        assertThat(without.harmonics().get(0).level().asValue().orElseThrow().shown())
                .isLessThan(-70);
        Measured.Value third = with.harmonics().get(1).level().asValue().orElseThrow();
        assertThat(third.isUpperBound()).isFalse();
        assertThat(third.number())
                .isCloseTo(without.harmonics().get(1).level().value().orElseThrow(), within(0.1));
    }

    /** Over whole periods of the mains the hum is 0 on average, and makes no even harmonic: the bound lies low. */
    @Test
    void overWholePeriodsOfTheMainsLittleIsLeftOpen() {
        WaveformResult result = clipped(100, 0.002, 11);
        assertThat(result.harmonics().get(0).level().asValue().orElseThrow().shown())
                .isLessThan(-55);
    }

    /** The sheet's mains, here 60 Hz, name the line: at 1.02 kHz no multiple of 50 Hz lies near. */
    @Test
    void aLineOfTheMainsBetweenHarmonicsIsFoundAndTakenOut() {
        WaveformResult result =
                measured(t -> Math.sin(2 * Math.PI * 1000 * t) + 0.01 * Math.sin(2 * Math.PI * 1320 * t + 1), 40, 60);
        assertThat(result.doubts()).extracting(d -> d.reason().code()).contains(DoubtReason.SLOW_WAVE_BETWEEN);
        SlowTone tone = result.slowTone().orElseThrow();
        assertThat(tone.frequency()).isCloseTo(1320, within(3.0));
        assertThat(tone.amplitude().number()).isCloseTo(0.01, within(3e-4));
    }

    /** 780 Hz under 1 kHz. */
    @Test
    void aBeatCloseToTheToneIsFound() {
        WaveformResult result =
                measured(t -> Math.sin(2 * Math.PI * 1000 * t) + 0.01 * Math.sin(2 * Math.PI * 780 * t), 20, 50);
        assertThat(result.slowTone().orElseThrow().frequency()).isCloseTo(780, within(10.0));
    }

    private static WaveformResult measured(DoubleUnaryOperator wave, double milliseconds, double mains) {
        return WaveformMeasurement.of(WaveformInput.of(record(wave, milliseconds, 1, 5))
                .expecting(1000)
                .besideMains(OptionalDouble.of(mains)));
    }

    private static WaveformResult clipped(double milliseconds, double hum, long seed) {
        DoubleUnaryOperator input =
                t -> 0.1 * Math.sin(2 * Math.PI * 1000 * t) + hum * Math.sin(2 * Math.PI * 50 * t + 0.2);
        return WaveformMeasurement.of(WaveformInput.of(
                        record(t -> 0.5 * Math.tanh(30 * input.applyAsDouble(t)), milliseconds, 0.5, seed))
                .withInput(record(input, milliseconds, 0.1, seed + 1))
                .expecting(1000));
    }

    /** Sampled with noise of half a code, 1 of 200 a range. */
    private static Waveform record(DoubleUnaryOperator wave, double milliseconds, double range, long seed) {
        Random random = new Random(seed);
        double step = 2 * range / 200;
        return new Waveform(
                Samples.of(IntStream.range(0, (int) (milliseconds * RATE / 1000))
                        .mapToDouble(i -> wave.applyAsDouble(i / RATE) + 0.5 * step * random.nextGaussian())
                        .map(v -> Math.rint(v / step) * step)
                        .toArray()),
                RATE,
                Unit.VOLT);
    }
}
