package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.Map;

/** The figures of one channel alone. */
public final class OutputValues {
    private OutputValues() {}

    /**
     * Writes the figures of the output.
     *
     * @param up         upper extreme
     * @param down       lower extreme
     * @param sampleRate in Hz
     */
    public static void write(
            Map<WaveformQuantity, Measured> values, FittedWave output, Extreme up, Extreme down, double sampleRate) {
        ReferenceLevel level = ReferenceLevel.meanOf(output);
        values.put(WaveformQuantity.MEAN, volts(level.value(), level.noise()));
        values.put(WaveformQuantity.RMS, RmsLevel.of(output));
        values.put(WaveformQuantity.FUNDAMENTAL, fundamental(output));
        values.put(
                WaveformQuantity.NOISE,
                volts(
                        output.scatter(),
                        output.scatter() / Math.sqrt(2 * output.cycle().freedom())));
        values.put(WaveformQuantity.PEAK_UP, up.distanceFrom(level));
        values.put(WaveformQuantity.PEAK_DOWN, down.distanceFrom(level));
        values.put(WaveformQuantity.CREST_FACTOR, CrestFactor.of(output, up, down));
        values.put(WaveformQuantity.ASYMMETRY, Asymmetry.of(up, down, level));
        values.put(WaveformQuantity.THD, TotalHarmonicDistortion.of(output));
        values.put(WaveformQuantity.THD_OF_TOTAL, DistortionOfTotal.of(values.get(WaveformQuantity.THD)));
        values.put(WaveformQuantity.THD_PLUS_NOISE, DistortionAndNoise.of(output, sampleRate));
        values.put(WaveformQuantity.HALF_WAVE_RESIDUE, HalfWaveResidue.of(output));
        values.put(WaveformQuantity.EVEN_HARMONICS, HarmonicGroup.even(output));
        values.put(WaveformQuantity.ODD_HARMONICS, HarmonicGroup.odd(output));
        values.put(WaveformQuantity.HIGH_HARMONICS, HarmonicGroup.high(output));
        values.put(WaveformQuantity.DWELL_UP, Dwell.of(output, up, 1));
        values.put(WaveformQuantity.DWELL_DOWN, Dwell.of(output, down, -1));
        values.put(WaveformQuantity.LEAN, Lean.of(output, up, down));
    }

    /** Peak amplitude A_1, V. */
    public static Measured fundamental(FittedWave wave) {
        return volts(wave.fit().amplitude(1), Math.sqrt(wave.quadratureVariance(1)));
    }

    private static Measured volts(double value, double noise) {
        return Measured.withNoise(value, WaveformQuantity.MEAN.unit(), noise);
    }
}
