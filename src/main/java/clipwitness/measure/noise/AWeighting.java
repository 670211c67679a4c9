package clipwitness.measure.noise;

/**
 * Frequency weighting A of IEC 61672-1:2013, Annex E: f4² f⁴ / ((f² + f1²) sqrt(f² + f2²) sqrt(f² + f3²) (f² + f4²)) as a gain of amplitude, over its value at 1 kHz.
 * Known values: 0 dB at 1 kHz, -30.2 dB at 50 Hz, -9.3 dB at 20 kHz (table 3 of the standard).
 */
public final class AWeighting {
    // Pole frequencies in Hz, IEC 61672-1:2013, Annex E
    private static final double F1 = 20.598997;
    private static final double F2 = 107.65265;
    private static final double F3 = 737.86223;
    private static final double F4 = 12194.217;

    private static final double AT_1_KHZ = raw(1000);

    private AWeighting() {}

    /** Gain of power at a frequency in Hz, 0 or more: 1 at 1 kHz. */
    public static double power(double frequency) {
        double gain = raw(frequency) / AT_1_KHZ;
        return gain * gain;
    }

    private static double raw(double frequency) {
        double f = frequency * frequency;
        return f * f / ((f + F1 * F1) * Math.sqrt((f + F2 * F2) * (f + F3 * F3)) * (f + F4 * F4));
    }
}
