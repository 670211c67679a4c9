package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The wave of a clipped path beside a clean one: 0.6 of the node, driven 25 times, and 3 times the input of 0.1 V. */
class PathPredictionTest {
    private static final double PEAK = 0.1;
    private static final ClipperCircuit CIRCUIT = ReferenceClipper.named("one silicon up two in series down");

    private static double wave(double input) {
        return 0.6 * CIRCUIT.outputAt(25 * input) + 3 * input;
    }

    private static PathFit.Wave measured(DoubleUnaryOperator output) {
        Samples input = Samples.of(IntStream.range(0, 125)
                .mapToDouble(i -> PEAK * Math.sin(Math.PI * ((i + 0.5) / 125 - 0.5)))
                .toArray());
        return new PathFit.Wave(new TransferCurve(input, input.map(output), 0, false), 1e-4, 1, Optional.empty());
    }

    private static PathFits fits() {
        return new PathFits(CIRCUIT, measured(PathPredictionTest::wave), new JunctionUncertainty(0.01, 0.004));
    }

    /** Cosine and sine of a harmonic of the wave. */
    private static double amplitude(int order) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < 2000; i++) {
            double t = 2 * Math.PI * (i + 0.5) / 2000;
            double v = wave(PEAK * Math.sin(t)) / 1000;
            cosine += v * Math.cos(order * t);
            sine += v * Math.sin(order * t);
        }
        return Math.hypot(cosine, sine);
    }

    private static double value(ClipperPrediction predicted, WaveformQuantity quantity) {
        return predicted.get(quantity).value().orElseThrow();
    }

    @Test
    void theWaveOfBothPathsIsPredicted() {
        PathFits fits = fits();
        ClipperPrediction predicted = ClipperPrediction.ofPaths(fits, PEAK);
        double mean = IntStream.range(0, 2000)
                .mapToDouble(i -> wave(PEAK * Math.sin(2 * Math.PI * (i + 0.5) / 2000)) / 2000)
                .sum();
        assertThat(value(predicted, WaveformQuantity.PEAK_UP)).isCloseTo(wave(PEAK) - mean, within(2e-3));
        assertThat(value(predicted, WaveformQuantity.PEAK_DOWN)).isCloseTo(mean - wave(-PEAK), within(2e-3));
        for (int order : new int[] {2, 3, 4, 5}) {
            assertThat(predicted.harmonics().get(order).value().orElseThrow())
                    .as("harmonic %d", order)
                    .isCloseTo(20 * Math.log10(amplitude(order) / amplitude(1)), within(0.1));
        }
    }

    /** One percent of the junctions' voltage moves the clipped path's scale by one percent; what the fit makes of resistances 2.9 % off, too. */
    @Test
    void whatIsKnownOfTheJunctionsIsInTheFigures() {
        PathFits fits = fits();
        Measured clipped = fits.clipped();
        assertThat(clipped.value().orElseThrow()).isCloseTo(0.6, within(5e-3));
        assertThat(part(clipped, Source.TEMPERATURE)).isCloseTo(0.006, within(0.0015));
        assertThat(part(clipped, Source.STIMULUS)).isBetween(1e-5, 0.02);
        assertThat(part(clipped, Source.METHOD)).isLessThan(0.01);
        assertThat(part(fits.clean(), Source.NOISE)).isBetween(1e-5, 0.2);
    }

    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    /** The steeper of the two ends, over the slope in the middle. */
    @Test
    void theSlopeAtTheEndsIsThatOfTheNode() {
        double step = 1e-4;
        double up = CIRCUIT.outputAt(2.4875 + step) - CIRCUIT.outputAt(2.4875 - step);
        double down = CIRCUIT.outputAt(-2.4875 + step) - CIRCUIT.outputAt(-2.4875 - step);
        double middle = CIRCUIT.outputAt(step) - CIRCUIT.outputAt(-step);
        double expected = Math.max(up, down) / middle;
        assertThat(fits().slopeAtEnds()).isCloseTo(expected, within(0.08 * expected));
    }

    @Test
    void withoutACleanPathTheWaveOfOneIsNotExplained() {
        PathFit without = PathFit.withoutCleanPath(CIRCUIT, measured(PathPredictionTest::wave));
        assertThat(without.remainderOverNoise()).isGreaterThan(30);
        PathFit alone = PathFit.withoutCleanPath(CIRCUIT, measured(x -> 0.6 * CIRCUIT.outputAt(25 * x)));
        assertThat(alone.remainderOverNoise()).isLessThan(3);
        assertThat(alone.clean().number()).isZero();
        assertThat(alone.gain().number()).isCloseTo(25, within(0.3));
        assertThat(alone.clipped().number()).isCloseTo(0.6, within(0.005));
    }

    @Test
    void aDriveIsAboveZero() {
        assertThat(new Drive(1, 0, 1).amplitude()).isEqualTo(1);
        assertThatThrownBy(() -> new Drive(0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Drive(1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Drive(1, -1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Drive(Double.NaN, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PathFit.Wave(measured(x -> x).curve(), 0, 1, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
