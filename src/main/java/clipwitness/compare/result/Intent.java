package clipwitness.compare.result;

import java.util.Locale;

/** What a comparison is to show. */
public enum Intent {
    /** That nothing changed. */
    UNCHANGED,
    /** What changed. */
    CHANGED,
    /** How two states differ, without judging. */
    DESCRIBED;

    /** Name in the results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
