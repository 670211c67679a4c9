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
    /** Its evidence from the onsets. */
    ONE_SIDE_BY_ONSET("gain", "half"),
    /** Its evidence from the clip levels. */
    ONE_SIDE_BY_LEVELS("low", "lowGain", "high", "highGain"),
    /** Clippers out of circuit. */
    NOT_CLIPPING("state"),
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
    /** The knob sits elsewhere. */
    KNOB_OFFSET("state"),
    /** Its evidence. */
    KNOB_OFFSET_BY("shift", "left"),
    /** One half clips higher than predicted. */
    LEG_HIGHER("state", "half"),
    /** One half clips lower than predicted. */
    LEG_LOWER("state", "half"),
    /** Both halves clip higher or both lower. */
    LEGS_ALIKE("state", "direction"),
    /** One half clips higher and the other lower. */
    LEGS_APART("state", "half", "direction", "otherHalf", "otherDirection"),
    /** Evidence of one half. */
    LEG_BY("place", "level"),
    /** Evidence of both halves. */
    LEGS_BY("place", "level", "other"),
    /** Evidence with where the source's level is known from. */
    LEG_BY_SOURCE("evidence", "source"),
    /** A level, measured and predicted. */
    LEG_LEVEL("level", "measured", "predicted", "uncertainty");

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which cannot be changed
    private final List<String> holes;

    HintRemark(String... holes) {
        this.holes = List.of(holes);
    }

    @Override
    public List<String> holes() {
        return holes;
    }

    @Override
    public String key() {
        return "hint." + code();
    }
}
