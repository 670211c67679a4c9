package clipwitness.job;

import java.util.Locale;

/** What can be attached to the PDF. */
public enum Attachment {
    /** The results, JSON and CSV. */
    RESULTS,
    /** The job sheet. */
    SHEET,
    /** The captures table. */
    CAPTURES;

    /** Name on the sheet. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
