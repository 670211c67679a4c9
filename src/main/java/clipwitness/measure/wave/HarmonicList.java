package clipwitness.measure.wave;

import clipwitness.capture.Samples;
import clipwitness.measure.Harmonic;
import clipwitness.measure.HarmonicSpectrum;
import clipwitness.measure.Measured;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The harmonics of a fitted wave as results: amplitude, level over the fundamental, phase; what does not exceed three times its standard uncertainty is a bound and has no phase. */
public final class HarmonicList {
    private HarmonicList() {}

    /** Harmonics from the second up. */
    public static List<Harmonic> of(FittedWave wave) {
        List<Harmonic> harmonics = new ArrayList<>();
        for (int k = 2; k <= wave.count(); k++) {
            harmonics.add(harmonic(wave, k));
        }
        return harmonics;
    }

    private static Harmonic harmonic(FittedWave wave, int k) {
        double amplitude = wave.fit().amplitude(k);
        double noise = Math.sqrt(wave.quadratureVariance(k));
        double fundamental = wave.fit().amplitude(1);
        double reference = Decibels.PER_RELATIVE_AMPLITUDE * Math.sqrt(wave.quadratureVariance(1)) / fundamental;
        if (!Harmonic.isFaint(amplitude, noise)) {
            double phase = wave.fit().phase(k) - k * wave.fit().phase(1);
            return new Harmonic(
                    k,
                    Measured.withNoise(amplitude, Unit.VOLT, noise),
                    level(amplitude / fundamental, Decibels.PER_RELATIVE_AMPLITUDE * noise / amplitude, reference),
                    OptionalDouble.of(Math.toDegrees(Math.IEEEremainder(phase, 2 * Math.PI))));
        }
        return new Harmonic(
                k,
                Measured.withNoise(amplitude, Unit.VOLT, noise).asUpperBound(),
                bound(amplitude, noise, fundamental, reference),
                OptionalDouble.empty());
    }

    /**
     * Level of a harmonic that noise buries: what it has, with what noise may add to it.
     *
     * @param amplitude   amplitude found, 0 or more
     * @param noise       standard uncertainty of each quadrature
     * @param fundamental amplitude of the fundamental
     * @param reference   standard uncertainty of the fundamental's level, dB
     */
    public static Measured bound(double amplitude, double noise, double fundamental, double reference) {
        if (!(amplitude > 0)) {
            return Measured.refused(Unit.DBC, FigureReason.NO_SUCH_HARMONIC);
        }
        double own = Decibels.ofAmplitude(1 + 2 * noise / amplitude) / 2;
        return level(amplitude / fundamental, own, reference).asUpperBound();
    }

    private static Measured.Value level(double ratio, double own, double reference) {
        return Measured.withNoise(Decibels.ofAmplitude(ratio), Unit.DBC, Math.hypot(own, reference));
    }

    /** The complex harmonics on the time axis of the mean cycle: its beginning is t = 0. */
    public static HarmonicSpectrum spectrum(FittedWave wave, double sampleRate) {
        int count = wave.count();
        double[] cosines = new double[count];
        double[] sines = new double[count];
        double[] noise = new double[count];
        for (int k = 1; k <= count; k++) {
            double turn = 2 * Math.PI * k * wave.origin();
            double c = wave.fit().cosine(k);
            double s = wave.fit().sine(k);
            cosines[k - 1] = c * Math.cos(turn) + s * Math.sin(turn);
            sines[k - 1] = s * Math.cos(turn) - c * Math.sin(turn);
            noise[k - 1] = Math.sqrt(wave.quadratureVariance(k));
        }
        return new HarmonicSpectrum(
                wave.fit().cyclesPerSample() * sampleRate, Samples.of(cosines), Samples.of(sines), Samples.of(noise));
    }
}
