package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.fixture.Spread;
import clipwitness.measure.Measured;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.JointFit;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Figures made of an extreme, the mean and the rms of the same samples scatter as their uncertainty says. The extremes here are averages of
 * some samples of the record, so the scatter of many records is the truth.
 */
class SharedNoiseTest {
    private static final double NOISE = 0.01;
    private static final int RECORDS = 600;
    private static final int SAMPLES = 2_000;
    private static final int PERIOD = 500;

    /** Scatter of 600 values is known to 2.9 %, one standard deviation: the bounds are four of them. */
    private static final double ROOM = 0.12;

    /** 8 samples lie at the upper level, 8 at the lower one, 48 half way; the mean is that of all 64. */
    @Test
    void theMeanOfALopsidedPairOfPeaksIsHalfKnownFromThePeaksThemselves() {
        Random random = new Random(1);
        Spread spread = new Spread();
        for (int record = 0; record < RECORDS; record++) {
            double up = 1 + mean(random, 8);
            double down = -0.6 + mean(random, 8);
            double middle = mean(random, 48);
            double mean = (8 * up + 8 * down + 48 * middle) / 64;
            Measured asymmetry = Asymmetry.of(
                    new Extreme(up, 0.25, NOISE / Math.sqrt(8), 0),
                    new Extreme(down, 0.75, NOISE / Math.sqrt(8), 0),
                    new ReferenceLevel(mean, NOISE / Math.sqrt(64), NOISE * NOISE / 64));
            spread.add(asymmetry);
        }
        assertThat(spread.overStated()).isBetween(1 - ROOM, 1 + ROOM);
    }

    private static double mean(Random random, int count) {
        return NOISE
                * IntStream.range(0, count)
                        .mapToDouble(i -> random.nextGaussian())
                        .average()
                        .orElseThrow();
    }

    /**
     * cos^8 has a mean of 70 / 2^8 and a mean square of 12,870 / 2^16 (binomial coefficients of 8 over 4 and 16 over 8). A twentieth of its
     * samples, around the top, is taken as its peak.
     */
    @Test
    void noiseThatLiftsThePeakOfAPulseLiftsItsRmsAsWell() {
        Spread spread = new Spread();
        for (int record = 0; record < RECORDS; record++) {
            spread.add(crestFactorOfAPulse(new Random(record)));
        }
        double rms = Math.sqrt(12870.0 / 65536 - Math.pow(70.0 / 256, 2));
        double top = IntStream.range(0, PERIOD)
                .filter(SharedNoiseTest::atTheTop)
                .mapToDouble(SharedNoiseTest::pulse)
                .average()
                .orElseThrow();
        assertThat(spread.mean()).isCloseTo((top - 70.0 / 256) / rms, within(1e-3));
        assertThat(spread.overStated()).isBetween(1 - ROOM, 1 + ROOM);
    }

    private static double pulse(int sample) {
        return Math.pow(Math.cos(Math.PI * (sample - PERIOD / 2) / PERIOD), 8);
    }

    private static boolean atTheTop(int sample) {
        return Math.abs(sample % PERIOD - PERIOD / 2) <= PERIOD / 40;
    }

    private static Measured crestFactorOfAPulse(Random random) {
        double[] values = IntStream.range(0, SAMPLES)
                .mapToDouble(i -> pulse(i) + NOISE * random.nextGaussian())
                .toArray();
        int[] top =
                IntStream.range(0, SAMPLES).filter(SharedNoiseTest::atTheTop).toArray();
        double up = IntStream.of(top).mapToDouble(i -> values[i]).average().orElseThrow();
        Samples samples = Samples.of(values);
        HarmonicFit fit =
                JointFit.of(List.of(samples), 1.0 / PERIOD, 20).channels().get(0);
        return CrestFactor.of(
                FittedWave.of(samples, fit, 0),
                new Extreme(up, 0.5, NOISE / Math.sqrt(top.length), 0),
                new Extreme(0, 0, NOISE / Math.sqrt(SAMPLES / 2.0), 0));
    }
}
