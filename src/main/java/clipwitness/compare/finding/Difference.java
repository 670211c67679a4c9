package clipwitness.compare.finding;

import clipwitness.compare.judge.CommonPractice;
import clipwitness.measure.LevelEnds;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;

/**
 * The difference of two measured figures.
 *
 * @param before      earlier figure
 * @param now         later figure
 * @param change      later less earlier
 * @param uncertainty expanded, the parts combined as independent (JCGM 100, 5.1.2); of levels of harmonics towards no change, as in {@link clipwitness.measure.LevelChange}
 * @param reach       expanded uncertainties added up: how far two bounds can lie from one another
 */
public record Difference(Measured.Value before, Measured.Value now, double change, double uncertainty, double reach) {
    /** The difference of two figures. */
    public static Difference of(Measured.Value before, Measured.Value now) {
        double change = now.number() - before.number();
        double earlier = width(before, change >= 0, change);
        double later = width(now, change < 0, change);
        return new Difference(before, now, change, Math.hypot(earlier, later), earlier + later);
    }

    /** How far a figure reaches up or down: the level of a harmonic by the ends of its amplitude; a bound of one is a level's upper end already. */
    private static double width(Measured.Value figure, boolean up, double change) {
        double expanded = figure.expanded();
        if (figure.unit() != Unit.DBC || figure.isUpperBound()) {
            return expanded;
        }
        double width = LevelEnds.ofFirstOrder(expanded).to(up);
        return Double.isFinite(width) ? width : Math.abs(change) + expanded;
    }

    /** The difference with another independent change added. */
    public Difference plus(double more, double moreUncertainty) {
        return new Difference(
                before, now, change + more, Math.hypot(uncertainty, moreUncertainty), reach + moreUncertainty);
    }

    /** Whether noise bounds one of the figures, so that only the least size of the change is known. */
    public boolean bounded() {
        return before.isUpperBound() || now.isUpperBound();
    }

    /** The size that the change has at least, counted from the bound; 0 where it may be none. */
    public double least() {
        boolean away = before.isUpperBound() ? change > 0 && !now.isUpperBound() : change < 0;
        return away ? Math.max(0, Math.abs(change) - reach) : 0;
    }

    /** Whether the change exceeds its uncertainty; beside a bound, whether it is heard (levels) or large enough to mention (1 in the unit of the figures) at the least. */
    public boolean significant() {
        return bounded() ? least() >= CommonPractice.HEARD_DECIBELS : Significance.exceeds(change, uncertainty);
    }

    /** Whether the later figure is the larger one. */
    public boolean isRise() {
        return change > 0;
    }
}
