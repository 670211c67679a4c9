package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.fixture.TestRecord;
import clipwitness.signal.JointFit;
import clipwitness.signal.MeanCycle;
import java.util.List;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** What a converter's steps leave in averages, against rounding done step by step. */
class ConverterShareTest {
    private static final double AMPLITUDE = 2.3;
    private static final int PLACES = 720;
    private static final int OFFSETS = 40;

    private static MeanCycle cycle(TestRecord record) {
        Samples samples = record.waveform().samples();
        return MeanCycle.of(
                samples, JointFit.of(List.of(samples), 1 / 500.0, 5).channels().get(0), 0);
    }

    private static TestRecord sine(double amplitude, double noise, double step) {
        return TestRecord.of(p -> amplitude * Math.sin(2 * Math.PI * p))
                .sampled(500.31, 40.2, 0.1)
                .noisy(noise, step, 3);
    }

    /** Mean error of rounding x with Gaussian noise: sum of the codes by their probabilities, less x. */
    private static double meanError(double x, double noise) {
        double mean = 0;
        for (int code = -9; code <= 9; code++) {
            double above = Erf.erf((code + 0.5 - x) / noise / Math.sqrt(2));
            double below = Erf.erf((code - 0.5 - x) / noise / Math.sqrt(2));
            mean += code * (above - below) / 2;
        }
        return mean - x;
    }

    /** The rms of the mean error over a code: 1 / root 12 of a code without noise, a tenth of that at 0.3 codes. */
    @Test
    void oneValueErrsByTheMeanErrorOfRounding() {
        for (double noise : new double[] {0.15, 0.2, 0.25}) {
            double squares = 0;
            for (int i = 0; i < 200; i++) {
                squares += Math.pow(meanError((i + 0.5) / 200, noise), 2) / 200;
            }
            double found = new CoefficientNoise(cycle(sine(60, noise, 1)), 1).ofOneValue();
            assertThat(found).isBetween(0.8 * Math.sqrt(squares), 1.5 * Math.sqrt(squares));
        }
        assertThat(new CoefficientNoise(cycle(sine(60, 0, 1)), 1).ofOneValue())
                .isCloseTo(1 / Math.sqrt(12), within(0.05));
        assertThat(new CoefficientNoise(cycle(sine(60, 0.6, 1)), 1).ofOneValue())
                .isLessThan(1e-3);
    }

    /** Mean square of the amplitude of harmonic k of the rounding error, over positions of the wave; of the mean for k = 0. */
    private static double error(double amplitude, int k) {
        double squares = 0;
        for (int offset = 0; offset < OFFSETS; offset++) {
            double real = 0;
            double imaginary = 0;
            for (int i = 0; i < PLACES; i++) {
                double angle = 2 * Math.PI * (i + 0.5) / PLACES;
                double x = amplitude * Math.sin(angle) + (offset + 0.5) / OFFSETS;
                double rounding = Math.rint(x) - x;
                real += rounding * Math.cos(k * angle) / PLACES;
                imaginary += rounding * Math.sin(k * angle) / PLACES;
            }
            squares += (k == 0 ? 1 : 4) * (real * real + imaginary * imaginary) / OFFSETS;
        }
        return squares;
    }

    /** Largest over amplitudes within a code from peak to peak, for a sine of less than five codes. */
    @Test
    void theCoefficientsOfARoundedSineErrByTheirRoundingErrors() {
        MeanCycle cycle = cycle(sine(AMPLITUDE, 0, 0));
        int orders = cycle.fit().count();
        Samples none = Samples.of(new double[orders + 1]);
        Samples shares = new CoefficientNoise(cycle, 1).withSteps(none, cycle.fit());
        for (int k = 0; k <= orders; k++) {
            double largest = 0;
            for (double more = 0; more < 0.5; more += 0.05) {
                largest = Math.max(largest, error(AMPLITUDE + more, k));
            }
            double unit = k == 0 ? cycle.fit().covariance(0, 0) : cycle.fit().quadratureVariance(k);
            double stated = Math.sqrt(unit) * shares.at(k);
            assertThat(stated).as("harmonic %d", k).isBetween(0.75 * Math.sqrt(largest), 1.6 * Math.sqrt(largest));
        }
    }

    @Test
    void noiseThatBlursTheStepsIsAllThereIs() {
        MeanCycle cycle = cycle(sine(60, 0.7, 1));
        Samples rest = Samples.of(new double[] {1, 2, 3, 4, 5, 6});
        assertThat(new CoefficientNoise(cycle, 1).withSteps(rest, cycle.fit())).isSameAs(rest);
        MeanCycle quiet = cycle(sine(60, 0.2, 1));
        Samples wider = new CoefficientNoise(quiet, 1).withSteps(rest, quiet.fit());
        for (int k = 0; k <= 5; k++) {
            assertThat(wider.at(k)).isGreaterThan(rest.at(k));
        }
    }
}
