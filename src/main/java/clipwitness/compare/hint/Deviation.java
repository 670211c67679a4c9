package clipwitness.compare.hint;

import clipwitness.job.State;
import clipwitness.reason.Argument;
import clipwitness.reason.Remark;

/** What is not as the traced devices make it, in one state. */
sealed interface Deviation permits HalfDeviation, RatioDeviation, PathDeviation {
    /** The state. */
    State state();

    /** What was found and where to look, of a state or of several that deviate alike. */
    Remark finding(Argument states);

    /** The figures behind it. */
    Remark evidence();

    /** Whether another state deviates in the same way. */
    default boolean isAlike(Deviation other) {
        Argument none = Argument.name("-");
        return finding(none).equals(other.finding(none));
    }
}
