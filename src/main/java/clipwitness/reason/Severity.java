package clipwitness.reason;

import java.util.Locale;

/** How far a doubt goes. */
public enum Severity {
    /** Worth knowing, nothing suffers. */
    NOTE,
    /** Figures are given, with care. */
    WARNING,
    /** The figures are refused. */
    REFUSAL;

    /** Name in the results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
