package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.TestRecord;
import java.util.List;
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
        assertThat(efficiencies(400)).allSatisfy(e -> assertThat(e).isBetween(0.8, 1.25));
    }

    @Tag("coverage")
    @Test
    void theFundamentalAndTheThirdHarmonicOf20000RecordsAreEfficientTo95Percent() {
        List<Double> efficiencies = efficiencies(20_000);
        System.out.println("efficiency of the fundamental and the third harmonic over 20,000 records: " + efficiencies);
        assertThat(efficiencies).allSatisfy(e -> assertThat(e).isBetween(0.95, 1.05));
    }

    /** Bound over mean square error of an amplitude of 1 at the fundamental and 0.3 at the third harmonic, 4.3 cycles. */
    private static List<Double> efficiencies(int records) {
        List<double[]> squares = IntStream.range(0, records)
                .parallel()
                .mapToObj(EfficiencyTest::squaredErrors)
                .toList();
        return IntStream.range(0, 2)
                .mapToObj(i -> 2 * NOISE * NOISE / SAMPLES / mean(squares, i))
                .toList();
    }

    private static double mean(List<double[]> squares, int place) {
        return squares.stream().mapToDouble(s -> s[place]).average().orElseThrow();
    }

    private static double[] squaredErrors(int record) {
        double phase = new Random(record + 1L).nextDouble();
        HarmonicSpectrum spectrum = TestRecord.of(
                        p -> TestRecord.SINE.applyAsDouble(p) + THIRD * Math.cos(6 * Math.PI * p))
                .sampled(SAMPLES / 4.3, 4.3, phase)
                .noisy(NOISE, 0, record)
                .measured()
                .spectrum()
                .orElseThrow();
        return new double[] {Math.pow(spectrum.amplitude(1) - 1, 2), Math.pow(spectrum.amplitude(3) - THIRD, 2)};
    }
}
