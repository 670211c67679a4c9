package clipwitness.measure.noise;

import clipwitness.measure.Measured;
import clipwitness.measure.wave.NoisyPower;
import java.util.Objects;

/**
 * One line of the mains.
 *
 * @param order     multiple of the mains, from 1
 * @param frequency that multiple of the nominal frequency, Hz
 * @param square    square of its peak amplitude with its noise taken off, V²
 * @param level     rms, V; refused where it is not above three times its standard uncertainty
 */
public record HumLine(int order, double frequency, NoisyPower square, Measured level) {
    /** Checks that there is a level. */
    public HumLine {
        Objects.requireNonNull(square, "square");
        Objects.requireNonNull(level, "level");
    }

    /** The line with another level. */
    public HumLine with(Measured other) {
        return new HumLine(order, frequency, square, other);
    }

    /** Whether it stands out of the noise. */
    public boolean stands() {
        return level.value().isPresent();
    }
}
