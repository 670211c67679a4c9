package clipwitness.reason;

import java.util.List;

/** Why two states, or one quantity of theirs, could not be compared. */
public enum ComparisonReason implements ReasonCode {
    /** Both states have the same file. */
    ONE_EXPORT_FOR_BOTH("from", "to"),
    /** The states share no condition. */
    NO_COMMON_CONDITION("from", "to"),
    /** Both were captured quiet, but under no condition that they share. */
    NO_COMMON_NOISE("from", "to"),
    /** Both have a response, but no frequency that they share, or one a sweep and the other steady tones. */
    NO_COMMON_RESPONSE("from", "to"),
    /** The sheet has no readings of a meter. */
    NO_METER_READINGS,
    /** No reading of a state has an expectation or a reading of the state before. */
    NO_READING_TO_COMPARE,
    /** One rail has neither. */
    NOTHING_TO_COMPARE_READING("rail"),
    /** A change from 0 has no percentage. */
    READING_OF_ZERO,
    /** A deviation from an expected 0 has no percentage. */
    EXPECTATION_OF_ZERO,
    /** A change from next to 0 has none that means anything. */
    READING_OF_FEW_DIGITS,
    /** One of the states lacks its input. */
    NO_COMMON_INPUT,
    /** No waves under a shared condition. */
    NO_COMMON_WAVEFORM,
    /** A state lacks a kind of capture. */
    NO_CAPTURE_OF_KIND("kind", "state"),
    /** No line of the mains stands out of the noise. */
    NO_HUM("mains"),
    /** The same of both frequencies in use. */
    NO_HUM_OF_ANY_MAINS;

    private final String holes;

    ComparisonReason(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }
}
