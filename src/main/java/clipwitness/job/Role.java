package clipwitness.job;

import java.util.Locale;

/** What a state is for. */
public enum Role {
    /** What the others are compared with. */
    BEFORE,
    /** Must still be what it was. */
    UNCHANGED,
    /** Meant to differ. */
    CHANGED,
    /** Printed, compared with nothing. */
    SHOWN;

    /** Name on the job sheet. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
