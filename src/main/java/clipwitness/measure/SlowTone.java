package clipwitness.measure;

import java.util.Objects;

/**
 * A wave slower than the tone in a capture: hum, drift or a beat.
 *
 * @param frequency of the sine that explains most of it, Hz; of the mains where that explains it
 * @param amplitude half its span over the record, V
 */
public record SlowTone(double frequency, Measured.Value amplitude) {
    /** Checks the frequency. */
    public SlowTone {
        Objects.requireNonNull(amplitude, "amplitude");
        if (!(frequency > 0)) {
            throw new IllegalArgumentException("frequency must be above 0 Hz but is " + frequency);
        }
    }
}
