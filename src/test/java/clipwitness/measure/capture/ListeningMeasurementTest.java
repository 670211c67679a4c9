package clipwitness.measure.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.ListeningFigure;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Recordings of playing whose level is known: a sine has an rms of its amplitude over the square root of 2, a square wave of its amplitude. */
class ListeningMeasurementTest {
    private static final int RATE = 48_000;
    private static final int FULL = 1 << 15; // steps of 16 bit
    private static final double VOLTS = 2.5;

    /** Two seconds as a converter of 16 bit records them, fractions of full scale. */
    private static Samples recorded(IntToDoubleFunction wave) {
        double[] values = new double[2 * RATE];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.max(-FULL, Math.min(FULL - 1, Math.rint(wave.applyAsDouble(i) * FULL))) / FULL;
        }
        return Samples.of(values);
    }

    private static Samples sine(double hertz, double amplitude) {
        return recorded(i -> amplitude * Math.sin(2 * Math.PI * hertz * i / RATE));
    }

    private static ListeningInput sound(Samples samples) {
        return new ListeningInput(new Waveform(samples, RATE, Unit.VOLT), false, OptionalDouble.of(1), 0.03);
    }

    private static ListeningResult of(Samples samples) {
        return ListeningMeasurement.of(List.of(sound(samples)));
    }

    private static Measured.Value value(ListeningResult result, ListeningFigure figure) {
        return result.values().get(figure).asValue().orElseThrow();
    }

    @Test
    void aSineThatReachesFullScaleLiesThreeDecibelsBelowIt() {
        ListeningResult result = of(sine(1000, 1));
        Measured.Value rms = value(result, ListeningFigure.RMS_LEVEL);
        assertThat(rms.number()).isCloseTo(-10 * Math.log10(2), within(rms.expanded()));
        assertThat(rms.expanded()).isBetween(1e-5, 1e-3);
        assertThat(value(result, ListeningFigure.PEAK_LEVEL).number()).isCloseTo(0, within(1e-3));
        assertThat(result.lasts()).isEqualTo(2);
    }

    @Test
    void voltsAreGivenOnlyWhereTheyAreKnownAndWithTheAccuracyOfTheInstrument() {
        assertThat(of(sine(1000, 0.5)).values())
                .containsOnlyKeys(ListeningFigure.RMS_LEVEL, ListeningFigure.PEAK_LEVEL);
        Samples volts = sine(1000, 0.5).map(v -> v * VOLTS);
        ListeningResult result = ListeningMeasurement.of(List.of(
                new ListeningInput(new Waveform(volts, RATE, Unit.VOLT), true, OptionalDouble.of(VOLTS), 0.03)));
        Measured.Value rms = value(result, ListeningFigure.RMS);
        assertThat(rms.number()).isCloseTo(0.5 * VOLTS / Math.sqrt(2), within(1e-4));
        assertThat(rms.expanded()).isCloseTo(2 * 0.03 / Math.sqrt(3) * rms.number(), within(1e-4));
        assertThat(value(result, ListeningFigure.RMS_LEVEL).number())
                .isCloseTo(20 * Math.log10(0.5 / Math.sqrt(2)), within(1e-3));
    }

    @Test
    void theLoudestChannelGivesTheFiguresAndASilentOneIsNoDoubt() {
        ListeningResult result =
                ListeningMeasurement.of(List.of(sound(recorded(i -> 0)), sound(sine(200, 0.3)), sound(sine(200, 0.3))));
        assertThat(result.channel()).isEqualTo(1);
        assertThat(result.doubts()).isEmpty();
    }

    @Test
    void aRecordingThatHoldsNothingIsDoubtedAndHasNoLevel() {
        ListeningResult result = of(recorded(i -> 0.01));
        assertThat(result.doubts())
                .extracting(d -> d.reason().code())
                .containsExactly(DoubtReason.LOW_RESOLUTION_SILENT);
        assertThat(result.values().get(ListeningFigure.RMS_LEVEL).value()).isEmpty();
    }

    @Test
    void noiseFarBelowFullScaleIsSaidToBeNearlySilent() {
        Random random = new Random(4);
        ListeningResult result = of(recorded(i -> 1e-4 * random.nextGaussian()));
        assertThat(result.doubts()).extracting(Doubt::code).containsExactly(DoubtCode.LOW_RESOLUTION);
        assertThat(of(sine(200, 0.01)).doubts()).isEmpty();
    }

    @Test
    void tonesCutOffAtFullScaleAreDoubted() {
        assertThat(of(sine(200, 1.1)).doubts()).extracting(Doubt::code).containsExactly(DoubtCode.OVER_RANGE);
        assertThat(of(recorded(i -> Math.min(0.3, 1.3 * Math.sin(0.01 * i) - 0.1)))
                        .doubts())
                .extracting(d -> d.reason().code())
                .containsExactly(DoubtReason.OVER_RANGE);
    }

    /** The lowest string of a bass, 41.2 Hz, made as loud as 16 bit can hold. */
    @Test
    void theRoundTopsOfALowNoteThatJustReachFullScaleAreNoCut() {
        assertThat(of(sine(41.2, (FULL - 1.0) / FULL)).doubts()).isEmpty();
    }

    /** The flat top that a clipping stage makes ends where its diodes conduct, not where the converter does. */
    @Test
    void aClippingStageBelowFullScaleIsNoCut() {
        assertThat(of(recorded(i -> Math.max(-0.4, Math.min(0.4, Math.sin(0.02 * i)))))
                        .doubts())
                .isEmpty();
    }

    @Test
    void anOscilloscopeOfEightBitThatWasDrivenBeyondItsScreenIsDoubted() {
        double[] volts = new double[20_000];
        for (int i = 0; i < volts.length; i++) {
            volts[i] = 0.02 * Math.max(-128, Math.min(127, Math.rint(150 * Math.sin(0.01 * i))));
        }
        ListeningInput screen =
                new ListeningInput(new Waveform(Samples.of(volts), 1e5, Unit.VOLT), true, OptionalDouble.empty(), 0.03);
        assertThat(ListeningMeasurement.of(List.of(screen)).doubts())
                .extracting(Doubt::code)
                .containsExactly(DoubtCode.OVER_RANGE);
    }
}
