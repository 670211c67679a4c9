package clipwitness.reason;

import java.util.List;

/** What would decide an undecided item. */
public enum RemedyRemark implements RemarkCode {
    /** A refused figure. */
    CAPTURE_AGAIN("reason"),
    /** A refused figure from before the work. */
    CAPTURE_AGAIN_IF_UNDONE("reason"),
    /** A refused figure that the captures table causes. */
    CORRECT_ROWS("reason"),
    /** The change lies on the limit. */
    ON_THE_LIMIT,
    /** The stimulus differs. */
    SAME_STIMULUS("what", "as"),
    /** The temperature differs. */
    SAME_TEMPERATURE("what", "as"),
    /** The range or the instrument differs. */
    SAME_RANGE("what", "as"),
    /** Noise hides the change. */
    LONGER_RECORD("what", "times"),
    /** A record of noise is too short. */
    LONGER_NOISE_RECORD("what", "times"),
    /** The converter step hides the change. */
    FINER_RANGE("what", "times"),
    /** The converter step hides the change, and no finer range holds the wave. */
    MORE_BITS("what", "bits"),
    /** The knob hides the change. */
    MORE_RUNS("what", "runs"),
    /** The knob hides the change, and runs would be too many. */
    BETTER_KNOB("what", "times"),
    /** The knob as it was set before hides the change. */
    KNOB_BEFORE("knob", "hidden", "state", "again"),
    /** How far the knob moves the figure is not known. */
    KNOB_UNKNOWN("what"),
    /** The capture from before is too uncertain. */
    BEFORE_TOO_UNCERTAIN("state"),
    /** No practicable number of captures would help. */
    NO_NUMBER_OF_CAPTURES,
    /** The meter hides the deviation. */
    BETTER_METER("rail"),
    /** One state, to be captured anew. */
    STATE_AGAIN("state");

    private final String holes;

    RemedyRemark(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    @Override
    public String key() {
        return "remedy." + code();
    }
}
