package clipwitness.measure.transfer;

import static clipwitness.measure.transfer.KnownTransferTest.filtered;
import static clipwitness.measure.transfer.KnownTransferTest.pair;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.FilterCorners;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.TransferLoop;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.ExtremeSearch;
import clipwitness.measure.wave.FittedWave;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.ReasonCode;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Output against input at 1 kHz: a curve, a loop, and a loop that two filters explain. */
class TransferMeasurementTest {
    private static final double CYCLE = 2 * Math.PI;

    private static TransferMeasurement measured(DoubleUnaryOperator output, double noise) {
        FittedWave[] waves = pair(output, p -> Math.sin(CYCLE * p), noise, 51);
        return new TransferMeasurement(
                waves[0], waves[1], ExtremeSearch.of(waves[0], 1), ExtremeSearch.of(waves[0], -1), 1000);
    }

    private static ReasonCode doubt(TransferMeasurement measurement) {
        return measurement.doubt().orElseThrow().reason().code();
    }

    @Test
    void aUnitWithoutMemoryIsACurve() {
        TransferMeasurement measurement = measured(p -> 0.4 + 2 * Math.sin(CYCLE * p), 1e-4);
        TransferCurve curve = measurement.curve();
        assertThat(curve.loop()).isEmpty();
        assertThat(measurement.doubt()).isEmpty();
        for (int i = 0; i < curve.input().size(); i += 9) {
            assertThat(curve.output().at(i)).isCloseTo(2 * curve.input().at(i), within(1e-3));
        }
        assertThat(measurement.values().get(WaveformQuantity.CLIP_UP).value().orElseThrow())
                .isCloseTo(2, within(1e-3));
        assertThat(measurement
                        .values()
                        .get(WaveformQuantity.BRANCH_GAP)
                        .asValue()
                        .orElseThrow()
                        .shown())
                .isLessThan(0.1);
    }

    private static double looped(double p) {
        return 0.3 + Math.sin(CYCLE * p) + 0.1 * Math.cos(3 * CYCLE * p);
    }

    /** No filter makes a cosine of the third harmonic alone: the branches are drawn, from the output at the input's mean, and nothing is read from them. */
    @Test
    void aLoopThatNoFilterExplainsIsDrawnAndNotRead() {
        TransferMeasurement measurement = measured(TransferMeasurementTest::looped, 1e-4);
        TransferCurve curve = measurement.curve();
        TransferLoop loop = curve.loop().orElseThrow();
        assertThat(curve.straightened()).isEmpty();
        assertThat(measurement.doubt()).isEmpty();
        int half = loop.rising().size();
        for (int i = 0; i < half; i += 5) {
            double phase = (i + 0.5) / (2 * half) - 0.25;
            assertThat(loop.rising().at(i)).isCloseTo(looped(phase) - 0.3, within(2e-3));
            assertThat(loop.falling().at(i)).isCloseTo(looped(0.5 - phase) - 0.3, within(2e-3));
            assertThat(curve.input().at(i)).isCloseTo(Math.sin(CYCLE * phase), within(2e-3));
            assertThat(curve.output().at(i)).isCloseTo(Math.sin(CYCLE * phase), within(2e-3));
        }
        assertThat(measurement
                        .values()
                        .get(WaveformQuantity.CLIP_UP)
                        .reason()
                        .orElseThrow()
                        .code())
                .isEqualTo(FigureReason.BRANCHES_APART);
        assertThat(measurement.values().get(WaveformQuantity.KNEE_DOWN).value()).isEmpty();
        assertThat(measurement.values().get(WaveformQuantity.BRANCH_GAP).value().orElseThrow())
                .isCloseTo(200 * 0.1 / Math.sqrt(1.01), within(0.05));
    }

    /** Corners at 0.3 and 0.12 of the tone's period: 1 kHz over 0.3, and 0.12 of 1 kHz. */
    @Test
    void theFiltersThatCloseALoopAreNamed() {
        TransferMeasurement both = measured(filtered(0.3, 0.12), 1e-3);
        FilterCorners corners = both.curve().straightened().orElseThrow();
        assertThat(corners.lowPass().orElseThrow()).isCloseTo(1000 / 0.3, within(100.0));
        assertThat(corners.highPass().orElseThrow()).isCloseTo(120, within(4.0));
        assertThat(doubt(both)).isEqualTo(DoubtReason.STRAIGHTENED_BOTH);
        assertThat(both.curve().loop()).isPresent();
        // clipped at 0.7 and -0.5 in the middle of both branches, before the filters
        assertThat(both.values().get(WaveformQuantity.CLIP_ASYMMETRY).value().orElseThrow())
                .isCloseTo(100 * 0.2 / 1.2, within(2.5));
        TransferMeasurement low = measured(filtered(0.3, 0), 1e-4);
        assertThat(low.curve().straightened().orElseThrow().lowPass().orElseThrow())
                .isCloseTo(1000 / 0.3, within(60.0));
    }

    /** tanh of five times a sine falls to nine tenths of its slope at 0.327 / 5 and to a tenth at 1.818 / 5: 14.9 dB (acosh of root 10 / 9 and of root 10). */
    @Test
    void aKneeIsTheRatioOfTheInputsAtNineTenthsAndATenthOfTheSlope() {
        TransferMeasurement measurement = measured(p -> Math.tanh(5 * Math.sin(CYCLE * p)), 1e-4);
        double ratio = 20 * Math.log10(acosh(Math.sqrt(10)) / acosh(Math.sqrt(10.0 / 9)));
        assertThat(measurement.values().get(WaveformQuantity.KNEE_UP).value().orElseThrow())
                .isCloseTo(ratio, within(0.5));
        assertThat(measurement.values().get(WaveformQuantity.KNEE_DOWN).value().orElseThrow())
                .isCloseTo(ratio, within(0.5));
        assertThat(measurement
                        .values()
                        .get(WaveformQuantity.SMALL_SIGNAL_GAIN)
                        .value()
                        .orElseThrow())
                .isCloseTo(20 * Math.log10(5), within(0.1));
    }

    private static double acosh(double x) {
        return Math.log(x + Math.sqrt(x * x - 1));
    }
}
