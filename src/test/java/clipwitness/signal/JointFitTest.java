package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Fits of waves whose harmonics are known, and what a fit says of itself. */
class JointFitTest {
    private static final int SIZE = 2000;
    private static final double PER_SAMPLE = 0.00731;

    /** 0.5 V + 1 V cos + 0.3 V sin of the third, about the middle of the record. */
    private static Samples wave(double offset, double noise, long seed) {
        Random random = new Random(seed);
        double[] values = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            double w = 2 * Math.PI * PER_SAMPLE * (i - (SIZE - 1) / 2.0);
            values[i] = offset + Math.cos(w) + 0.3 * Math.sin(3 * w) + noise * random.nextGaussian();
        }
        return Samples.of(values);
    }

    @Test
    void aWaveWithoutNoiseIsFoundAgainFromAStartBesideIt() {
        JointFit joint = JointFit.of(List.of(wave(0.5, 0, 1), wave(-2, 0, 1)), PER_SAMPLE * 1.01, 4);
        assertThat(joint.cyclesPerSample()).isCloseTo(PER_SAMPLE, within(1e-13));
        assertThat(joint.strayed()).isFalse();
        assertThat(joint.channels()).hasSize(2);
        HarmonicFit fit = joint.channels().get(0);
        assertThat(fit.mean()).isCloseTo(0.5, within(1e-9));
        assertThat(joint.channels().get(1).mean()).isCloseTo(-2, within(1e-9));
        assertThat(fit.cosine(1)).isCloseTo(1, within(1e-9));
        assertThat(fit.sine(1)).isCloseTo(0, within(1e-9));
        assertThat(fit.sine(3)).isCloseTo(0.3, within(1e-9));
        assertThat(fit.amplitude(3)).isCloseTo(0.3, within(1e-9));
        assertThat(fit.phase(3)).isCloseTo(-Math.PI / 2, within(1e-7));
        assertThat(fit.count()).isEqualTo(4);
        assertThat(fit.parameters()).isEqualTo(9);
        for (double cycles : new double[] {0, 0.1, 0.37, -2.2, 5.9}) {
            double w = 2 * Math.PI * cycles;
            assertThat(fit.at(cycles)).isCloseTo(0.5 + Math.cos(w) + 0.3 * Math.sin(3 * w), within(1e-8));
        }
        assertThat(fit.cyclesAt(0)).isCloseTo(-999.5 * PER_SAMPLE, within(1e-9));
        assertThat(fit.cyclesAt(1999)).isCloseTo(999.5 * PER_SAMPLE, within(1e-9));
    }

    /**
     * Frequency of a sine of amplitude A in white noise of sigma over N samples: sigma / (pi A N) times root of 6 / N (D. C. Rife and R. R. Boorstyn, Single-tone
     * parameter estimation, IEEE Trans. Inf. Theory 20, 591-598, 1974); the wave's third harmonic tells as a sine of 3 times 0.3 of it.
     */
    @Test
    void theUncertaintyOfTheFrequencyIsTheBoundOfRifeAndBoorstyn() {
        double sigma = 0.02;
        double slopes = Math.sqrt(1 + 0.9 * 0.9);
        double bound = sigma / (Math.PI * slopes * SIZE) * Math.sqrt(6.0 / SIZE);
        double square = 0;
        int records = 60;
        for (int seed = 0; seed < records; seed++) {
            JointFit joint = JointFit.of(List.of(wave(0.5, sigma, seed)), PER_SAMPLE, 4);
            assertThat(joint.standardUncertainty()).isCloseTo(bound, within(0.08 * bound));
            square += Math.pow(joint.cyclesPerSample() - PER_SAMPLE, 2) / records;
        }
        assertThat(Math.sqrt(square) / bound).isBetween(0.75, 1.25);
        JointFit two = JointFit.of(List.of(wave(0.5, sigma, 1), wave(0.5, sigma, 2)), PER_SAMPLE, 4);
        assertThat(two.standardUncertainty()).isCloseTo(bound / Math.sqrt(2), within(0.06 * bound));
    }

    /** A channel of ten times the noise weighs a hundredth. */
    @Test
    void theQuieterChannelDecides() {
        JointFit quiet = JointFit.of(List.of(wave(0, 0.01, 3)), PER_SAMPLE, 4);
        JointFit both = JointFit.of(List.of(wave(0, 0.01, 3), wave(0, 0.1, 4)), PER_SAMPLE, 4);
        assertThat(both.cyclesPerSample())
                .isCloseTo(quiet.cyclesPerSample(), within(0.5 * quiet.standardUncertainty()));
        assertThat(both.standardUncertainty() / quiet.standardUncertainty())
                .isCloseTo(1 / Math.sqrt(1.01), within(1e-3));
    }

    /** In a long record each quadrature has 2 / N of the noise's variance, the mean 1 / N. */
    @Test
    void covariancesAreThoseOfALongRecord() {
        JointFit moved = JointFit.of(List.of(wave(0.5, 0.01, 1)), PER_SAMPLE, 4);
        HarmonicFit fit = moved.channels().get(0);
        assertThat(fit.covariance(0, 0) * SIZE).isCloseTo(1, within(0.01));
        assertThat(fit.covariance(1, 1) * SIZE).isCloseTo(2, within(0.03));
        assertThat(fit.quadratureVariance(2) * SIZE).isCloseTo(2, within(0.03));
        assertThat(fit.covariance(1, 2)).isCloseTo(fit.covariance(2, 1), within(1e-12));
        assertThat(JointFit.at(List.of(wave(0.5, 0.01, 1)), PER_SAMPLE, 4).cyclesPerSample())
                .isEqualTo(PER_SAMPLE);
    }

    @Test
    void harmonicsAreTakenOutOrChangedWithoutTheOthers() {
        HarmonicFit fit =
                JointFit.of(List.of(wave(0.5, 0, 1)), PER_SAMPLE, 4).channels().get(0);
        HarmonicFit large = fit.withoutHarmonicsBelow(fit.amplitude(3));
        assertThat(large.amplitude(3)).isEqualTo(fit.amplitude(3));
        assertThat(large.amplitude(2)).isZero();
        assertThat(fit.withoutHarmonicsBelow(0.31).amplitude(3)).isZero();
        HarmonicFit first = fit.first(1);
        assertThat(first.count()).isEqualTo(1);
        assertThat(first.cosine(1)).isEqualTo(fit.cosine(1));
        HarmonicFit turned = fit.with((k, cosine, sine) -> new double[] {k * sine, -cosine});
        assertThat(turned.cosine(3)).isCloseTo(0.9, within(1e-8));
        assertThat(turned.sine(1)).isCloseTo(-1, within(1e-8));
        assertThat(turned.mean()).isEqualTo(fit.mean());
        HarmonicFit wide = fit.first(1).withHarmonics(FitSamples.of(wave(0.5, 0, 1)), 3);
        assertThat(wide.sine(3)).isCloseTo(0.3, within(1e-8));
    }

    /** Four harmonics and a mean are nine, the frequency a tenth parameter. */
    @Test
    void aRecordNeedsMoreSamplesThanParameters() {
        double[] ten = new double[10];
        double[] eleven = new double[11];
        for (int i = 0; i < 11; i++) {
            eleven[i] = Math.cos(0.6 * i);
        }
        System.arraycopy(eleven, 0, ten, 0, 10);
        assertThatThrownBy(() -> JointFit.of(List.of(Samples.of(ten)), 0.1, 4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(JointFit.of(List.of(Samples.of(eleven)), 0.1, 4).channels()).hasSize(1);
    }

    /** Started a whole cycle of the record away, a fit of more than a sine does not come back. */
    @Test
    void aStartThatIsTooFarAwayStrays() {
        Samples wave = wave(0, 0, 1);
        JointFit far = JointFit.of(List.of(wave), PER_SAMPLE + 1.2 / SIZE, 4);
        assertThat(far.strayed() || Math.abs(far.cyclesPerSample() - PER_SAMPLE) > 0.1 / SIZE)
                .isTrue();
        assertThat(JointFit.of(List.of(wave), PER_SAMPLE + 0.3 / SIZE, 4).strayed())
                .isFalse();
    }
}
