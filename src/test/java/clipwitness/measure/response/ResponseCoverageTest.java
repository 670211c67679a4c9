package clipwitness.measure.response;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Intervals of the response, k = 2, hold the truth as often as they claim: of a filter of the first order, whose response is exact
 * (A. V. Oppenheim, R. W. Schafer, Discrete-Time Signal Processing, 3rd ed., 5.3). The Maven profile {@code coverage} runs thousands of records.
 */
class ResponseCoverageTest {
    private static final int MANY = Integer.getInteger("coverage.records", 2000);
    private static final double RATE = 48_000;
    private static final int SAMPLES = 9_600;
    private static final double A = 0.7;
    private static final double[] FREQUENCIES = {250, 500, 1000, 2000, 4000, 8000};

    /** A sweep and noise at the input, amid noise of the output, in codes and not. */
    static Stream<Arguments> records() {
        return Stream.of(
                Arguments.of("noise", false, 1e-3, 0),
                Arguments.of("noise, in codes", false, 3e-4, 4e-4),
                Arguments.of("sweep", true, 1e-3, 0),
                Arguments.of("sweep, in codes", true, 3e-4, 4e-4));
    }

    @Tag("coverage")
    @ParameterizedTest
    @MethodSource("records")
    void intervalsOfManyRecordsHoldTheTruthAsOftenAsTheyClaim(String name, boolean swept, double noise, double step) {
        Map<Double, int[]> tallies = new TreeMap<>();
        for (int seed = 0; seed < MANY; seed++) {
            Random random = new Random(31_000 + seed);
            double[] input = swept ? sweep() : noise(random, 0.05);
            double[] output = output(input, noise, step, random);
            ResponseCurve curve = new ResponseCurve(SweptResponse.of(Samples.of(input), Samples.of(output), RATE));
            for (double f : FREQUENCIES) {
                Measured.Value gain = curve.at(f).orElseThrow().gain().asValue().orElseThrow();
                int[] t = tallies.computeIfAbsent(f, k -> new int[2]);
                t[0] += Math.abs(gain.number() - truth(f)) <= gain.expanded() ? 1 : 0;
                t[1]++;
            }
        }
        tallies.forEach((f, t) ->
                System.out.printf(Locale.ROOT, "%-18s %6.0f Hz %6.2f %% of %d%n", name, f, 100.0 * t[0] / t[1], t[1]));
        tallies.forEach(
                (f, t) -> assertThat(100.0 * t[0] / t[1]).as(name + " " + f).isBetween(93.0, 97.5));
    }

    private static double truth(double frequency) {
        double w = 2 * Math.PI * frequency / RATE;
        return 20 * Math.log10((1 - A) / Math.sqrt(1 - 2 * A * Math.cos(w) + A * A));
    }

    private static double[] output(double[] input, double noise, double step, Random random) {
        double[] output = new double[input.length];
        double last = 0;
        for (int i = 0; i < input.length; i++) {
            last = (1 - A) * input[i] + A * last;
            double value = last + noise * random.nextGaussian();
            output[i] = step > 0 ? Math.rint(value / step) * step : value;
        }
        return output;
    }

    private static double[] noise(Random random, double rms) {
        return random.doubles(SAMPLES, -rms * Math.sqrt(3), rms * Math.sqrt(3)).toArray();
    }

    private static double[] sweep() {
        double[] values = new double[SAMPLES];
        double octaves = Math.log(500);
        for (int i = 0; i < SAMPLES; i++) {
            double t = (double) i / SAMPLES;
            values[i] = 0.1 * Math.sin(2 * Math.PI * 40 * SAMPLES / RATE / octaves * Math.expm1(octaves * t));
        }
        return values;
    }
}
