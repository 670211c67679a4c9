package clipwitness.reason;

import clipwitness.quantity.Unit;
import java.util.List;

/** Words inside other sentences. */
public enum Word implements RemarkCode {
    /** Upper half. */
    UPPER_HALF,
    /** Lower half. */
    LOWER_HALF,
    /** Higher than predicted. */
    HIGHER,
    /** Lower than predicted. */
    LOWER,
    /** Level of the upper half. */
    UPPER_CLIP_LEVEL,
    /** Level of the lower half. */
    LOWER_CLIP_LEVEL,
    /** Peak of the upper half. */
    UPPER_PEAK,
    /** Peak of the lower half. */
    LOWER_PEAK,
    /** A resistance of the clipper. */
    FEEDBACK_RESISTANCE,
    /** The other resistance of the clipper. */
    INPUT_RESISTANCE,
    /** More drive. */
    STRONGER,
    /** Less drive. */
    WEAKER,
    /** Noise captures. */
    NOISE,
    /** Noise of the whole band. */
    NOISE_RMS,
    /** Noise weighted as the ear hears. */
    NOISE_A_WEIGHTED,
    /** Response captures. */
    RESPONSE,
    /** How an instrument was coupled. */
    COUPLING,
    /** How an instrument acquired. */
    ACQUISITION,
    /** Time stamps as a source. */
    TIME_STAMPS,
    /** A statement of the preamble as a source. */
    STATEMENT_ON_LINE("key", "line"),
    /** A position of the gain control. */
    GAIN("gain"),
    /** Its end. */
    FULL_GAIN,
    /** Every state. */
    EACH_STATE,
    /** The other of two states. */
    THE_OTHER,
    /** A state's label. */
    QUOTED("state"),
    /** Two names, the first of which may be several. */
    BOTH("first", "second"),
    /** A harmonic by its order. */
    HARMONIC("order"),
    /** The harmonic that is spoken of. */
    THIS_HARMONIC,
    /** The level. */
    RMS,
    /** The distortion. */
    THD,
    /** The fundamental. */
    FUNDAMENTAL,
    /** The crest factor. */
    CREST_FACTOR;

    private static final double FULL_PERCENT = 100;

    private final String holes;

    Word(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    /**
     * What every page calls a position of the gain control: {@code 50 % gain}, {@code full gain}.
     *
     * @param percent of its rotation, 0 to 100
     */
    public static Remark gain(double percent) {
        return percent == FULL_PERCENT
                ? Remark.of(FULL_GAIN)
                : Remark.of(GAIN, Argument.nominal(percent, Unit.PERCENT));
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    @Override
    public String key() {
        return "word." + code();
    }
}
