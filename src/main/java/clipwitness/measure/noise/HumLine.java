package clipwitness.measure.noise;

import clipwitness.measure.Measured;
import java.util.Objects;

/**
 * One line of the mains.
 *
 * @param order     multiple of the mains, from 1
 * @param frequency that multiple of the nominal frequency, Hz
 * @param power     mean square with its noise taken off, V²; may come out below 0
 * @param variance  of the power, V⁴
 * @param level     rms, V; refused where it is not above three times its standard uncertainty
 */
public record HumLine(int order, double frequency, double power, double variance, Measured level) {
    /** Checks that there is a level. */
    public HumLine {
        Objects.requireNonNull(level, "level");
    }

    /** Whether it stands out of the noise. */
    public boolean stands() {
        return level.value().isPresent();
    }
}
