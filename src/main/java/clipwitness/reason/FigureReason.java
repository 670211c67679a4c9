package clipwitness.reason;

import java.util.List;

/** Why a figure of a wave, or of several waves, is refused. */
public enum FigureReason implements ReasonCode {
    /** The figure needs an input channel. */
    NO_INPUT_CHANNEL,
    /** Nobody says what the recorded values are worth. */
    NO_VOLTS,
    /** The same of one of two states only. */
    VOLTS_OF_ONE_STATE("state"),
    /** A mark or an onset lies beyond what was captured. */
    NOT_REACHED,
    /** The mark lies below the lowest setting captured. */
    BELOW_LOWEST_SETTING,
    /** A mark is reached between two settings, at the lower of which noise hides the figure. */
    BETWEEN_SETTINGS("lower", "upper"),
    /** A mark is reached below a setting, and noise hides the figure at those below. */
    BELOW_SETTING("upper"),
    /** No setting has a distortion to draw a curve through. */
    NO_DISTORTION_FIGURE,
    /** One setting is no curve. */
    ONE_SETTING_ONLY,
    /** The curve is level where the mark lies. */
    DISTORTION_LEVEL,
    /** Noise hides the slope for small signals. */
    SLOPE_HIDDEN,
    /** Noise hides the onset. */
    ONSET_HIDDEN,
    /** The input is too coarse for the straight part. */
    FEW_INPUT_CODES,
    /** Too few samples for the straight part. */
    FEW_STRAIGHT_SAMPLES,
    /** The output does not rise with the input. */
    OUTPUT_NOT_RISING,
    /** Rising and falling input give two curves. */
    BRANCHES_APART("gap"),
    /** Noise hides whether rising and falling input give one curve. */
    BRANCHES_HIDDEN("gap"),
    /** The filters behind the clipper, taken off, leave the onset open. */
    ONSET_BEHIND_FILTERS,
    /** A line of the mains in the noise. */
    LINE_HIDDEN,
    /** No gain to refer a figure to the input by. */
    NO_INPUT_GAIN,
    /** A record shorter than a period of the mains. */
    RECORD_TOO_SHORT,
    /** A record of one value. */
    RECORD_CONSTANT,
    /** Upper and lower half-wave cannot be parted. */
    NO_HALF_WAVE,
    /** No such harmonic at all, not even noise. */
    NO_SUCH_HARMONIC,
    /** The curve does not bend enough to have a knee. */
    NO_KNEE,
    /** The sample rate leaves room for so many harmonics only. */
    TOO_FEW_HARMONICS("count"),
    /** A share whose uncertainty leaves nearly all of it open. */
    KNOWN_TOO_ROUGHLY("uncertainty"),
    /** The capture was refused. */
    CAPTURE_NOT_MEASURED,
    /** The capture that is predicted was refused. */
    CAPTURE_ITSELF_NOT_MEASURED,
    /** One of two captures was refused. */
    ONE_NOT_MEASURED,
    /** A harmonic that one of two captures does not have. */
    HARMONIC_NOT_COMMON("harmonic"),
    /** A harmonic in the noise. */
    HARMONIC_BURIED("harmonic"),
    /** A harmonic that was not measured. */
    HARMONIC_NOT_MEASURED("harmonic"),
    /** Two waves without any difference. */
    WAVES_EQUAL,
    /** A level of nothing. */
    LEVEL_OF_ZERO("figure"),
    /** The lowest of the level steps. */
    LOWEST_STEP,
    /** Two level steps of one input. */
    SAME_INPUT_LEVEL,
    /** The predicted wave is too steep at its onset. */
    ONSET_TOO_FAST;

    private final String holes;

    FigureReason(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }
}
