package clipwitness.reason;

import java.util.List;

/** Where the level of a clipper's source is known from. */
public enum SourceRemark implements RemarkCode {
    /** From the state without clippers. */
    UNCLIPPED_STATE,
    /** From the gain for small signals. */
    SMALL_SIGNAL_GAIN,
    /** The gain behind the clipper is found, too. */
    OUTPUT_GAIN_FOUND("source"),
    /** Clipped and clean path, fitted. */
    PATHS,
    /** The same, the level without clippers known. */
    PATHS_AND_UNCLIPPED,
    /** The resistance that the gain control has is found, too. */
    RESISTANCE_FOUND("source", "resistance", "ohms"),
    /** The figures of the state before. */
    STATE_BEFORE;

    private final String holes;

    SourceRemark(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    @Override
    public String key() {
        return "clipper.source." + code();
    }
}
