package clipwitness.reason;

import java.util.List;

/** Why a figure of a traced device, or a prediction from it, is refused. */
public enum DeviceReason implements ReasonCode {
    /** The curve begins above the current asked for. */
    CURVE_BEGINS("current"),
    /** The curve ends below the current asked for. */
    CURVE_ENDS("current"),
    /** Nothing was traced downwards. */
    NO_SWEEP_BACK,
    /** Sweeps up and down share no current. */
    NO_COMMON_CURRENT,
    /** No whole decade was traced. */
    NO_WHOLE_DECADE,
    /** Too few points for a fit. */
    FEW_POINTS("points", "needed"),
    /** Less than one decade of current. */
    LESS_THAN_A_DECADE,
    /** The fit does not settle. */
    FIT_DOES_NOT_SETTLE,
    /** A curve that is nearly straight. */
    NEARLY_STRAIGHT,
    /** A curve that is no exponential. */
    NOT_EXPONENTIAL,
    /** No knee between two slopes. */
    SLOPE_AT_ZERO,
    /** The fit needs no shunt. */
    NO_SHUNT,
    /** Nothing conducts. */
    NO_CURRENT,
    /** Nothing conducts more than the instrument's floor. */
    CURRENT_IN_FLOOR("current"),
    /** A resistor. */
    RESISTOR("resistance"),
    /** A clipper without pairs. */
    NO_PAIRS,
    /** A device without a curve. */
    NOT_TRACED("device"),
    /** Nothing says what drives the clipper. */
    SOURCE_UNKNOWN,
    /** Nothing says how high the output is. */
    OUTPUT_LEVEL_UNKNOWN,
    /** Nothing says what follows the clipper. */
    OUTPUT_GAIN_UNKNOWN,
    /** The stage ahead of the clipper distorts by itself. */
    SOURCE_DISTORTED("thd"),
    /** The source would swing farther than the supply lets it. */
    SOURCE_BEYOND_SUPPLY("amplitude", "supply"),
    /** Too little clips to tell two paths. */
    PATHS_ALIKE,
    /** Two paths are told by a transfer curve only. */
    PATHS_WITHOUT_INPUT,
    /** The wave shows a clean path and the sheet names none. */
    PATH_NOT_NAMED,
    /** Two unknowns that act alike. */
    PATHS_AND_FEEDBACK_CONTROL,
    /** The gain control is a resistance, known at full gain only. */
    NOT_AT_FULL_GAIN("resistance"),
    /** The gain gives no such resistance. */
    RESISTANCE_UNKNOWN("resistance");

    private final String holes;

    DeviceReason(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }
}
