package clipwitness.reason;

import java.util.List;

/** Says of another reason where it holds; the other reason is the last argument. */
public enum FrameReason implements ReasonCode {
    /** The reason holds in one state. */
    IN_STATE("state", "reason"),
    /** The reason holds for one channel of an export. */
    IN_CHANNEL("channel", "reason"),
    /** The reason holds for the input channel. */
    IN_INPUT("reason"),
    /** The reason holds for the curve of one device. */
    IN_CURVE("device", "reason"),
    /** What the reason means for a state that must not change. */
    NOTHING_SAYS_UNCHANGED("reason");

    private final String holes;

    FrameReason(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }
}
