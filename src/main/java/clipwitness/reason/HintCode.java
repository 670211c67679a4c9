package clipwitness.reason;

import java.util.Locale;

/** A known fault that figures look like; {@link #code()} is the name in the results. */
public enum HintCode {
    /** Switch positions mixed up. */
    STATES_SWAPPED,
    /** One half of the wave does not clip. */
    ONE_SIDE_NOT_CLIPPING,
    /** Nothing clips. */
    NOT_CLIPPING,
    /** Nothing comes out. */
    NO_OUTPUT,
    /** The wave is turned over. */
    INVERTED,
    /** The wave is not the one that the traced devices make. */
    LEG_MISMATCH,
    /** Hum that was not there before. */
    EXTRA_HUM,
    /** The knob sits elsewhere. */
    KNOB_OFFSET,
    /** What changed lies beside the clipper. */
    BESIDE_THE_CLIPPER,
    /** A clean path runs beside the clipper, and the sheet names none. */
    CLEAN_PATH;

    /** Name in the results, for example {@code no-output}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
