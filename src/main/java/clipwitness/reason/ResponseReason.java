package clipwitness.reason;

import java.util.List;

/** Why a frequency response has no figure at a frequency. */
public enum ResponseReason implements ReasonCode {
    /** The input holds nothing there. */
    NO_STIMULUS,
    /** The input does not explain the output. */
    LOW_COHERENCE("coherence"),
    /** The gain is too uncertain to say anything. */
    HIDDEN,
    /** A response needs both channels. */
    NO_INPUT_FOR_RESPONSE,
    /** The curve does not fall to half of its power. */
    NO_CORNER;

    private final String holes;

    ResponseReason(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }
}
