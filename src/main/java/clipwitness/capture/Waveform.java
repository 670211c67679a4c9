package clipwitness.capture;

import clipwitness.quantity.Unit;
import java.util.Objects;

/**
 * One channel over time, ready to be measured.
 *
 * @param samples    values in the unit, oldest first
 * @param sampleRate in Hz, above 0
 * @param unit       volts or amperes
 */
public record Waveform(Samples samples, double sampleRate, Unit unit) {
    /** Checks the sample rate. */
    public Waveform {
        Objects.requireNonNull(samples, "samples");
        Objects.requireNonNull(unit, "unit");
        if (!(sampleRate > 0 && sampleRate < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException("sampleRate must be finite and above 0 Hz but is " + sampleRate);
        }
    }
}
