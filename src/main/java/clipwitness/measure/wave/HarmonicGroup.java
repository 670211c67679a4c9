package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;

/**
 * Root-sum-square of a group of harmonics over the fundamental, noise removed, in dBc: the even ones A_2, A_4, .., the odd ones
 * A_3, A_5, .., or the high ones A_8 .. A_K. What noise buries is an upper bound.
 */
final class HarmonicGroup {
    private static final int FIRST_HIGH = 8;

    private HarmonicGroup() {}

    static Measured even(FittedWave wave) {
        return of(wave, 2, 2);
    }

    static Measured odd(FittedWave wave) {
        return of(wave, 3, 2);
    }

    static Measured high(FittedWave wave) {
        return of(wave, FIRST_HIGH, 1);
    }

    private static Measured of(FittedWave wave, int from, int step) {
        if (wave.count() < from) {
            return Measured.refused(Unit.DBC, "only " + wave.count() + " harmonics lie below 0.45 of the sample rate");
        }
        return wave.harmonicPower(from, step)
                .levelOver(
                        wave.fit().amplitude(1),
                        Math.sqrt(wave.quadratureVariance(1)),
                        Unit.DBC,
                        "the record holds no such harmonic at all");
    }
}
