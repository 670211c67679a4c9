package clipwitness.draft;

import java.util.Locale;

/** Kinds of captures that a draft tells apart. */
public enum DraftKind {
    /** A steady wave. */
    WAVEFORM,
    /** A record without a signal. */
    NOISE,
    /** A sweep, noise or stepped sine, with its answer. */
    RESPONSE,
    /** A traced device. */
    JUNCTION,
    /** A recording of playing. */
    LISTENING;

    /** Name in the captures table. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
