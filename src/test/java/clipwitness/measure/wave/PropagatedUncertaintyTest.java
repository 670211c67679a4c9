package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.signal.JointFit;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Uncertainties of figures made of stated parts, by the law of propagation (JCGM 100:2008, 5.1.2). */
class PropagatedUncertaintyTest {
    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    private static ReferenceLevel exact(double level) {
        return new ReferenceLevel(level, 0, 0);
    }

    /** (u - d) / (u + d) of distances 2 and 1: 1/3; its slopes are 2d / (u + d)² = 2/9 and -2u / (u + d)² = -4/9. */
    @Test
    void theAsymmetryOfTwoPeaksMovesWithEach() {
        Extreme up = new Extreme(2.5, 0.25, 0.02, 0.03);
        Extreme down = new Extreme(-0.5, 0.75, 0.01, 0.05);
        Measured asymmetry = Asymmetry.of(up, down, exact(0.5));
        assertThat(asymmetry.value().orElseThrow()).isCloseTo(100.0 / 3, within(1e-9));
        assertThat(part(asymmetry, Source.NOISE)).isCloseTo(100 * Math.hypot(0.02 * 2 / 9, 0.01 * 4 / 9), within(1e-9));
        assertThat(part(asymmetry, Source.CONVERTER_STEP))
                .isCloseTo(100 * Math.hypot(0.03 * 2 / 9, 0.05 * 4 / 9), within(1e-9));
    }

    /** The level between them takes from one what it gives to the other: its slope is -2 / (u + d) = -2/3. */
    @Test
    void theAsymmetryMovesTwiceWithTheLevelBetweenThePeaks() {
        Measured asymmetry =
                Asymmetry.of(new Extreme(2, 0.25, 0, 0), new Extreme(-1, 0.75, 0, 0), new ReferenceLevel(0, 0.03, 0));
        assertThat(part(asymmetry, Source.NOISE)).isCloseTo(100 * 0.03 * 2 / 3, within(1e-9));
        assertThat(part(asymmetry, Source.CONVERTER_STEP)).isZero();
    }

    private static FittedWave fitted(DoubleUnaryOperator shape) {
        Samples samples = TestRecord.of(shape)
                .sampled(500, 8, 0)
                .noisy(1e-6, 0, 1)
                .waveform()
                .samples();
        return FittedWave.of(
                samples, JointFit.of(List.of(samples), 1.0 / 500, 20).channels().get(0), 0);
    }

    /** A sine of 1 has an rms of 0.7071: peaks of 2 V and 1 V make a crest factor of 2.828, known as well as the larger peak. */
    @Test
    void theCrestFactorOfUnlikePeaksIsKnownAsWellAsTheLargerOne() {
        FittedWave sine = fitted(TestRecord.SINE);
        for (int sign : new int[] {1, -1}) {
            Extreme larger = new Extreme(2.0 * sign, 0.25, 0.02, 0.01);
            Extreme smaller = new Extreme(-1.0 * sign, 0.75, 0.05, 0.04);
            Measured crest = sign > 0 ? CrestFactor.of(sine, larger, smaller) : CrestFactor.of(sine, smaller, larger);
            assertThat(crest.value().orElseThrow()).isCloseTo(2.8284, within(1e-4));
            assertThat(part(crest, Source.NOISE)).isCloseTo(0.02 * Math.sqrt(2), within(1e-5));
            assertThat(part(crest, Source.CONVERTER_STEP)).isCloseTo(0.01 * Math.sqrt(2), within(1e-6));
        }
    }

    /** Peaks of 1.00 V and 0.99 V, each known to 0.02 V: 0.995 V, known to 0.02 / sqrt 2; the larger one may be right, 5 mV more as a bound. */
    @Test
    void ofAlikePeaksTheMeanCounts() {
        Measured crest = CrestFactor.of(
                fitted(TestRecord.SINE), new Extreme(1, 0.25, 0.02, 0), new Extreme(-0.99, 0.75, 0.02, 0));
        assertThat(crest.value().orElseThrow()).isCloseTo(0.995 * Math.sqrt(2), within(1e-5));
        assertThat(part(crest, Source.NOISE)).isCloseTo(0.02, within(1e-5));
        assertThat(part(crest, Source.METHOD)).isCloseTo(0.005 / Math.sqrt(3) * Math.sqrt(2), within(1e-6));
    }

    /** A triangle of 1 V crosses 0.9 V twice at 4 V a period: 5 %; 10 mV of its peak are 9 mV of that level, twice 2.25 thousandths of the period. */
    @Test
    void theDwellOfATriangleMovesWithItsPeak() {
        FittedWave triangle = fitted(p -> p < 0.5 ? 4 * p - 1 : 3 - 4 * p);
        Measured up = Dwell.of(triangle, new Extreme(1, 0.5, 0.01, 0.02), 1);
        Measured down = Dwell.of(triangle, new Extreme(-1, 0, 0.01, 0.02), -1);
        for (Measured dwell : List.of(up, down)) {
            assertThat(dwell.value().orElseThrow()).isCloseTo(5, within(0.05));
            assertThat(part(dwell, Source.NOISE)).isCloseTo(0.45, within(0.01));
            assertThat(part(dwell, Source.CONVERTER_STEP)).isCloseTo(1, within(0.02));
        }
    }

