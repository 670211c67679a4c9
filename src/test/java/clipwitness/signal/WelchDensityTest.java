package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Densities of lines and of white noise. */
class WelchDensityTest {
    private static Samples samples(int count, IntToDoubleFunction value) {
        return Samples.of(IntStream.range(0, count).mapToDouble(value).toArray());
    }

    private static Samples noise(int count, Random random) {
        return samples(count, i -> random.nextGaussian());
    }

    /** The Hann window gives a line in the middle of a bin 2/3 of its power there and 1/6 in each neighbour; a constant counts for nothing. */
    @Test
    void aLineInTheMiddleOfABinLiesInThree() {
        WelchDensity density =
                WelchDensity.of(samples(1024, i -> 5 + 2 * Math.cos(2 * Math.PI * 10 * i / 64.0 + 1)), 64);
        assertThat(density.power(10)).isCloseTo(2 * 2 / 3.0, within(1e-9));
        assertThat(density.power(9)).isCloseTo(2 / 6.0, within(1e-9));
        assertThat(density.power(11)).isCloseTo(2 / 6.0, within(1e-9));
        assertThat(density.power(0)).isCloseTo(0, within(1e-20));
        assertThat(density.power(20)).isCloseTo(0, within(1e-20));
        assertThat(density.bins()).isEqualTo(33);
        assertThat(density.spacing()).isEqualTo(1 / 64.0);
        assertThat(density.lineWidth()).isCloseTo(0.57735 / 64, within(1e-6));
    }

    /** Zeros behind a segment of 48 make 64 of it; the power in all bins stays that of the line. */
    @Test
    void aLineKeepsItsPowerInSegmentsOfAnyLength() {
        Samples line = samples(1000, i -> 2 * Math.cos(2 * Math.PI * 0.17 * i));
        for (int length : new int[] {48, 64, 100}) {
            WelchDensity density = WelchDensity.of(line, length);
            double[] all = new double[density.bins()];
            Arrays.fill(all, 1);
            assertThat(density.power(all)).isCloseTo(2, within(0.01));
        }
        assertThat(WelchDensity.of(line, 48).spacing()).isEqualTo(1 / 64.0);
    }

    /** Half the rate is one side: an alternating record of ±3 keeps its power of 9. */
    @Test
    void anAlternatingRecordLiesAtHalfTheRate() {
        WelchDensity density = WelchDensity.of(samples(256, i -> i % 2 == 0 ? 3 : -3), 32);
        assertThat(density.power(16)).isCloseTo(9 * 2 / 3.0, within(1e-9));
        assertThat(density.power(15)).isCloseTo(9 / 3.0, within(1e-9));
    }

    /** Power of a band of white noise: mean and scatter over 400 records. */
    @Test
    void whiteNoiseScattersAsStated() {
        Random random = new Random(5);
        int records = 400;
        double[] powers = new double[records];
        double[] variances = new double[records];
        for (int r = 0; r < records; r++) {
            WelchDensity density = WelchDensity.of(noise(1000, random), 50);
            double[] band = new double[density.bins()];
            Arrays.fill(band, 5, 20, 2);
            powers[r] = density.power(band);
            variances[r] = density.variance(band);
        }
        double mean = Arrays.stream(powers).average().orElseThrow();
        double scatter = variance(powers);
        double stated = Arrays.stream(variances).average().orElseThrow();
        assertThat(mean).isCloseTo(2 * 2 * 15 / 64.0, within(0.02));
        assertThat(scatter / stated).isBetween(0.8, 1.25);
    }

    /** Fifteen bins alike tell up to fifteen times as much as one; one tells no more than its 39 segments. */
    @Test
    void moreBinsTellMoreOfTheScatter() {
        WelchDensity density = WelchDensity.of(noise(1000, new Random(6)), 50);
        double[] band = new double[density.bins()];
        Arrays.fill(band, 5, 20, 2);
        double[] one = new double[density.bins()];
        one[7] = 3;
        assertThat(density.degreesOfFreedom(one)).isBetween(10.0, 38.0);
        assertThat(density.degreesOfFreedom(band) / density.degreesOfFreedom(one))
                .isBetween(6.0, 15.0);
        assertThat(density.variance(one)).isPositive();
    }

    private static double variance(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
    }

    @Test
    void aSteadyLineHasNoScatterAndSoNoLimitOfFreedom() {
        WelchDensity density = WelchDensity.of(samples(512, i -> 0), 64);
        double[] all = new double[density.bins()];
        Arrays.fill(all, 1);
        assertThat(density.variance(all)).isZero();
        assertThat(density.degreesOfFreedom(all)).isInfinite();
    }

    @Test
    void twoSegmentsOfFourAreTheLeast() {
        assertThat(WelchDensity.of(samples(8, i -> i % 3), 4).bins()).isEqualTo(3);
        assertThatThrownBy(() -> WelchDensity.of(samples(7, i -> i), 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WelchDensity.of(samples(8, i -> i), 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WelchDensity.of(samples(8, i -> i == 2 ? Double.NaN : i), 4))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
