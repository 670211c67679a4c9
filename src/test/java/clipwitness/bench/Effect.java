package clipwitness.bench;

import java.util.List;
import java.util.Objects;

/**
 * An effect: amplifier, gain control, clipping stage, filters, volume.
 *
 * @param amplification ahead of the gain control, a ratio
 * @param control       gain control
 * @param clipper       clipping stage
 * @param filters       what follows it
 * @param volume        what the volume control leaves, a ratio
 */
record Effect(double amplification, GainControl control, Stage clipper, List<OnePole> filters, double volume) {
    /** Copies what it is given. */
    public Effect {
        Objects.requireNonNull(control, "control");
        Objects.requireNonNull(clipper, "clipper");
        filters = List.copyOf(filters);
    }

    /** The same effect with another clipping stage. */
    Effect with(Stage other) {
        return new Effect(amplification, control, other, filters, volume);
    }

    /** Output for an input, the gain control at a position from 0 to 1. */
    Cycle outputFor(Cycle input, double position) {
        double drive = amplification * control.shareAt(position);
        Cycle wave = input.map(x -> clipper.outputFor(drive * x));
        for (OnePole filter : filters) {
            wave = filter.of(wave);
        }
        return wave.map(y -> volume * y);
    }
}
