package clipwitness.measure.pair;

import clipwitness.measure.HarmonicSpectrum;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Null depth of two waves, 10 lg(1 - rho²) in dB, rho the largest correlation over all time shifts of the two mean cycles, means removed, over
 * the harmonics that both have, with positive scale only. The power that noise adds to the remainder is taken off it; the uncertainty
 * is found for the remainder and then put in dB; a remainder that does not exceed its uncertainty is an upper bound.
 */
public final class NullDepth {
    private static final int PLACES = 512;
    private static final int REFINEMENTS = 40;

    /**
     * Two mean cycles laid on one another by a shift in time and a scale.
     *
     * @param shift  by how much the second wave is later, in cycles, -0.5 to 0.5, both beginning where their fundamental goes up through zero
     * @param scale  factor on the first wave that brings it nearest to the second, above 0
     * @param turned whether the first wave was turned over
     * @param depth  null depth, dB
     */
    public record Alignment(double shift, double scale, boolean turned, Measured depth) {}

    private NullDepth() {}

    /** Null depth in dB; refused where a capture was refused. */
    public static Measured of(WaveformResult from, WaveformResult to) {
        return alignment(from, to, false)
                .map(Alignment::depth)
                .orElse(Measured.refused(Unit.DECIBEL, FigureReason.ONE_NOT_MEASURED));
    }

    /** The alignment behind the null depth; empty where a capture was refused. */
    public static Optional<Alignment> alignment(WaveformResult from, WaveformResult to, boolean turned) {
        return from.spectrum().flatMap(f -> to.spectrum().map(t -> aligned(f, t, turned)));
    }

    /**
     * The largest remainder that noise alone may leave between two captures like this one, its expanded uncertainty included, as a ratio to the
     * wave; empty where the capture was refused.
     */
    public static OptionalDouble smallestRemainder(WaveformResult capture) {
        if (capture.spectrum().isEmpty()) {
            return OptionalDouble.empty();
        }
        HarmonicSpectrum wave = capture.spectrum().get();
        NoisyPower sum = NoisyPower.ZERO;
        for (int k = 1; k <= wave.count(); k++) {
            double own = wave.quadratureUncertainty().at(k - 1);
            double variance = 2 * own * own; // one share each
            sum = sum.plus(NoisyPower.ofAmplitude(Math.sqrt(2 * variance), variance, variance));
        }
        return OptionalDouble.of(sum.largestAmplitude() / Math.sqrt(power(wave, wave.count())));
    }

    static Alignment aligned(HarmonicSpectrum from, HarmonicSpectrum to, boolean turned) {
        int count = Math.min(from.count(), to.count());
        double sign = turned ? -1 : 1;
        Overlap overlap = new Overlap(from, to, count);
        double shift = bestShift(overlap, sign);
        double fromPower = power(from, count);
        double toPower = power(to, count);
        double scale = Math.max(0, sign * overlap.at(shift)) / fromPower;
        NoisyPower remainder = remainder(from, to, count, shift, sign * scale);
        double reference = Math.sqrt(toPower);
        double noise = 0;
        for (int k = 1; k <= count; k++) {
            double relative = to.amplitude(k) * to.quadratureUncertainty().at(k - 1) / toPower;
            noise = Math.hypot(noise, relative);
        }
        Measured depth = remainder.levelOver(reference, noise * reference, Unit.DECIBEL, FigureReason.WAVES_EQUAL);
        return new Alignment(Math.IEEEremainder(shift, 1), scale, turned, depth);
    }

    private static double power(HarmonicSpectrum wave, int count) {
        double power = 0;
        for (int k = 1; k <= count; k++) {
            power += wave.amplitude(k) * wave.amplitude(k);
        }
        return power;
    }

    private static double bestShift(Overlap overlap, double sign) {
        double best = 0;
        double most = Double.NEGATIVE_INFINITY;
        double[] overlaps = overlap.around(PLACES);
        for (int i = 0; i < PLACES; i++) {
            if (sign * overlaps[i] > most) {
                most = sign * overlaps[i];
                best = (double) i / PLACES;
            }
        }
        double low = best - 1.0 / PLACES;
        double high = best + 1.0 / PLACES;
        for (int i = 0; i < REFINEMENTS; i++) {
            double third = (high - low) / 3;
            if (sign * overlap.at(low + third) < sign * overlap.at(high - third)) {
                low += third;
            } else {
                high -= third;
            }
        }
        return (low + high) / 2;
    }

    private static NoisyPower remainder(
            HarmonicSpectrum from, HarmonicSpectrum to, int count, double shift, double scale) {
        NoisyPower sum = NoisyPower.ZERO;
        for (int k = 1; k <= count; k++) {
            double angle = from.phase(k) - 2 * Math.PI * k * shift;
            double real = to.amplitude(k) * Math.cos(to.phase(k)) - scale * from.amplitude(k) * Math.cos(angle);
            double imaginary = to.amplitude(k) * Math.sin(to.phase(k)) - scale * from.amplitude(k) * Math.sin(angle);
            double own = to.quadratureUncertainty().at(k - 1);
            double other = scale * from.quadratureUncertainty().at(k - 1);
            double variance = own * own + other * other;
            sum = sum.plus(NoisyPower.ofAmplitude(Math.hypot(real, imaginary), variance, variance));
        }
        return sum;
    }
}
