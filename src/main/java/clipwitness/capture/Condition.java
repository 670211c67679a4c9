package clipwitness.capture;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Under which condition a capture was taken. Captures are compared only where all four agree.
 *
 * @param gainPercent position of the gain control, 0 to 100 percent of its rotation
 * @param frequency   frequency of the stimulus in Hz
 * @param level       peak amplitude of the stimulus in V
 * @param setting     name of the positions of all other controls
 */
public record Condition(
        OptionalDouble gainPercent, OptionalDouble frequency, OptionalDouble level, Optional<String> setting) {
    /** No condition: that of a figure that rests on no capture. */
    public static final Condition NONE =
            new Condition(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** Checks that all parts are there. */
    public Condition {
        Objects.requireNonNull(gainPercent, "gainPercent");
        Objects.requireNonNull(frequency, "frequency");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(setting, "setting");
    }

    /** The same condition with the gain control left open. */
    public Condition withoutGain() {
        return new Condition(OptionalDouble.empty(), frequency, level, setting);
    }

    /** The same condition with the frequency left open. */
    public Condition withoutFrequency() {
        return new Condition(gainPercent, OptionalDouble.empty(), level, setting);
    }

    /** The same condition with the level left open. */
    public Condition withoutLevel() {
        return new Condition(gainPercent, frequency, OptionalDouble.empty(), setting);
    }
}
