package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Said;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.signal.ReferenceRow;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Sines of peak 1 clipped at two levels against hard-clipped-sine.csv: Fourier integrals of the clipped sine. The records have 1000 samples a
 * cycle, for which the reference allows 2e-5 in a harmonic over the fundamental.
 */
class HardClippedSineTest {
    private static final int SAMPLES_PER_CYCLE = 1000;
    private static final double RECORD = 2e-5;
    private static final double ONE_DECIBEL = 1.1220184543019633;

    private static final Map<ReferenceRow, WaveformResult> MEASURED = new ConcurrentHashMap<>();

    static Stream<ReferenceRow> rows() {
        return ReferenceRow.of(HardClippedSineTest.class, "hard-clipped-sine.csv");
    }

    private static double up(ReferenceRow row) {
        return row.number("upper level / input peak");
    }

    private static double down(ReferenceRow row) {
        return row.number("lower level / input peak");
    }

    private static WaveformResult measured(ReferenceRow row) {
        return MEASURED.computeIfAbsent(
                row,
                r -> WaveformMeasurement.of(TestRecord.of(TestRecord.SINE)
                        .sampled(SAMPLES_PER_CYCLE, 8, 0.00037)
                        .through(TestRecord.clip(up(r), down(r)))));
    }

    private static double value(ReferenceRow row, WaveformQuantity quantity) {
        return Values.value(measured(row), quantity);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void harmonicsMeanAndRmsAreTheReferences(ReferenceRow row) {
        for (int k = 1; k <= 15; k++) {
            assertThat(measured(row).spectrum().orElseThrow().amplitude(k))
                    .as("A" + k)
                    .isCloseTo(
                            Math.abs(row.number("A" + k + " signed cosine series about positive crest")),
                            within(RECORD * row.number("A1 signed cosine series about positive crest")));
        }
        assertThat(value(row, WaveformQuantity.MEAN)).isCloseTo(row.number("dc"), within(RECORD));
        assertThat(value(row, WaveformQuantity.RMS)).isCloseTo(row.number("rms without dc"), within(RECORD));
    }

    /** The reference's phases are 0 or 180 degrees against the positive crest of the input; here the fundamental is the reference. */
    @ParameterizedTest
    @MethodSource("rows")
    void phasesAreThoseOfTheCosineSeries(ReferenceRow row) {
        for (Harmonic harmonic : measured(row).harmonics()) {
            if (harmonic.order() <= 15 && harmonic.phase().isPresent()) {
                double signed = row.number("A" + harmonic.order() + " signed cosine series about positive crest");
                if (Math.abs(signed) > 1e-3) {
                    assertThat(Math.cos(Math.toRadians(harmonic.phase().getAsDouble())))
                            .as("phase " + harmonic.order())
                            .isCloseTo(Math.signum(signed), within(1e-3));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void thdLiesBetweenThatOf15HarmonicsAndThatOfAll(ReferenceRow row) {
        assertThat(value(row, WaveformQuantity.THD) / 100)
                .isBetween(row.number("THD_F H2..H15") - 2 * RECORD, row.number("THD_F all harmonics") + 2 * RECORD);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void peaksAreTheLevelsFromTheMean(ReferenceRow row) {
        double mean = row.number("dc");
        assertThat(value(row, WaveformQuantity.PEAK_UP)).isCloseTo(up(row) - mean, within(5e-4 * up(row)));
        assertThat(value(row, WaveformQuantity.PEAK_DOWN)).isCloseTo(down(row) + mean, within(5e-4 * down(row)));
        assertThat(value(row, WaveformQuantity.CREST_FACTOR))
                .isCloseTo(row.number("crest factor without dc"), within(1e-3));
        assertThat(value(row, WaveformQuantity.ASYMMETRY))
                .isCloseTo(100 * (up(row) - down(row) - 2 * mean) / (up(row) + down(row)), within(0.05));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void clipLevelsAreTheLevelsThemselves(ReferenceRow row) {
        assertThat(value(row, WaveformQuantity.CLIP_UP)).isCloseTo(up(row), within(1e-3 * up(row)));
        assertThat(value(row, WaveformQuantity.CLIP_DOWN)).isCloseTo(down(row), within(1e-3 * down(row)));
        assertThat(value(row, WaveformQuantity.CLIP_ASYMMETRY))
                .isCloseTo(100 * row.number("(upper-lower)/(upper+lower)"), within(0.1));
    }

    /** The sine stays above 0.9 of a peak, counted from the mean, between the two angles whose sine is that level. */
    @ParameterizedTest
    @MethodSource("rows")
    void dwellIsTheTimeBetweenTheAnglesAt90PercentOfThePeak(ReferenceRow row) {
        double mean = row.number("dc");
        assertThat(value(row, WaveformQuantity.DWELL_UP) / 100)
                .isCloseTo(Math.acos(mean + 0.9 * (up(row) - mean)) / Math.PI, within(0.0014));
        assertThat(value(row, WaveformQuantity.DWELL_DOWN) / 100)
                .isCloseTo(Math.acos(0.9 * (down(row) + mean) - mean) / Math.PI, within(0.0014));
    }

    static Stream<ReferenceRow> clippedByMoreThanOneDecibel() {
        return rows().filter(row -> Math.max(up(row), down(row)) * ONE_DECIBEL < 1);
    }

    /** The slope before the corner is 1, so a level c is 1 dB short of the line where the input is c times 10^(1/20). */
    @ParameterizedTest
    @MethodSource("clippedByMoreThanOneDecibel")
    void onsetIsOneDecibelBeyondTheCorner(ReferenceRow row) {
        assertThat(value(row, WaveformQuantity.SMALL_SIGNAL_GAIN)).isCloseTo(0, within(0.01));
        assertThat(value(row, WaveformQuantity.ONSET_UP)).isCloseTo(up(row) * ONE_DECIBEL, within(0.005 * up(row)));
        assertThat(value(row, WaveformQuantity.ONSET_DOWN))
                .isCloseTo(down(row) * ONE_DECIBEL, within(0.005 * down(row)));
    }

    static Stream<ReferenceRow> notQuiteOneDecibel() {
        return rows().filter(row -> up(row) * ONE_DECIBEL > 1);
    }

    @ParameterizedTest
    @MethodSource("notQuiteOneDecibel")
    void aWaveClippedByLessThanOneDecibelDoesNotReachItsOnset(ReferenceRow row) {
        assertThat(Said.reason(measured(row).get(WaveformQuantity.ONSET_UP).reason()))
                .contains("not reached");
    }

    /** A perfect corner is no decibel wide. */
    @ParameterizedTest
    @MethodSource("clippedByMoreThanOneDecibel")
    void aPerfectCornerHasNoKneeBeyondItsUncertainty(ReferenceRow row) {
        assertThat(Values.uncertainty(measured(row), WaveformQuantity.KNEE_UP)).isLessThan(2.5);
        assertThat(value(row, WaveformQuantity.KNEE_UP))
                .isBetween(0.0, 0.05 + Values.uncertainty(measured(row), WaveformQuantity.KNEE_UP));
    }
}
