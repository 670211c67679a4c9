package clipwitness.quantity;

/** Levels: L = 20 lg(a/b) for amplitudes, 10 lg(p/q) for powers (ISO 80000-3 and IEC 60027-3). */
public final class Decibels {
    private Decibels() {}

    /**
     * Level of an amplitude ratio in dB.
     *
     * @param ratio amplitude ratio, above 0
     * @throws IllegalArgumentException if the ratio is not above 0
     */
    public static double ofAmplitude(double ratio) {
        return 20 * Math.log10(positive(ratio));
    }

    /**
     * Amplitude ratio of a level.
     *
     * @param level in dB
     */
    public static double toAmplitude(double level) {
        return Math.pow(10, level / 20);
    }

    /** Derivative of a level in dB to a relative change of its amplitude: 20 / ln 10 = 8.686 dB. */
    public static final double PER_RELATIVE_AMPLITUDE = 20 / Math.log(10);

    private static double positive(double ratio) {
        if (!(ratio > 0)) { // NaN lands here too
            throw new IllegalArgumentException("a level needs a ratio above 0 but got " + ratio);
        }
        return ratio;
    }
}
