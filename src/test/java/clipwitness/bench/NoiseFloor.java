package clipwitness.bench;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * What an effect puts out with its input terminated: hiss, and hum at the mains frequency and its third harmonic.
 *
 * @param hiss  white noise, V rms
 * @param hum   line at the mains frequency, V rms
 * @param third line at three times the mains frequency, V rms
 */
record NoiseFloor(double hiss, double hum, double third) {
    private static final double MAINS = 50;

    /** Volts at a time in s; asked for the same time twice, the hiss differs. */
    DoubleUnaryOperator voltage(Random random) {
        return time -> hiss * random.nextGaussian()
                + Math.sqrt(2) * hum * Math.sin(2 * Math.PI * MAINS * time)
                + Math.sqrt(2) * third * Math.sin(2 * Math.PI * 3 * MAINS * time + 1);
    }
}
