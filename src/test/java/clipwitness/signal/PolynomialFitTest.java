package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PolynomialFitTest {
    private static final double NOISE = 0.01;
    private static final int POINTS = 160;
    private static final int RECORDS = 400;

    @Test
    void pointsThatThePolynomialFollowsScatterAsTheirNoise() {
        assertThat(fit(x -> x - x * x * x, new Random(3)).scatter(NOISE)).isEqualTo(NOISE);
    }

    /** A line with corners at ±0.9, samples at random places: the cubic's slope differs from record to record by more than the noise makes of it. */
    @Test
    void cornersInsideTheStretchMoveTheSlopeAsNoiseOfTheirSizeWould() {
        DoubleUnaryOperator clipped = x -> Math.max(-0.9, Math.min(0.9, x));
        Random random = new Random(5);
        double[] slopes = new double[RECORDS];
        double stated = 0;
        double byNoise = 0;
        for (int i = 0; i < RECORDS; i++) {
            PolynomialFit fit = fit(clipped, random);
            slopes[i] = fit.slopeAt(0);
            stated += fit.scatter(NOISE) * Math.sqrt(fit.slopeVarianceAt(0)) / RECORDS;
            byNoise += NOISE * Math.sqrt(fit.slopeVarianceAt(0)) / RECORDS;
        }
        double mean = IntStream.range(0, RECORDS)
                .mapToDouble(i -> slopes[i])
                .average()
                .orElseThrow();
        double scatter = Math.sqrt(IntStream.range(0, RECORDS)
                .mapToDouble(i -> Math.pow(slopes[i] - mean, 2))
                .average()
                .orElseThrow());
        assertThat(scatter).isGreaterThan(1.2 * byNoise).isLessThan(1.25 * stated);
    }

    private static PolynomialFit fit(DoubleUnaryOperator curve, Random random) {
        double[] x = random.doubles(POINTS, -1, 1).sorted().toArray();
        double[] y = IntStream.range(0, POINTS)
                .mapToDouble(i -> curve.applyAsDouble(x[i]) + NOISE * random.nextGaussian())
                .toArray();
        double[] weights = IntStream.range(0, POINTS).mapToDouble(i -> 1).toArray();
        return new PolynomialFit(new WeightedPoints(x, y, weights), 3);
    }
}
