package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.fixture.Spread;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.HarmonicSpectrum;
import clipwitness.measure.Measured;
import clipwitness.signal.JointFit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures of waves of two harmonics in white noise. */
class KnownWaveTest {
    private static final double CYCLE = 2 * Math.PI;

    private static double two(double p) {
        return 0.4 + Math.sin(CYCLE * p) + 0.1 * Math.cos(2 * CYCLE * p) + 0.05 * Math.sin(3 * CYCLE * p);
    }

    private static FittedWave wave(double noise, double origin, long seed) {
        Samples samples = TestRecord.of(KnownWaveTest::two)
                .sampled(500.3, 12.2, 0)
                .noisy(noise, 0, seed)
                .waveform()
                .samples();
        return FittedWave.of(
                samples, JointFit.of(List.of(samples), 1 / 500.3, 20).channels().get(0), origin);
    }

    /** Below 20 kHz of 500.3 kHz lie 7.995 % of the noise's power of 2.5e-3 V², and both harmonics with 5e-3 and 1.25e-3 V²; of a hundredth of that rate 90 %. */
    @Test
    void distortionAndNoiseIsWhatIsLeftOfTheAudioBand() {
        Spread spread = new Spread();
        for (int record = 0; record < 25; record++) {
            spread.add(DistortionAndNoise.of(wave(0.05, 0, 100 + record), 500_300));
        }
        double rest = 0.00625 + 0.07995 * 0.0025;
        assertThat(spread.mean()).isCloseTo(100 * Math.sqrt(rest / (rest + 0.5)), within(0.1));
        assertThat(spread.overStated()).isBetween(0.65, 1.4);
        double atLowRate = DistortionAndNoise.of(wave(0.05, 0, 1), 5003).value().orElseThrow();
        double below = 0.00625 + 0.9 * 0.0025;
        assertThat(atLowRate).isCloseTo(100 * Math.sqrt(below / (below + 0.5)), within(0.4));
    }

    /** 0.5 + 0.005 + 0.00125 V². */
    @Test
    void theSwingHasThePowerOfItsHarmonics() {
        FittedWave wave = wave(0.05, 0, 3);
        assertThat(wave.swingPower()).isCloseTo(0.50625, within(3e-3));
        assertThat(wave.rms()).isCloseTo(Math.sqrt(0.50625), within(2e-3));
        assertThat(wave.scatter()).isCloseTo(0.05, within(0.002));
        assertThat(wave.harmonicPower(2).amplitude()).isCloseTo(0.1, within(0.003));
        assertThat(wave.harmonicPower(2, 2).power()).isCloseTo(0.01, within(5e-4));
        assertThat(wave.harmonicPower(3, 2).power()).isCloseTo(0.0025, within(3e-4));
        assertThat(wave.hasFundamental()).isTrue();
    }

    /** White noise of 50 mV over 6104 samples leaves 0.905 mV in each coefficient and 0.640 mV in the mean. */
    @Test
    void coefficientsAreKnownByTheNumberOfSamples() {
        FittedWave wave = wave(0.05, 0, 3);
        double[] gradient = new double[8];
        gradient[4] = 1;
        assertThat(wave.uncertainty(gradient)).isCloseTo(0.905e-3, within(0.05e-3));
        assertThat(Math.sqrt(wave.quadratureVariance(2))).isCloseTo(0.905e-3, within(0.05e-3));
        gradient[3] = 2;
        assertThat(wave.uncertainty(gradient)).isCloseTo(0.905e-3 * Math.sqrt(5), within(0.12e-3));
        assertThat(wave.meanUncertainty()).isCloseTo(0.64e-3, within(0.04e-3));
        assertThat(Math.sqrt(wave.sharedVariance())).isCloseTo(0.64e-3, within(0.04e-3));
    }

    /** Bounds of 3 mV are 3 / root 3 = 1.732 mV beside the 0.905 mV of noise. */
    @Test
    void boundsWidenEachCoefficient() {
        FittedWave wave = wave(0.05, 0, 3);
        double[] bounds = new double[wave.count() + 1];
        bounds[0] = 3e-3;
        bounds[2] = 3e-3;
        FittedWave moved = wave.movedBy(bounds);
        assertThat(Math.sqrt(moved.quadratureVariance(2))).isCloseTo(Math.hypot(1.732e-3, 0.905e-3), within(0.05e-3));
        assertThat(moved.quadratureVariance(3)).isCloseTo(wave.quadratureVariance(3), within(1e-15));
        assertThat(moved.meanUncertainty()).isCloseTo(Math.hypot(1.732e-3, 0.64e-3), within(0.04e-3));
        assertThat(FittedWave.standsOut(4.25, 1)).isTrue();
        assertThat(FittedWave.standsOut(4.24, 1)).isFalse();
    }

