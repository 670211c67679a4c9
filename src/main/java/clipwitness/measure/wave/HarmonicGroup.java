package clipwitness.measure.wave;

import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;

/**
 * Root-sum-square of a group of harmonics over the fundamental, noise removed, in dBc: the even ones A_2, A_4, .., the odd ones
 * A_3, A_5, .., or the high ones A_8 .. A_K. A sum that does not exceed three times its standard uncertainty is an upper bound, as a single harmonic is.
 */
final class HarmonicGroup {
    private HarmonicGroup() {}

    static Measured even(FittedWave wave) {
        return of(wave, 2, 2);
    }

    static Measured odd(FittedWave wave) {
        return of(wave, 3, 2);
    }

    static Measured high(FittedWave wave) {
        return of(wave, Harmonic.FIRST_HIGH, 1);
    }

    private static Measured of(FittedWave wave, int from, int step) {
        if (wave.count() < from) {
            return Measured.refused(Unit.DBC, Reason.of(FigureReason.TOO_FEW_HARMONICS, Argument.count(wave.count())));
        }
        return wave.harmonicPower(from, step)
                .harmonicLevelOver(
                        wave.fit().amplitude(1), Math.sqrt(wave.quadratureVariance(1)), FigureReason.NO_SUCH_HARMONIC);
    }
}
