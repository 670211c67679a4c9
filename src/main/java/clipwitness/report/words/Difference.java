package clipwitness.report.words;

import clipwitness.measure.Measured;

/**
 * The difference of two measured figures.
 *
 * @param before      earlier figure
 * @param now         later figure
 * @param change      later less earlier
 * @param uncertainty expanded, both combined as independent (JCGM 100, 5.1.2)
 */
record Difference(Measured.Value before, Measured.Value now, double change, double uncertainty) {
    static Difference of(Measured.Value before, Measured.Value now) {
        return new Difference(
                before,
                now,
                now.number() - before.number(),
                Math.hypot(
                        before.expandedUncertainty().orElse(0),
                        now.expandedUncertainty().orElse(0)));
    }

    /** The difference with another independent change added. */
    Difference plus(double more, double moreUncertainty) {
        return new Difference(before, now, change + more, Math.hypot(uncertainty, moreUncertainty));
    }

    /** Whether the change exceeds its uncertainty. */
    boolean significant() {
        return Math.abs(change) > uncertainty;
    }
}
