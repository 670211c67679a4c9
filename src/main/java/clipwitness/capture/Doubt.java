package clipwitness.capture;

import java.util.Objects;

/**
 * A doubt about a capture.
 *
 * @param code     which doubt
 * @param severity how far it goes
 * @param text     a sentence for the report, with the figures that raised the doubt
 */
public record Doubt(DoubtCode code, Severity severity, String text) {
    /** Checks that all parts are there. */
    public Doubt {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(text, "text");
    }
}
