package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;

/**
 * What half-wave symmetry leaves: rms of [swing(t) + swing(t + T/2)] / 2 over rms of the swing, in percent, noise removed. 0 for a wave
 * whose lower half repeats its upper half, 100 for one that holds even harmonics only. A bound where the sum of the even harmonics, of which it consists, is one.
 */
final class HalfWaveResidue {
    private HalfWaveResidue() {}

    static Measured of(FittedWave wave) {
        NoisyPower power = wave.harmonicPower(2, 2).times(0.5);
        Measured.Value residue = power.over(wave.rms(), RmsLevel.uncertainty(wave), 100, Unit.PERCENT);
        return power.isFaint() ? residue.asUpperBound() : residue;
    }
}
