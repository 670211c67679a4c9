package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.signal.ReferenceRow;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Smooth limiters against soft-clip.csv (harmonics: closed forms and series) and soft-clip-levels.csv (their curves). */
class SoftClipTest {
    private static final int SAMPLES_PER_CYCLE = 1000;
    private static final double DRIVEN_FAR = 6;

    private static final Map<String, DoubleUnaryOperator> CURVES = Map.of(
            "tanh",
            Math::tanh,
            "2/pi*atan",
            u -> 2 / Math.PI * Math.atan(u),
            "algebraic u/sqrt(1+u^2)",
            u -> u / Math.sqrt(1 + u * u),
            "cubic u-u^3/3 then flat",
            u -> Math.abs(u) < 1 ? u - u * u * u / 3 : Math.copySign(2.0 / 3, u),
            "hard clip at abs(u)=1",
            TestRecord.clip(1, 1));

    static Stream<ReferenceRow> drives() {
        return ReferenceRow.of(SoftClipTest.class, "soft-clip.csv");
    }

    static Stream<ReferenceRow> curves() {
        return ReferenceRow.of(SoftClipTest.class, "soft-clip-levels.csv");
    }

    private static WaveformResult driven(ReferenceRow row, double drive) {
        return WaveformMeasurement.of(TestRecord.of(p -> drive * TestRecord.SINE.applyAsDouble(p))
                .sampled(SAMPLES_PER_CYCLE, 8, 0.00037)
                .through(CURVES.get(row.text("curve"))));
    }

    @ParameterizedTest
    @MethodSource("drives")
    void harmonicsAreTheReferences(ReferenceRow row) {
        HarmonicSpectrum spectrum =
                driven(row, row.number("drive g")).spectrum().orElseThrow();
        double fundamental = row.number("b1 sine series");
        for (int k = 1; k <= 15; k++) {
            double expected = k % 2 == 0 ? 0 : Math.abs(row.number("b" + k + " sine series"));
            assertThat(spectrum.amplitude(k)).as("b" + k).isCloseTo(expected, within(4e-6 * fundamental));
        }
    }

    /** From a drive of 20 on the output crosses zero within a few bins of the mean cycle. */
    @ParameterizedTest
    @MethodSource("drives")
    void levelsAndDistortionAreTheReferences(ReferenceRow row) {
        boolean steep = row.number("drive g") >= 20;
        WaveformResult result = driven(row, row.number("drive g"));
        assertThat(Values.value(result, WaveformQuantity.RMS))
                .isCloseTo(row.number("output rms"), within(steep ? 1.5e-4 : 2e-5));
        assertThat(Values.value(result, WaveformQuantity.THD) / 100)
                .isBetween(row.number("THD_F H2..H15") - 1e-6, row.number("THD_F all harmonics") + 1e-6);
        assertThat(Values.value(result, WaveformQuantity.PEAK_UP)).isCloseTo(row.number("output peak"), within(5e-4));
        assertThat(Values.value(result, WaveformQuantity.CREST_FACTOR))
                .isCloseTo(row.number("crest factor"), within(7e-4));
        assertThat(Values.value(result, WaveformQuantity.ASYMMETRY)).isCloseTo(0, within(0.005));
        assertThat(Values.value(result, WaveformQuantity.DWELL_UP) / 50)
                .isCloseTo(row.number("dwell share abs(y)>=0.9*peak"), within(steep ? 0.01 : 0.002));
        double gain = Values.value(result, WaveformQuantity.GAIN);
        double fundamentalGain = row.number("b1 sine series") / row.number("drive g");
        assertThat(Math.pow(10, gain / 20)).isCloseTo(fundamentalGain, within(1e-6));
    }

    /**
     * By how much of itself the onset lies behind the input of 1 dB of static compression, because the small-signal gain is that of a cubic over
     * three quarters of the onset, a little under the slope at the centre: from cubics through 200,000 exact points of the cycle (NumPy's
     * polyfit).
     */
    private static final Map<String, Double> LATE = Map.of(
            "tanh", 0.00612,
            "2/pi*atan", 0.01045,
            "algebraic u/sqrt(1+u^2)", 0.00819,
            "cubic u-u^3/3 then flat", 0.0,
            "hard clip at abs(u)=1", 0.0);

    @ParameterizedTest
    @MethodSource("curves")
    void onsetIsTheInputOfOneDecibelOfStaticCompression(ReferenceRow row) {
        double compressed = row.number("u at 1 dB static compression y/(slope*u)");
        double expected = compressed * (1 + LATE.get(row.text("curve")));
        WaveformResult result = driven(row, 8 * compressed);
        for (WaveformQuantity onset : List.of(WaveformQuantity.ONSET_UP, WaveformQuantity.ONSET_DOWN)) {
            assertThat(Values.value(result, onset)).isCloseTo(expected, within(0.002 * expected));
        }
    }

    /** Input at which the slope of a curve, 1 at the centre, has fallen to a share: the derivatives solved for u. */
    private static final Map<String, DoubleUnaryOperator> INPUT_OF_SLOPE = Map.of(
            "tanh",
            s -> Math.log(1 / Math.sqrt(s) + Math.sqrt(1 / s - 1)),
            "2/pi*atan",
            s -> Math.sqrt(1 / s - 1),
            "algebraic u/sqrt(1+u^2)",
            s -> Math.sqrt(Math.pow(s, -2.0 / 3) - 1),
            "cubic u-u^3/3 then flat",
            s -> Math.sqrt(1 - s),
            "hard clip at abs(u)=1",
            s -> 1);

    private static final Map<String, DoubleUnaryOperator> SLOPE = Map.of(
            "tanh",
            u -> 1 - Math.tanh(u) * Math.tanh(u),
            "2/pi*atan",
            u -> 1 / (1 + u * u),
            "algebraic u/sqrt(1+u^2)",
            u -> Math.pow(1 + u * u, -1.5),
            "cubic u-u^3/3 then flat",
            u -> 0,
            "hard clip at abs(u)=1",
            u -> 0);

    /** Width between 90 % and 10 % of the way from slope 1 to the last slope. */
    private static double width(ReferenceRow row, double lastSlope) {
        DoubleUnaryOperator input = INPUT_OF_SLOPE.get(row.text("curve"));
        double way = 1 - lastSlope;
        return 20 * Math.log10(input.applyAsDouble(1 - 0.9 * way) / input.applyAsDouble(1 - 0.1 * way));
    }

    @ParameterizedTest
    @MethodSource("curves")
    void kneeIsTheReferencesWidth(ReferenceRow row) {
        assertThat(width(row, 0)).isCloseTo(row.number("knee width 20log10(u10/u90)"), within(1e-9));
        double expected = width(row, SLOPE.get(row.text("curve")).applyAsDouble(DRIVEN_FAR));
        WaveformResult result = driven(row, DRIVEN_FAR);
        for (WaveformQuantity knee : List.of(WaveformQuantity.KNEE_UP, WaveformQuantity.KNEE_DOWN)) {
            assertThat(Values.value(result, knee)).isCloseTo(expected, within(0.05 + Values.uncertainty(result, knee)));
            assertThat(Values.uncertainty(result, knee)).isLessThan(2);
        }
    }
}
