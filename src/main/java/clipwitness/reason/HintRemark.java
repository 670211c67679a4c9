package clipwitness.reason;

import java.util.List;

/** What a hint says, and the figures behind it. */
public enum HintRemark implements RemarkCode {
    /** At one position of the gain control. */
    AT_GAIN("gain"),
    /** At the one setting that there is. */
    AT_THE_ONE_SETTING,
    /** Positions mixed up. */
    STATES_SWAPPED("changed", "unchanged"),
    /** Its evidence, of one setting. */
    STATES_SWAPPED_BY_ONE("changed", "unchanged"),
    /** Its evidence, of several settings. */
    STATES_SWAPPED_BY("changed", "settings", "unchanged"),
    /** One half goes on rising. */
    ONE_SIDE_NOT_CLIPPING("state", "half"),
    /** Its evidence from the peaks: the half over the other. */
    ONE_SIDE_BY_PEAKS("place", "half", "after", "before"),
    /** Its evidence from peaks and clip levels. */
    ONE_SIDE_BY_BOTH("place", "half", "after", "before", "clipAfter", "clipBefore"),
    /** Clippers out of circuit. */
    NOT_CLIPPING("state"),
    /** Clippers out of circuit, or a leg behind a capacitor. */
    HARDLY_CLIPPING("state"),
    /** Its evidence. */
    NOT_CLIPPING_BY("place", "after", "before", "level"),
    /** Nothing comes out. */
    NO_OUTPUT("state"),
    /** Its evidence, of the level. */
    NO_OUTPUT_BY_LEVEL("place", "level"),
    /** Its evidence, of the tone. */
    NO_OUTPUT_BY_TONE("place"),
    /** The wave is turned over. */
    INVERTED("state"),
    /** The wave is turned over, or its pair is. */
    UPSIDE_DOWN("state"),
    /** Its evidence, of the phase. */
    INVERTED_BY_PHASE("place", "phase"),
    /** Its evidence, of the null. */
    INVERTED_BY_NULL("place", "upright", "over"),
    /** A slow wave under the tone. */
    SLOW_WAVE("state"),
    /** Its evidence, where there was one before. */
    SLOW_WAVE_BY("place", "amplitude", "frequency", "before"),
    /** Its evidence, where there was none before. */
    SLOW_WAVE_BY_NEW("place", "amplitude", "frequency"),
    /** Lines of the mains grew, even multiples. */
    EXTRA_HUM_RIPPLE("state", "lines"),
    /** Lines of the mains grew, the mains itself and odd multiples. */
    EXTRA_HUM_INDUCED("state", "lines"),
    /** Lines of the mains grew, of both kinds. */
    EXTRA_HUM_BOTH("state", "lines"),
    /** Its evidence, where the line stood out before. */
    EXTRA_HUM_BY("place", "frequency", "after", "before", "change"),
    /** Its evidence, where it did not. */
    EXTRA_HUM_BY_NEW("place", "frequency", "after", "before", "change"),
    /** One frequency. */
    ONE_LINE("first"),
    /** Two frequencies. */
    TWO_LINES("first", "second"),
    /** Three frequencies. */
    THREE_LINES("first", "second", "third"),
    /** The knob sits elsewhere. */
    KNOB_OFFSET("state"),
    /** Its evidence. */
    KNOB_OFFSET_BY("shift", "left"),
    /** A low-pass beside the clipper. */
    DULLER("state"),
    /** A high-pass beside the clipper. */
    THINNER("state"),
    /** A level beside the clipper. */
    OTHER_LEVEL("state"),
    /** Evidence of what moved alike. */
    BESIDE_BY_LEVEL("least", "most", "place"),
    /** The same where it moved by the same everywhere. */
    BESIDE_BY_ONE_LEVEL("change", "place"),
    /** The same with one harmonic more. */
    BESIDE_BY_HARMONIC("evidence", "order", "change"),
    /** The same with one harmonic more that did not move. */
    BESIDE_BY_STILL_HARMONIC("evidence", "order", "bound"),
    /** A hint that is true of one state more. */
    ALSO_IN("hint", "state"),
    /** Its evidence. */
    ALSO_BY("evidence", "state", "more"),
    /** One half clips higher than predicted. */
    LEG_HIGHER("state", "half"),
    /** One half clips lower than predicted. */
    LEG_LOWER("state", "half"),
    /** Both halves clip higher or both lower. */
    LEGS_ALIKE("state", "direction"),
    /** One half clips higher and the other lower. */
    LEGS_APART("state", "half", "direction", "otherHalf", "otherDirection"),
    /** The ratio of the halves is another, where volts are not predicted. */
    LEGS_RATIO("state"),
    /** Evidence of the ratio. */
    LEGS_RATIO_BY("place", "measured", "predicted", "uncertainty"),
    /** Evidence of one half. */
    LEG_BY("place", "level"),
    /** Evidence of both halves. */
    LEGS_BY("place", "level", "other"),
    /** Evidence with where the source's level is known from. */
    LEG_BY_SOURCE("evidence", "source"),
    /** A level, measured and predicted. */
    LEG_LEVEL("level", "measured", "predicted", "uncertainty"),
    /** Beside a clean path: not the devices' wave. */
    PATHS_DEVIATE("state"),
    /** Its evidence. */
    PATHS_DEVIATE_BY("place", "now", "before"),
    /** Beside a clean path: the clipped one higher or lower. */
    PATHS_SCALED("state", "direction"),
    /** Its evidence. */
    PATHS_SCALED_BY("place", "now", "before"),
    /** A clean path. */
    CLEAN_PATH("state"),
    /** Its evidence. */
    CLEAN_PATH_BY("place", "share", "uncertainty", "remainder");

    private final String holes;

    HintRemark(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    @Override
    public String key() {
        return "hint." + code();
    }
}