    /** With the cycle's beginning as t = 0 the coefficients are those of the wave, wherever the record began. */
    @Test
    void theSpectrumCountsFromTheBeginningOfTheCycle() {
        FittedWave at = wave(1e-4, 0, 3);
        double origin = (-Math.PI / 2 - at.fit().phase(1)) / CYCLE;
        HarmonicSpectrum spectrum = HarmonicList.spectrum(wave(1e-4, origin, 3), 500_300);
        assertThat(spectrum.frequency()).isCloseTo(1000, within(0.01));
        assertThat(spectrum.cosines().at(0)).isCloseTo(0, within(1e-4));
        assertThat(spectrum.sines().at(0)).isCloseTo(1, within(1e-4));
        assertThat(spectrum.cosines().at(1)).isCloseTo(0.1, within(1e-4));
        assertThat(spectrum.sines().at(1)).isCloseTo(0, within(1e-4));
        assertThat(spectrum.sines().at(2)).isCloseTo(0.05, within(1e-4));
        assertThat(HarmonicList.of(at).get(0).level().value().orElseThrow()).isCloseTo(-20, within(0.01));
        assertThat(HarmonicList.of(at).get(0).phase().orElseThrow()).isCloseTo(180, within(0.2));
        assertThat(HarmonicList.of(at)).hasSize(19);
    }

    /** Covariances of JCGM 100, 5.2.2: slopes 2/9, 4/9 and -2/3 of peaks at 2.5 and -0.5 about 0.5, which shares 1e-5 V² with each. */
    @Test
    void anAsymmetryIsKnownBetterByWhatTheLevelShares() {
        Measured asymmetry = Asymmetry.of(
                new Extreme(2.5, 0.25, 0.02, 0),
                new Extreme(-0.5, 0.75, 0.01, 0),
                new ReferenceLevel(0.5, 0.005, 1e-5));
        double variance = (4 * 4e-4 + 16 * 1e-4 + 36 * 2.5e-5) / 81 - 2 * 1e-5 * 2 / 3 * (2 / 9.0 + 4 / 9.0);
        assertThat(asymmetry.asValue().orElseThrow().standardUncertainty())
                .isCloseTo(100 * Math.sqrt(variance), within(1e-6));
        Measured distance = new Extreme(2.5, 0.25, 0.02, 0.003).distanceFrom(new ReferenceLevel(0.5, 0.01, 1e-4));
        assertThat(distance.value().orElseThrow()).isEqualTo(2);
        assertThat(distance.asValue().orElseThrow().standardUncertainty())
                .isCloseTo(Math.sqrt(4e-4 + 1e-4 - 2e-4 + 9e-6), within(1e-9));
        assertThat(Extreme.reduced(1, 0.7)).isEqualTo(0.5);
        assertThat(Extreme.reduced(1, 0.3)).isCloseTo(0.7, within(1e-12));
    }

    /** Peaks of a round crest and of a plateau: no bias beyond a third of the scatter, which is as stated. */
    @Test
    void extremesScatterAsStated() {
        for (double clip : new double[] {2, 0.7}) {
            double sum = 0;
            double squares = 0;
            for (int record = 0; record < 25; record++) {
                Samples samples = TestRecord.of(p -> Math.min(clip, Math.sin(CYCLE * p)))
                        .sampled(500.3, 8.2, 0)
                        .noisy(0.02, 0, 300 + record)
                        .waveform()
                        .samples();
                Extreme up = ExtremeSearch.of(
                        FittedWave.of(
                                samples,
                                JointFit.of(List.of(samples), 1 / 500.3, 20)
                                        .channels()
                                        .get(0),
                                0),
                        1);
                double off = (up.value() - Math.min(clip, 1)) / up.noise();
                sum += off / 25;
                squares += off * off / 25;
            }
            assertThat(sum).isBetween(-0.6, 0.6);
            assertThat(Math.sqrt(squares)).isBetween(0.55, 1.45);
        }
    }
}
