package clipwitness.measure;

import java.util.Locale;

/** Where a contribution to an uncertainty comes from; {@link #code()} is the name in the results. */
public enum Source {
    /** Scatter of the samples, quantisation included. */
    NOISE,
    /** Converter step, where the noise does not dither it. */
    CONVERTER_STEP,
    /** Vertical accuracy of the instrument. */
    VERTICAL_ACCURACY,
    /** Scatter of repeated settings. */
    REPEATABILITY,
    /** How well the gain control is set again. */
    KNOB,
    /** Temperature. */
    TEMPERATURE,
    /** Difference of the stimulus. */
    STIMULUS,
    /** Error of a meter. */
    METER,
    /** Distance of the two branches of a transfer curve where the input crosses its mean. */
    BRANCHES,
    /** What the corners of straightened filters leave open, and the noise of the harmonics that they raise. */
    STRAIGHTENING,
    /** Error of the estimate itself, interpolation for instance. */
    METHOD;

    /** Name in the results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
