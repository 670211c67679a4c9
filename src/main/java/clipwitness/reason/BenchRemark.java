package clipwitness.reason;

import java.util.List;

/** What is missing before the unit is opened. */
public enum BenchRemark implements RemarkCode {
    /** A state without waves. */
    NO_WAVEFORM("state"),
    /** A state at one position of the gain control. */
    ONE_GAIN_SETTING("state"),
    /** A state that was set once. */
    NO_REPLICATE("state"),
    /** A state without its input. */
    NO_INPUT_CHANNEL("state"),
    /** A state without a noise capture. */
    NO_NOISE_CAPTURE("state"),
    /** A state without a response capture. */
    NO_RESPONSE_CAPTURE("state"),
    /** A noise record that is too short. */
    TOO_SHORT_FOR_HUM("file", "lasts", "mains", "needed"),
    /** A wave in a part of the screen. */
    SCREEN_HALF_EMPTY("file", "used"),
    /** A rail without a reading from before. */
    NO_READING("rail"),
    /** A capture that is doubted. */
    DOUBTED("file", "doubt");

    private final String holes;

    BenchRemark(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    @Override
    public String key() {
        return "bench.missing." + code();
    }
}
