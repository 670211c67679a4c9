package clipwitness.report.page;

import java.time.Duration;
import java.util.Objects;

/**
 * How long a page may take to be filled and printed, and how long it may become. A page that never ends is a fault of its template, and ends one job.
 *
 * @param time  above 0
 * @param pages pages of the document, 1 or more
 */
public record PageBudget(Duration time, int pages) {
    /** Where the user does not say otherwise: a report of hundreds of captures stays far below. */
    public static final PageBudget USUAL = new PageBudget(Duration.ofSeconds(60), 400);

    /** Checks the ranges. */
    public PageBudget {
        Objects.requireNonNull(time, "time");
        if (time.isNegative() || time.isZero() || pages < 1) {
            throw new IllegalArgumentException("a page needs time and a page, but has " + time + " and " + pages);
        }
    }
}
