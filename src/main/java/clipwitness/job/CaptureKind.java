package clipwitness.job;

import java.util.Locale;

/** What a capture is for. */
public enum CaptureKind {
    /** A wave to be measured. */
    WAVEFORM,
    /** Input terminated, for noise and hum. */
    NOISE,
    /** A point of the frequency response. */
    RESPONSE,
    /** A traced junction curve. */
    JUNCTION,
    /** A recording of playing: evidence that is kept, and neither compared nor judged. */
    LISTENING;

    /** Name in the captures table and in the results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
