package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A clipper of known onset behind filters of known corners, at 1 kHz. */
class BranchGapTest {
    private static final double STEP = 2.0 / 256;
    private static final int ORDERS = 200;
    private static final int PLACES = 4096;
    private static final double DRIVE = 0.1;
    private static final double GAIN = 30;

    /** A curve of slope 30 that ends at 0.66 V is 1 dB short of its line at 0.66 / 30 / 0.891 = 24.7 mV. */
    private static final double ONSET = 0.66 / GAIN / Math.pow(10, -1 / 20.0);

    private static double hard(double x) {
        return Math.max(-0.66, Math.min(0.66, GAIN * x));
    }

    @ParameterizedTest
    @CsvSource({"3400, 0", "3400, 20", "2200, 0", "6000, 5", "0, 100"})
    void onsetBehindFiltersIsWithinATenthAndTheIntervalHoldsIt(double lowPass, double highPass) {
        WaveformResult result = behind(BranchGapTest::hard, lowPass, highPass);
        FilterCorners corners = result.transfer().orElseThrow().straightened().orElseThrow();
        Measured.Value up = result.get(WaveformQuantity.ONSET_UP).asValue().orElseThrow();
        Measured.Value down = result.get(WaveformQuantity.ONSET_DOWN).asValue().orElseThrow();
        assertThat(up.number()).isCloseTo(ONSET, Percentage.withPercentage(10));
        assertThat(down.number()).isCloseTo(ONSET, Percentage.withPercentage(10));
        assertThat(up.number()).isCloseTo(ONSET, Offset.offset(3 * up.standardUncertainty()));
        assertThat(down.number()).isCloseTo(ONSET, Offset.offset(3 * down.standardUncertainty()));
        assertThat(result.get(WaveformQuantity.CLIP_ASYMMETRY)
                        .asValue()
                        .orElseThrow()
                        .number())
                .isCloseTo(0, Offset.offset(2.0));
        if (lowPass > 0) {
            assertThat(corners.lowPass().orElseThrow()).isCloseTo(lowPass, Percentage.withPercentage(10));
        }
    }

    @Test
    void clipperWithoutFiltersIsACurve() {
        WaveformResult result = behind(BranchGapTest::hard, 0, 0);
        assertThat(result.transfer().orElseThrow().loop()).isEmpty();
        assertThat(result.get(WaveformQuantity.ONSET_UP).asValue().orElseThrow().number())
                .isCloseTo(ONSET, Percentage.withPercentage(3));
        assertThat(result.get(WaveformQuantity.BRANCH_GAP)
                        .asValue()
                        .orElseThrow()
                        .shown())
                .isLessThan(0.6);
    }

    /** Two branches a third of a period's slewing apart have no centre and no onset. */
    @Test
    void slewingAndDelayedPathsAreRefusedWithTheGap() {
        double[] clipped = cycle(BranchGapTest::hard);
        double[] blend = IntStream.range(0, PLACES)
                .mapToDouble(i -> clipped[i] + 5 * DRIVE * Math.sin(2 * Math.PI * (i / (double) PLACES - 0.12)))
                .toArray();
        WaveformResult result = measured(blend);
        for (WaveformQuantity q : new WaveformQuantity[] {
            WaveformQuantity.ONSET_UP,
            WaveformQuantity.CLIP_UP,
            WaveformQuantity.CLIP_ASYMMETRY,
            WaveformQuantity.SMALL_SIGNAL_GAIN,
            WaveformQuantity.KNEE_DOWN
        }) {
            assertThat(((Measured.Refused) result.get(q)).why().is(FigureReason.BRANCHES_APART))
                    .isTrue();
        }
        assertThat(result.get(WaveformQuantity.PEAK_UP).value()).isPresent();
    }

    /**
     * Sine and cosine: output over input is an ellipse; turned by a delay its fundamental is straight, so the gap is that of the third
     * harmonic alone: 2 x 0.1 / sqrt(1 + 0.01) = 19.9 % where that stands 90° off.
     */
    @Test
    void thirdHarmonicOfATenth90DegreesOffHasAGapOf19Point9Percent() {
        double[] wave = IntStream.range(0, PLACES)
                .mapToObj(i -> 2 * Math.PI * i / PLACES)
                .mapToDouble(a -> Math.sin(a) + 0.1 * Math.cos(3 * a))
                .toArray();
        Measured.Value gap =
                measured(wave).get(WaveformQuantity.BRANCH_GAP).asValue().orElseThrow();
        assertThat(gap.number()).isCloseTo(19.9, Offset.offset(0.3));
    }

    private static double[] cycle(DoubleUnaryOperator curve) {
        return IntStream.range(0, PLACES)
                .mapToDouble(i -> curve.applyAsDouble(DRIVE * Math.sin(2 * Math.PI * i / PLACES)))
                .toArray();
    }

    private static WaveformResult behind(DoubleUnaryOperator curve, double lowPass, double highPass) {
        double[] cycle = cycle(curve);
        double[] filtered = new double[PLACES];
        for (int k = 1; k <= ORDERS; k++) {
            Complex sum = Complex.ZERO;
            for (int i = 0; i < PLACES; i++) {
                double angle = 2 * Math.PI * k * i / PLACES;
                sum = sum.add(new Complex(cycle[i] * Math.cos(angle), -cycle[i] * Math.sin(angle)));
            }
            double f = k * TestRecord.FREQUENCY;
            Complex response = new Complex(1, lowPass > 0 ? f / lowPass : 0)
                    .multiply(new Complex(1, -highPass / f))
                    .reciprocal();
            Complex harmonic = sum.multiply(2.0 / PLACES).multiply(response);
            for (int i = 0; i < PLACES; i++) {
                double angle = 2 * Math.PI * k * i / PLACES;
                filtered[i] += harmonic.getReal() * Math.cos(angle) - harmonic.getImaginary() * Math.sin(angle);
            }
        }
        return measured(filtered);
    }

    private static WaveformResult measured(double[] cycle) {
        Random random = new Random(5);
        int samples = 8370;
        double[] out = new double[samples];
        double[] in = new double[samples];
        for (int i = 0; i < samples; i++) {
            double phase = i / 1000.0 + 0.3;
            phase -= Math.floor(phase);
            double place = phase * PLACES;
            int at = (int) place;
            double value = cycle[at] + (place - at) * (cycle[(at + 1) % PLACES] - cycle[at]);
            out[i] = Math.rint(value / STEP + 0.5 * random.nextGaussian()) * STEP;
            double input = DRIVE * Math.sin(2 * Math.PI * phase);
            in[i] = Math.rint(input / (STEP / 10) + 0.5 * random.nextGaussian()) * STEP / 10;
        }
        return WaveformMeasurement.of(WaveformInput.of(new Waveform(Samples.of(out), 1e6, Unit.VOLT))
                .withInput(new Waveform(Samples.of(in), 1e6, Unit.VOLT))
                .expecting(TestRecord.FREQUENCY));
    }
}
