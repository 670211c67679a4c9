package clipwitness.measure.pair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.measure.HarmonicSpectrum;
import clipwitness.measure.Measured;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Two waves whose shift, scale and difference are known. */
class KnownPairTest {
    private static HarmonicSpectrum wave(double noise, double... cosinesAndSines) {
        int count = cosinesAndSines.length / 2;
        double[] cosines = new double[count];
        double[] sines = new double[count];
        double[] uncertainties = new double[count];
        for (int i = 0; i < count; i++) {
            cosines[i] = cosinesAndSines[2 * i];
            sines[i] = cosinesAndSines[2 * i + 1];
            uncertainties[i] = noise;
        }
        return new HarmonicSpectrum(1000, Samples.of(cosines), Samples.of(sines), Samples.of(uncertainties));
    }

    /** f(t) = 0.3 cos wt + sin wt + 0.2 cos 2wt - 0.1 sin 2wt, as large and so much later. */
    private static double[] later(double scale, double cycles) {
        double a = 2 * Math.PI * cycles;
        return new double[] {
            scale * (0.3 * Math.cos(a) - Math.sin(a)),
            scale * (Math.cos(a) + 0.3 * Math.sin(a)),
            scale * (0.2 * Math.cos(2 * a) + 0.1 * Math.sin(2 * a)),
            scale * (-0.1 * Math.cos(2 * a) + 0.2 * Math.sin(2 * a))
        };
    }

    /** The mean of the product of two waves over a period is half their overlap. */
    @Test
    void theOverlapIsTwiceTheMeanProduct() {
        HarmonicSpectrum one = wave(0, later(1, 0));
        HarmonicSpectrum other = wave(0, 0.5, -0.7, 0.1, 0.4, 9, 9);
        for (double shift : new double[] {0, 0.13, 0.71}) {
            double sum = 0;
            for (int i = 0; i < 200; i++) {
                double t = i / 200.0;
                sum += at(later(1, shift), t) * at(new double[] {0.5, -0.7, 0.1, 0.4}, t) / 100;
            }
            assertThat(new Overlap(one, other, 2).at(shift)).isCloseTo(sum, within(1e-9));
        }
    }

    private static double at(double[] wave, double t) {
        double a = 2 * Math.PI * t;
        return wave[0] * Math.cos(a) + wave[1] * Math.sin(a) + wave[2] * Math.cos(2 * a) + wave[3] * Math.sin(2 * a);
    }

    @Test
    void aWaveIsFoundLaterAndLarger() {
        for (boolean turned : new boolean[] {false, true}) {
            NullDepth.Alignment found =
                    NullDepth.aligned(wave(1e-4, later(1, 0)), wave(1e-4, later(turned ? -1.7 : 1.7, 0.21)), turned);
            assertThat(found.shift()).isCloseTo(0.21, within(1e-6));
            assertThat(found.scale()).isCloseTo(1.7, within(1e-6));
            assertThat(found.turned()).isEqualTo(turned);
        }
        assertThat(NullDepth.aligned(wave(1e-4, later(1, 0)), wave(1e-4, later(1, -0.3)), false)
                        .shift())
                .isCloseTo(-0.3, within(1e-6));
    }

    /** A third harmonic of 10 mV that the first wave has not, in 1.14 V: its share is the null depth. */
    @Test
    void whatOneHasNotIsTheRemainder() {
        double[] more = {0.3, 1, 0.2, -0.1, 0, 0.01};
        Measured depth = NullDepth.aligned(wave(1e-5, 0.3, 1, 0.2, -0.1, 0, 0), wave(1e-5, more), false)
                .depth();
        assertThat(depth.value().orElseThrow()).isCloseTo(10 * Math.log10(1e-4 / 1.1401), within(1e-3));
        assertThat(depth.asValue().orElseThrow().standardUncertainty())
                .isCloseTo(8.68589 * Math.sqrt(2) * 1e-5 / 0.01, within(2e-3));
    }

    /** Drawn noise in both: the stated uncertainty of the depth is its scatter over 300 pairs. */
    @Test
    void theDepthScattersAsStated() {
        Random random = new Random(2);
        double mean = 0;
        double squares = 0;
        double stated = 0;
        for (int i = 0; i < 300; i++) {
            double[] one = {0.3, 1, 0.2, -0.1, 0, 0};
            double[] other = {0.6, 2, 0.4, -0.2, 0.1, 0.2};
            for (int j = 0; j < 6; j++) {
                one[j] += 0.01 * random.nextGaussian();
                other[j] += 0.01 * random.nextGaussian();
            }
            Measured.Value depth = NullDepth.aligned(wave(0.01, one), wave(0.01, other), false)
                    .depth()
                    .asValue()
                    .orElseThrow();
            mean += depth.number() / 300;
            squares += depth.number() * depth.number() / 300;
            stated += depth.standardUncertainty() * depth.standardUncertainty() / 300;
        }
        assertThat(Math.sqrt((squares - mean * mean) / stated)).isBetween(0.7, 1.3);
        assertThat(mean).isCloseTo(10 * Math.log10(0.05 / 4.61), within(0.25));
    }
}
