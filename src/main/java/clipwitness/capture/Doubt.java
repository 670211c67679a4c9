package clipwitness.capture;

import java.util.Locale;
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

    /** The text with a full stop. */
    public String sentence() {
        return clauseOf(text) + ".";
    }

    /** The text as the reason of a refusal is worded: without capital and full stop. */
    public String reason() {
        return clauseOf(text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1));
    }

    private static String clauseOf(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
