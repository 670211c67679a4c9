package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Densities beside a tone, of noise whose density is known. */
class ResidualSpectrumTest {
    private static final double PER_SAMPLE = 1 / 500.3;

    /** First-order autoregressive noise of variance s² and correlation r has the density s² (1 - r²) / |1 - r e^(-jw)|². */
    private static double[] record(int size, double noise, double correlation, double hum, long seed) {
        Random random = new Random(seed);
        double[] values = new double[size];
        double last = random.nextGaussian();
        for (int i = 0; i < size; i++) {
            last = correlation * last + Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
            values[i] = Math.sin(2 * Math.PI * PER_SAMPLE * i)
                    + noise * last
                    + hum * Math.sin(2 * Math.PI * 2.43 * PER_SAMPLE * i);
        }
        return values;
    }

    private static MeanCycle cycle(Samples samples) {
        return MeanCycle.of(
                samples,
                JointFit.of(List.of(samples), PER_SAMPLE, 12).channels().get(0),
                0);
    }

    @Test
    void whiteNoiseIsTheScatterEverywhere() {
        Samples samples = Samples.of(record(12_000, 0.01, 0, 0, 1));
        ResidualSpectrum spectrum = new ResidualSpectrum(samples, cycle(samples));
        assertThat(spectrum.atHarmonics(0.01, 12)).hasSize(13).containsOnly(0.01);
        for (double edge : new double[] {0.02, 0.1, 0.3}) {
            assertThat(spectrum.powerUpTo(edge, 0.01)).isCloseTo(2 * edge * 1e-4, within(0.12 * 2 * edge * 1e-4));
        }
    }

    /** Above the band of a record that was thinned the scatter counts as white; hum of 0.2 V adds 0.02 V² from its frequency on. */
    @Test
    void theBandAboveTheThinnedRecordIsWhite() {
        Samples samples = Samples.of(record(50_000, 0.01, 0, 0.2, 2));
        ResidualSpectrum spectrum = new ResidualSpectrum(samples, cycle(samples));
        assertThat(spectrum.powerUpTo(0.5, 0)).isBetween(0.0198, 0.0202);
        assertThat(spectrum.powerUpTo(0.5, 0.3) - spectrum.powerUpTo(0.4, 0.3)).isCloseTo(0.2 * 0.09, within(1e-3));
        assertThat(spectrum.powerUpTo(2 * PER_SAMPLE, 0.3)).isLessThan(1e-3);
        assertThat(spectrum.powerUpTo(3 * PER_SAMPLE, 0.3)).isGreaterThan(0.0195);
    }

    /** The mean of the density over 20 records, from the third harmonic on, where it bends little from one to the next. */
    @Test
    void colouredNoiseIsAsDenseAsItsFormulaSays() {
        double[] squares = new double[13];
        for (int r = 0; r < 20; r++) {
            Samples samples = Samples.of(record(8000, 0.05, 0.97, 0, 10 + r));
            MeanCycle cycle = cycle(samples);
            double[] noise = new ResidualSpectrum(samples, cycle).atHarmonics(cycle.noise(), 12);
            for (int k = 0; k < noise.length; k++) {
                squares[k] += noise[k] * noise[k] / 20;
            }
        }
        for (int k = 3; k < 12; k++) {
            double w = 2 * Math.PI * k * PER_SAMPLE;
            double density = 0.0025 * (1 - 0.97 * 0.97) / (1 + 0.97 * 0.97 - 2 * 0.97 * Math.cos(w));
            assertThat(squares[k] / density).as("harmonic %d", k).isBetween(0.78, 1.28);
        }
    }
}
