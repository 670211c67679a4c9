package clipwitness.compare.rule;

import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * One position of the gain control: what was measured there on each state.
 *
 * @param gainPercent percent of rotation; empty where the table gives none
 * @param waves       states in the sheet's order, each with its first capture that was not refused
 */
public record WaveSetting(OptionalDouble gainPercent, Map<String, WaveformResult> waves) {
    /** Copies what it is given. */
    public WaveSetting {
        waves = Collections.unmodifiableMap(new LinkedHashMap<>(waves));
    }

    /** A figure of a state, where it was measured. */
    public Optional<Measured.Value> value(String state, WaveformQuantity quantity) {
        WaveformResult wave = waves.get(state);
        return wave == null ? Optional.empty() : wave.get(quantity).asValue();
    }

    /** The largest value of a figure among the states, bounds left out; 0 where none has one. */
    public double largest(WaveformQuantity quantity) {
        return waves.keySet().stream()
                .flatMap(state -> value(state, quantity).stream())
                .filter(v -> !v.isUpperBound())
                .mapToDouble(Measured.Value::number)
                .max()
                .orElse(0);
    }

    /** This setting with those waves only that a condition holds for. */
    public WaveSetting where(Predicate<WaveformResult> condition) {
        Map<String, WaveformResult> kept = new LinkedHashMap<>();
        waves.forEach((state, wave) -> {
            if (condition.test(wave)) {
                kept.put(state, wave);
            }
        });
        return new WaveSetting(gainPercent, kept);
    }
}