    /**
     * White noise of 10 mV over 5185 samples leaves 10 mV sqrt(2 / 5185) = 0.1964 mV in each quadrature; the scatter itself is known to 1 %. A third
     * harmonic of 0.1 V is so known to 0.01706 dB, its fundamental of 1 V to 0.0017 dB, and the rms to 10 mV / sqrt 5185.
     */
    @Test
    void noiseLeavesEachHarmonicItsShare() {
        WaveformResult wave = TestRecord.of(p -> Math.sin(2 * Math.PI * p) + 0.1 * Math.sin(6 * Math.PI * p))
                .noisy(0.01, 0, 1)
                .measured();
        Harmonic third = wave.harmonics().get(1);
        assertThat(third.order()).isEqualTo(3);
        assertThat(third.amplitude().value().orElseThrow()).isCloseTo(0.1, within(1e-3));
        assertThat(part(third.amplitude(), Source.NOISE)).isCloseTo(0.1964e-3, within(0.01e-3));
        assertThat(third.level().value().orElseThrow()).isCloseTo(-20, within(0.06));
        assertThat(part(third.level(), Source.NOISE)).isCloseTo(0.01714, within(9e-4));
        assertThat(part(wave.get(WaveformQuantity.RMS), Source.NOISE)).isCloseTo(0.1389e-3, within(0.007e-3));
        assertThat(wave.spectrum().orElseThrow().quadratureUncertainty().at(0)).isCloseTo(0.1964e-3, within(0.01e-3));
    }

    /** The bound of Cramér and Rao for a sine of unknown frequency: sqrt 6 / pi times s / (A N^1.5) of the sample rate, here 500 kHz: 10.44 mHz. */
    @Test
    void theFrequencyIsKnownAsWellAsASineCanBe() {
        WaveformResult sine = TestRecord.of(TestRecord.SINE).noisy(0.01, 0, 1).measured();
        assertThat(sine.get(WaveformQuantity.FREQUENCY).value().orElseThrow()).isCloseTo(1000, within(0.05));
        assertThat(part(sine.get(WaveformQuantity.FREQUENCY), Source.NOISE)).isCloseTo(0.01044, within(0.0006));
    }

    /**
     * Noise of 10 mV in both channels leaves 0.1964 mV in each quadrature, 1.964e-4 of an input of 1 V and 0.982e-4 of an output of 2 V: 2.196e-4 together are 1.907 mdB
     * of the gain and 12.58 thousandths of a degree of the phase.
     */
    @Test
    void gainAndPhaseAreKnownAsWellAsBothChannels() {
        WaveformResult doubled = WaveformMeasurement.of(
                TestRecord.of(TestRecord.SINE).noisy(0.01, 0, 1).through(x -> 2 * x));
        assertThat(doubled.get(WaveformQuantity.GAIN).value().orElseThrow()).isCloseTo(6.0206, within(0.008));
        assertThat(part(doubled.get(WaveformQuantity.GAIN), Source.NOISE)).isCloseTo(1.907e-3, within(0.08e-3));
        assertThat(part(doubled.get(WaveformQuantity.PHASE), Source.NOISE)).isCloseTo(12.58e-3, within(0.5e-3));
        assertThat(part(doubled.get(WaveformQuantity.INPUT_FUNDAMENTAL), Source.NOISE))
                .isCloseTo(0.1964e-3, within(0.01e-3));
    }

    /** An amplitude of 1 mV in noise of 0.5 mV: with both quadratures off by 2 u it is twice as much, 6.02 dB, half of that as u. */
    @Test
    void aBuriedHarmonicIsBoundedByWhatNoiseAdds() {
        Measured bound = HarmonicList.bound(1e-3, 0.5e-3, 1, 0.1);
        assertThat(bound.value().orElseThrow()).isCloseTo(-60, within(1e-9));
        assertThat(part(bound, Source.NOISE)).isCloseTo(Math.hypot(3.0103, 0.1), within(1e-4));
        assertThat(bound.asValue().orElseThrow().isUpperBound()).isTrue();
        assertThat(HarmonicList.bound(0, 1e-3, 1, 0.1)).isInstanceOf(Measured.Refused.class);
        assertThat(bound.unit()).isEqualTo(Unit.DBC);
    }

    @Test
    void theMeanCycleBeginsWhereTheToneGoesUpThroughZeroWithoutItsMean() {
        CycleTrace cycle = TestRecord.of(p -> 3 + TestRecord.SINE.applyAsDouble(p))
                .noisy(1e-4, 0, 1)
                .measured()
                .cycle()
                .orElseThrow();
        int bins = cycle.swing().size();
        assertThat(cycle.mean()).isCloseTo(3, within(1e-3));
        for (int i = 0; i < bins; i++) {
            assertThat(cycle.swing().at(i)).isCloseTo(Math.sin(2 * Math.PI * (i + 0.5) / bins), within(3e-3));
        }
    }
}
