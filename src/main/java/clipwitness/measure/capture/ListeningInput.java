package clipwitness.measure.capture;

import clipwitness.capture.Waveform;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A channel of a recording of playing.
 *
 * @param wave             its samples
 * @param hasUnit          whether anything says what they are worth; else they are fractions of full scale
 * @param fullScale        distance from 0 at which the converter ends, in the unit of the samples, where the file states it
 * @param verticalAccuracy bound of the vertical accuracy, a ratio
 */
public record ListeningInput(Waveform wave, boolean hasUnit, OptionalDouble fullScale, double verticalAccuracy) {
    /** Checks that all parts are there. */
    public ListeningInput {
        Objects.requireNonNull(wave, "wave");
        Objects.requireNonNull(fullScale, "fullScale");
        if (!(verticalAccuracy >= 0)) {
            throw new IllegalArgumentException("verticalAccuracy must be 0 or more but is " + verticalAccuracy);
        }
    }
}
