package clipwitness.reason;

import java.util.Objects;

/**
 * A doubt about a capture.
 *
 * @param severity how far it goes
 * @param reason   which doubt, with the figures that raised it; at its core a {@link DoubtReason}
 */
public record Doubt(Severity severity, Reason reason) {
    /** Checks that the reason is that of a doubt. */
    public Doubt {
        Objects.requireNonNull(severity, "severity");
        if (!(reason.core().code() instanceof DoubtReason)) {
            throw new IllegalArgumentException(reason.code().name() + " raises no doubt");
        }
    }

    /** A doubt. */
    public static Doubt of(Severity severity, DoubtReason reason, Argument... arguments) {
        return new Doubt(severity, Reason.of(reason, arguments));
    }

    /** Which doubt. */
    public DoubtCode code() {
        return raisedBy().doubt();
    }

    /** What exactly raised it. */
    public DoubtReason raisedBy() {
        return (DoubtReason) reason.core().code();
    }

    /** Whether it refuses the figures. */
    public boolean refuses() {
        return severity == Severity.REFUSAL;
    }
}
