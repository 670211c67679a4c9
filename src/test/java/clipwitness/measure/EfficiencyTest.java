package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * In white noise no unbiased estimate of an amplitude scatters less than the Cramer-Rao bound, a variance of 2 s² / N (S. Kay, Fundamentals of
 * Statistical Signal Processing, 1993, example 3.14).
 */
class EfficiencyTest {
    private static final int SAMPLES = 1000;
    private static final double NOISE = 0.1;
    private static final double THIRD = 0.3;

    @Test
    void amplitudesOf400RecordsScatterAsTheCramerRaoBoundAllows() {
        assertThat(efficiency(400, 1)).isBetween(0.8, 1.25);
        assertThat(efficiency(400, 3)).isBetween(0.8, 1.25);
    }

    @Tag("coverage")
    @Test
    void theFundamentalOf20000RecordsIsEfficientTo95Percent() {
        assertThat(efficiency(20_000, 1)).isBetween(0.95, 1.05);
    }

    @Tag("coverage")
    @Test
    void theThirdHarmonicOf20000RecordsIsEfficientTo95Percent() {
        assertThat(efficiency(20_000, 3)).isBetween(0.95, 1.05);
    }

    /** Bound over mean square error of an amplitude of 1 at the fundamental and 0.3 at the third harmonic, 4.3 cycles. */
    private static double efficiency(int records, int order) {
        double truth = order == 1 ? 1 : THIRD;
        double meanSquare = IntStream.range(0, records)
                .parallel()
                .mapToDouble(i -> amplitude(i, order) - truth)
                .map(error -> error * error)
                .average()
                .orElseThrow();
        double efficiency = 2 * NOISE * NOISE / SAMPLES / meanSquare;
        System.out.printf("harmonic %d, %d records: efficiency %.3f%n", order, records, efficiency);
        return efficiency;
    }

    private static double amplitude(int record, int order) {
        double phase = new Random(record + 1L).nextDouble();
        return TestRecord.of(p -> TestRecord.SINE.applyAsDouble(p) + THIRD * Math.cos(6 * Math.PI * p))
                .sampled(SAMPLES / 4.3, 4.3, phase)
                .noisy(NOISE, 0, record)
                .measured()
                .spectrum()
                .orElseThrow()
                .amplitude(order);
    }
}
