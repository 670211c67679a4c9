package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.signal.ReferenceRow;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Records of the shunt clipper, 1000 samples a period, input and output, without noise, measured and held to
 * src/test/resources/clipwitness/bench/diode-clipper-sine.csv. The reference allows a record 3e-5 V. Two kinds of figure need more room
 * where the source's peak is above 2 V and the output all but a square wave:
 *
 * <p>Peaks are read from a polynomial through the crest, which rounds the corner of a plateau: 5e-4 of the peak, a fifteenth of
 * the step of an 8-bit converter that just holds the wave.
 *
 * <p>Clip levels count from the output at the moment when the input crosses its mean, and the edge passes there within 10 of the
 * 1000 samples, fewer than three bins of the mean cycle: 1 % of the swing.
 */
class ShuntClipperRecordTest {
    private static final int SAMPLES_A_PERIOD = 1000;
    private static final double RECORD = 3e-5;
    private static final double HARD = 2;

    private static final Map<ReferenceRow, WaveformResult> EIGHT_PERIODS = new ConcurrentHashMap<>();

    static Stream<ReferenceRow> sines() {
        return ReferenceRow.of(ClipperCase.class, "diode-clipper-sine.csv");
    }

    static Stream<ReferenceRow> hardestDriven() {
        return sines().filter(row -> row.number("source peak") == 9);
    }

    private static WaveformResult measured(ReferenceRow row) {
        return EIGHT_PERIODS.computeIfAbsent(row, r -> measured(r, 8));
    }

    private static WaveformResult measured(ReferenceRow row, double periods) {
        ShuntClipper clipper = ClipperCase.named(row.text("case"));
        double peak = row.number("source peak");
        Samples input = Samples.of(IntStream.range(0, (int) (periods * SAMPLES_A_PERIOD))
                .mapToDouble(i -> peak * Math.sin(2 * Math.PI * i / SAMPLES_A_PERIOD + 0.3))
                .toArray());
        return WaveformMeasurement.of(WaveformInput.of(wave(input.map(clipper::outputFor)))
                .withInput(wave(input))
                .expecting(1000));
    }

    private static Waveform wave(Samples samples) {
        return new Waveform(samples, 1000.0 * SAMPLES_A_PERIOD, Unit.VOLT);
    }

    private static double value(WaveformResult result, WaveformQuantity quantity) {
        return result.get(quantity).value().orElseThrow();
    }

    private static double harmonic(ReferenceRow row, int order) {
        return Math.abs(row.number("A" + order + " signed cosine series about positive crest"));
    }

    private static Offset<Double> room(ReferenceRow row, double shareWhereHard, double level) {
        return within(row.number("source peak") > HARD ? shareWhereHard * level : RECORD);
    }

    @ParameterizedTest
    @MethodSource("sines")
    void harmonicsMeanAndRmsAreTheReferences(ReferenceRow row) {
        WaveformResult result = measured(row);
        for (int order = 1; order <= 15; order++) {
            assertThat(result.spectrum().orElseThrow().amplitude(order))
                    .as("A" + order)
                    .isCloseTo(harmonic(row, order), within(RECORD));
        }
        assertThat(value(result, WaveformQuantity.MEAN)).isCloseTo(row.number("dc"), within(RECORD));
        assertThat(value(result, WaveformQuantity.RMS)).isCloseTo(row.number("rms without dc"), within(RECORD));
    }

    /** With 20 harmonics the distortion lies between that of the first 15, which the reference lists, and that of all. */
    @ParameterizedTest
    @MethodSource("sines")
    void distortionLiesBetweenThatOf15HarmonicsAndThatOfAll(ReferenceRow row) {
        double power = IntStream.rangeClosed(2, 15)
                .mapToDouble(order -> harmonic(row, order))
                .map(a -> a * a)
                .sum();
        assertThat(value(measured(row), WaveformQuantity.THD) / 100)
                .isBetween(Math.sqrt(power) / harmonic(row, 1) - RECORD, row.number("THD_F to H199") + RECORD);
    }

    @ParameterizedTest
    @MethodSource("sines")
    void peaksAndClipLevelsAreTheReferencesPlateaus(ReferenceRow row) {
        WaveformResult result = measured(row);
        double mean = row.number("dc");
        double up = row.number("plateau max");
        double down = -row.number("plateau min");
        assertThat(value(result, WaveformQuantity.PEAK_UP)).isCloseTo(up - mean, room(row, 5e-4, up - mean));
        assertThat(value(result, WaveformQuantity.PEAK_DOWN)).isCloseTo(down + mean, room(row, 5e-4, down + mean));
        assertThat(value(result, WaveformQuantity.CLIP_UP)).isCloseTo(up, room(row, 1e-2, up + down));
        assertThat(value(result, WaveformQuantity.CLIP_DOWN)).isCloseTo(down, room(row, 1e-2, up + down));
    }

    /** Harmonics above the twentieth lean on the others when the periods are not whole: 5e-4 of the fundamental, -66 dBc. */
    @ParameterizedTest
    @MethodSource("hardestDriven")
    void aRecordNeedsNoWholeNumberOfPeriods(ReferenceRow row) {
        WaveformResult result = measured(row, 6.37);
        for (int order = 1; order <= 15; order++) {
            assertThat(result.spectrum().orElseThrow().amplitude(order))
                    .as("A" + order)
                    .isCloseTo(harmonic(row, order), within(5e-4 * harmonic(row, 1)));
        }
    }
}
