package clipwitness.measure;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One harmonic of a wave.
 *
 * @param order     2 or more
 * @param amplitude peak amplitude, V
 * @param level     over the fundamental, dBc
 * @param phase     phi_k - k phi_1 in degrees, -180 to 180; empty where the amplitude does not exceed its uncertainty
 */
public record Harmonic(int order, Measured amplitude, Measured level, OptionalDouble phase) {
    /** Order of the first high harmonic: those from here on stand for harshness (measurement book, section 2: A_8 .. A_K). */
    public static final int FIRST_HIGH = 8;

    /** Checks the order. */
    public Harmonic {
        Objects.requireNonNull(amplitude, "amplitude");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(phase, "phase");
        if (order < 2) {
            throw new IllegalArgumentException("a harmonic's order is 2 or more but is " + order);
        }
    }
}
