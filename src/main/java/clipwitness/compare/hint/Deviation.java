package clipwitness.compare.hint;

import clipwitness.job.State;

/** What is not as the traced devices make it, in one state. */
sealed interface Deviation permits HalfDeviation, PathDeviation {
    /** The state. */
    State state();

    /** What was found and where to look: a sentence from its verb on, without the state. */
    String finding();

    /** The figures behind it. */
    String evidence();
}
