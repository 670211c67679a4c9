package clipwitness.reason;

import java.util.Locale;

/** What can be doubtful about a capture; {@link #code()} is the name in the results. */
public enum DoubtCode {
    /** The instrument's converter was at its end. */
    OVER_RANGE,
    /** Fewer whole periods than a figure needs. */
    FEW_PERIODS,
    /** Too few samples a period. */
    UNDERSAMPLED,
    /** The swing uses few converter codes. */
    LOW_RESOLUTION,
    /** The samples are not evenly spaced. */
    UNEVEN_TIME,
    /** Time stamps repeat: rounded stamps, or an envelope record. */
    REPEATED_TIME,
    /** Gaps in the record. */
    MISSING_SAMPLES,
    /** No line at the expected frequency. */
    NO_FUNDAMENTAL,
    /** The fundamental is not at the sheet's frequency. */
    WRONG_FREQUENCY,
    /** Rows that are given as captures of one wave show different ones. */
    REPLICATES_DIFFER,
    /** Hum, drift or a beat under the tone. */
    SLOW_WAVE,
    /** Filters were taken off the wave for the figures of its transfer curve. */
    STRAIGHTENED,
    /** The input is itself distorted. */
    DISTORTED_INPUT,
    /** The stimulus of two compared captures, or of capture and sheet, differs. */
    STIMULUS_CHANGED,
    /** The capture was AC coupled. */
    AC_COUPLED,
    /** Two captures cannot be compared. */
    NOT_COMPARABLE,
    /** A unit or scale was not stated. */
    UNIT_ASSUMED,
    /** The mains frequency was not stated. */
    MAINS_ASSUMED,
    /** The record is too short to resolve hum. */
    TOO_SHORT_FOR_HUM;

    /** Name in the results, for example {@code over-range}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
