package clipwitness.reason;

import java.util.List;

/** Where the level of a clipper's source is known from. */
public enum SourceRemark implements RemarkCode {
    /** From the state without clippers. */
    UNCLIPPED_STATE,
    /** From the gain for small signals. */
    SMALL_SIGNAL_GAIN,
    /** The gain behind the clipper is found, too. */
    OUTPUT_GAIN_FOUND("source");

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which cannot be changed
    private final List<String> holes;

    SourceRemark(String... holes) {
        this.holes = List.of(holes);
    }

    @Override
    public List<String> holes() {
        return holes;
    }

    @Override
    public String key() {
        return "clipper.source." + code();
    }
}
