package clipwitness.measure;

import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One harmonic of a wave.
 *
 * @param order     2 or more
 * @param amplitude peak amplitude, V
 * @param level     over the fundamental, dBc
 * @param phase     phi_k - k phi_1 in degrees, -180 to 180; empty where noise bounds the harmonic
 */
public record Harmonic(int order, Measured amplitude, Measured level, OptionalDouble phase) {
    /** Order of the first high harmonic: those from here on stand for harshness (measurement book, section 2: A_8 .. A_K). */
    public static final int FIRST_HIGH = 8;

    /**
     * An amplitude of up to so many of its standard uncertainties is a bound: in dB its interval would be a lopsided one
     * (measurement book, section 2).
     */
    private static final double FAINT = 3;

    /** Checks the order. */
    public Harmonic {
        Objects.requireNonNull(amplitude, "amplitude");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(phase, "phase");
        if (order < 2) {
            throw new IllegalArgumentException("a harmonic's order is 2 or more but is " + order);
        }
    }

    /**
     * Whether noise leaves no more than a bound of an amplitude.
     *
     * @param amplitude   found, in any unit
     * @param uncertainty its standard uncertainty, in the same unit
     */
    public static boolean isFaint(double amplitude, double uncertainty) {
        return !(amplitude > FAINT * uncertainty);
    }

    /** The harmonic with another uncertainty of its level; where that makes the level a bound, without its phase. */
    public Harmonic withLevel(Measured other) {
        boolean bound = other.asValue().filter(Measured.Value::isUpperBound).isPresent();
        return new Harmonic(order, amplitude, other, bound ? OptionalDouble.empty() : phase);
    }

    /** Why there is no phase; empty where there is one, or where there is no such harmonic at all. */
    public Optional<Reason> phaseReason() {
        return phase.isEmpty() && level.value().isPresent()
                ? Optional.of(
                        Reason.of(FigureReason.HARMONIC_BURIED, Argument.word(Word.HARMONIC, Argument.count(order))))
                : Optional.empty();
    }
}
