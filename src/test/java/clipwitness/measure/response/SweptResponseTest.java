package clipwitness.measure.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.reason.ResponseReason;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Filters whose response is known exactly: y(n) = (1 - a) x(n) + a y(n - 1) has the magnitude (1 - a) / sqrt(1 - 2 a cos w + a^2), w = 2 pi f / fs, and
 * the phase -atan2(a sin w, 1 - a cos w) (A. V. Oppenheim, R. W. Schafer, Discrete-Time Signal Processing, 3rd ed., 5.3).
 */
class SweptResponseTest {
    private static final double RATE = 48_000;
    private static final int SAMPLES = 30_000;
    private static final double A = 0.8;

    private static double[] filtered(double[] input) {
        double[] output = new double[input.length];
        double last = 0;
        for (int i = 0; i < input.length; i++) {
            last = (1 - A) * input[i] + A * last;
            output[i] = last;
        }
        return output;
    }

    private static double magnitude(double frequency) {
        double w = 2 * Math.PI * frequency / RATE;
        return (1 - A) / Math.sqrt(1 - 2 * A * Math.cos(w) + A * A);
    }

    private static double phase(double frequency) {
        double w = 2 * Math.PI * frequency / RATE;
        return -Math.toDegrees(Math.atan2(A * Math.sin(w), 1 - A * Math.cos(w)));
    }

    /** A sine whose frequency rises from 20 Hz to 20 kHz, as many octaves in equal times. */
    private static double[] sweep() {
        double[] values = new double[SAMPLES];
        double octaves = Math.log(1000);
        for (int i = 0; i < SAMPLES; i++) {
            double t = (double) i / SAMPLES;
            values[i] = 0.05 * Math.sin(2 * Math.PI * 20 * SAMPLES / RATE / octaves * Math.expm1(octaves * t));
        }
        return values;
    }

    private static double[] noise(long seed, double rms) {
        Random random = new Random(seed);
        return random.doubles(SAMPLES, -rms * Math.sqrt(3), rms * Math.sqrt(3)).toArray();
    }

    private static double[] plus(double[] a, double[] b) {
        double[] sum = a.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }

    private static List<ResponsePoint> measured(double[] input, double[] output) {
        return SweptResponse.of(Samples.of(input), Samples.of(output), RATE);
    }

    private static void follows(List<ResponsePoint> points, double from, double to, double tolerance) {
        List<ResponsePoint> inside = points.stream()
                .filter(p -> p.frequency() >= from && p.frequency() <= to)
                .toList();
        assertThat(inside).hasSizeGreaterThan(12);
        for (ResponsePoint p : inside) {
            assertThat(p.gain().value().orElseThrow())
                    .as("gain at " + p.frequency() + " Hz")
                    .isCloseTo(20 * Math.log10(magnitude(p.frequency())), within(tolerance));
            assertThat(p.phase().value().orElseThrow())
                    .as("phase at " + p.frequency() + " Hz")
                    .isCloseTo(phase(p.frequency()), within(10 * tolerance));
        }
    }

    @Test
    void aSweepShowsAFilter() {
        double[] input = sweep();
        follows(measured(input, filtered(input)), 50, 15_000, 0.01);
    }

    @Test
    void noiseShowsAFilterThoughItNeitherBeginsNorEndsInSilence() {
        double[] input = noise(7, 0.02);
        follows(measured(input, filtered(input)), 50, 15_000, 0.02);
    }

    @Test
    void twelvePointsMakeAnOctave() {
        double[] input = noise(3, 0.02);
        List<ResponsePoint> points = measured(input, input);
        assertThat(points.stream().filter(p -> p.frequency() > 990 && p.frequency() < 1990))
                .hasSize(12);
        assertThat(points).anyMatch(p -> Math.abs(p.frequency() - 1000) < 1e-9);
    }

    @Test
    void noiseThatTheInputDoesNotExplainLowersTheCoherence() {
        double[] input = noise(5, 0.02);
        double[] other = noise(6, 0.02);
        ResponsePoint half = at(measured(input, plus(input, other)), 1000);
        assertThat(half.coherence().orElseThrow()).isCloseTo(0.5, within(0.15)); // equal powers
        assertThat(half.gain().reason().orElseThrow().code()).isEqualTo(ResponseReason.LOW_COHERENCE);
    }

    @Test
    void nothingIsSaidWhereTheInputHoldsNothing() {
        double[] input = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            input[i] = 0.1 * Math.sin(2 * Math.PI * 1000 * i / RATE);
        }
        ResponsePoint high = at(measured(input, plus(input, noise(9, 1e-6))), 8000);
        assertThat(high.gain().reason().orElseThrow().code()).isEqualTo(ResponseReason.NO_STIMULUS);
    }

    @Test
    void theIntervalsHoldTheTruth() {
        int inside = 0;
        int all = 0;
        for (int r = 0; r < 20; r++) {
            double[] input = noise(100 + r, 0.02);
            for (ResponsePoint p : measured(input, plus(filtered(input), noise(200 + r, 1e-3)))) {
                if (p.frequency() > 100 && p.gain() instanceof Measured.Value gain) {
                    double error = gain.number() - 20 * Math.log10(magnitude(p.frequency()));
                    inside += Math.abs(error) <= gain.expanded() ? 1 : 0;
                    all++;
                }
            }
        }
        assertThat((double) inside / all).isBetween(0.93, 0.975);
    }

    private static ResponsePoint at(List<ResponsePoint> points, double frequency) {
        DoubleUnaryOperator far = f -> Math.abs(Math.log(f / frequency));
        return points.stream()
                .min((p, q) -> Double.compare(far.applyAsDouble(p.frequency()), far.applyAsDouble(q.frequency())))
                .orElseThrow();
    }
}
