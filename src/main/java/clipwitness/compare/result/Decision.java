package clipwitness.compare.result;

import java.util.Locale;

/** What was decided about an item, or about a comparison. */
public enum Decision {
    /** Within the limit, uncertainty included. */
    PASS,
    /** Beyond the limit, uncertainty included. */
    FAIL,
    /** The limit lies inside the uncertainty. */
    UNDECIDED,
    /** Nothing was to be judged. */
    DESCRIBED;

    /** Name in the results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
