package clipwitness.capture;

import java.util.Objects;
import java.util.Optional;

/**
 * Current against voltage of one two-terminal device, points in the order in which they were taken; a gap in either is NaN.
 *
 * @param volts        voltage, V
 * @param amperes      current, A, of the same points
 * @param voltsSigma   standard uncertainty of each voltage, V, where the export states it
 * @param amperesSigma standard uncertainty of each current, A, where the export states it
 */
public record IvCurve(Samples volts, Samples amperes, Optional<Samples> voltsSigma, Optional<Samples> amperesSigma) {
    /** Checks that all columns are of one length. */
    public IvCurve {
        Objects.requireNonNull(volts, "volts");
        Objects.requireNonNull(amperes, "amperes");
        requireLength(volts, amperes);
        voltsSigma.ifPresent(s -> requireLength(volts, s));
        amperesSigma.ifPresent(s -> requireLength(volts, s));
    }

    private static void requireLength(Samples wanted, Samples found) {
        if (wanted.size() != found.size()) {
            throw new IllegalArgumentException(
                    "a curve needs columns of one length but has " + wanted.size() + " and " + found.size());
        }
    }
}
