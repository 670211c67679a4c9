package clipwitness.draft;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What the samples of an export tell.
 *
 * @param type     what they are
 * @param channels what each channel holds, in the order of the export
 * @param samples  number of samples
 * @param interval from sample to sample in s; 0 of a curve
 * @param reason   how that was seen, a clause
 */
public record Content(Type type, List<Heard> channels, int samples, double interval, String reason) {
    /** What samples can be. */
    public enum Type {
        /** A traced curve of current and voltage. */
        CURVE,
        /** A steady tone in one channel or more. */
        TONE,
        /** Two channels without a steady tone, the second follows the first. */
        DRIVEN,
        /** No steady tone, at an even level. */
        QUIET,
        /** No steady tone, at a level that comes and goes. */
        PLAYED,
        /** Samples over time, but the export does not say its interval, or its units: they could not be looked at. */
        UNSTATED
    }

    /**
     * A channel.
     *
     * @param name      its name in the export
     * @param frequency of its tone in Hz, empty where it has none
     * @param amplitude of its tone, V peak
     * @param thd       distortion of its tone, percent
     */
    public record Heard(String name, OptionalDouble frequency, OptionalDouble amplitude, OptionalDouble thd) {
        /** Whether it holds a tone. */
        public boolean hasTone() {
            return frequency.isPresent();
        }
    }

    /** Copies what it is given. */
    public Content {
        Objects.requireNonNull(type, "type");
        channels = List.copyOf(channels);
    }
}
