package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.fixture.ClippedWave;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Hum and drift under a tone of 1 kHz are found with their frequency and amplitude, and nothing is found in clean records. */
class SlowWaveTest {
    private static final double STEP = 2.0 / 256;

    static Stream<Arguments> cleanRecords() {
        return Stream.concat(ClippedWave.tuned(), ClippedWave.heldOut())
                .flatMap(wave -> DoubleStream.of(1.4, 2.2, 3.1, 5.42, 8.37, 17.77, 60)
                        .boxed()
                        .map(cycles -> Arguments.of(wave, cycles)));
    }

    @ParameterizedTest
    @MethodSource("cleanRecords")
    void nothingIsFoundInCleanRecordsHoweverShortOrCoarse(ClippedWave wave, double cycles) {
        Random random = new Random(17);
        for (double noise : new double[] {0, 0.1, 0.5, 2}) {
            for (double persistence : new double[] {0, 0.9}) {
                for (int i = 0; i < 4; i++) {
                    double gain = 1 + 0.02 * random.nextDouble();
                    WaveformResult result =
                            WaveformMeasurement.of(WaveformInput.of(TestRecord.of(p -> gain * wave.outputAt(p))
                                            .sampled(487.3 - 300 * (i % 2), cycles, random.nextDouble())
                                            .noisy(noise * STEP, STEP, random.nextLong())
                                            .withPersistence(persistence)
                                            .waveform())
                                    .expecting(TestRecord.FREQUENCY));
                    assertThat(result.slowTone())
                            .as("%s, %s cycles, noise %s, persistence %s", wave, cycles, noise, persistence)
                            .isEmpty();
                }
            }
        }
    }

    /** A second of sound holds many periods of a hum below the tone. */
    @Test
    void humInALongRecordIsFoundWhateverTheNumberOfItsPeriods() {
        for (double frequency : new double[] {130, 200}) {
            Waveform wave = new Waveform(
                    Samples.of(IntStream.range(0, 4_000)
                            .mapToDouble(i -> 0.5 * Math.sin(2 * Math.PI * 441.3 * i / 4_000)
                                    + 0.02 * Math.sin(2 * Math.PI * frequency * i / 4_000 + 0.3))
                            .toArray()),
                    4_000,
                    Unit.VOLT);
            SlowTone tone =
                    WaveformMeasurement.of(WaveformInput.of(wave)).slowTone().orElseThrow();
            assertThat(tone.frequency()).isCloseTo(frequency, org.assertj.core.data.Offset.offset(0.1));
            assertThat(tone.amplitude().number()).isCloseTo(0.02, org.assertj.core.data.Offset.offset(0.002));
        }
    }

    /** A sine of 50 Hz of an exactly known amplitude over 8.37 ms, a tenth of the record's tone at most. */
    @Test
    void humOf50HzIsNamedWithItsAmplitudeAndTakenOut() {
        for (double cycles : new double[] {8.37, 20, 40}) {
            WaveformResult result = measured(t -> 0.01 * Math.sin(2 * Math.PI * 50 * t + 0.3), cycles);
            assertThat(result.doubts()).extracting(Doubt::code).contains(DoubtCode.SLOW_WAVE);
            SlowTone tone = result.slowTone().orElseThrow();
            assertThat(tone.frequency()).isEqualTo(50);
            double low = IntStream.range(0, 1000)
                    .mapToDouble(i -> 0.01 * Math.sin(2 * Math.PI * 50 * cycles * i / 1e6 + 0.3))
                    .min()
                    .orElseThrow();
            double high = IntStream.range(0, 1000)
                    .mapToDouble(i -> 0.01 * Math.sin(2 * Math.PI * 50 * cycles * i / 1e6 + 0.3))
                    .max()
                    .orElseThrow();
            assertThat(tone.amplitude().number())
                    .isCloseTo((high - low) / 2, org.assertj.core.data.Offset.offset(0.0006));
            assertThat(result.harmonics().get(0).level().asValue().orElseThrow().shown())
                    .isLessThan(-66);
        }
    }

    /** A drift of 5 % of the swing from end to end leaks into the second harmonic by -44 dBc where it is not taken out. */
    @Test
    void driftIsFoundAndLeavesNoSecondHarmonic() {
        WaveformResult result = measured(t -> 0.1 * t / 0.00837, 8.37);
        assertThat(result.doubts()).extracting(Doubt::code).contains(DoubtCode.SLOW_WAVE);
        assertThat(result.harmonics().get(0).level().asValue().orElseThrow().shown())
                .isLessThan(-60);
    }

    private static WaveformResult measured(DoubleUnaryOperator slow, double cycles) {
        Random random = new Random(3);
        double rate = 1e6;
        double[] values = IntStream.range(0, (int) (cycles * rate / TestRecord.FREQUENCY))
                .mapToDouble(i -> Math.sin(2 * Math.PI * TestRecord.FREQUENCY * i / rate)
                        + slow.applyAsDouble(i / rate)
                        + 0.5 * STEP * random.nextGaussian())
                .map(v -> Math.rint(v / STEP) * STEP)
                .toArray();
        return WaveformMeasurement.of(WaveformInput.of(new Waveform(Samples.of(values), rate, Unit.VOLT))
                .expecting(TestRecord.FREQUENCY));
    }
}
