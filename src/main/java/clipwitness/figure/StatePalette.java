package clipwitness.figure;

import clipwitness.figure.canvas.LinePalette;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.job.State;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Colour, line and marker of each state, the same on every figure. Neighbouring states differ in hue as the colour-blind see it
 * (blue, orange and black first), in lightness (so that they differ in grey) and in dashes and marker.
 */
final class StatePalette {
    private static final LinePalette PALETTE =
            new LinePalette(0x1A1A1A, 0x0B5FA5, 0xDD6B20, 0x6A2C80, 0x2A8A5A, 0x4A2600);

    private final Map<String, StateStyle> styles = new LinkedHashMap<>();

    private StatePalette(List<State> states) {
        for (int i = 0; i < states.size(); i++) {
            State state = states.get(i);
            styles.put(state.name(), PALETTE.style(i, Sentences.capital(state.called())));
        }
    }

    /** The palette of a job: states in the sheet's order. */
    static StatePalette of(List<State> states) {
        return new StatePalette(states);
    }

    /**
     * How a state looks.
     *
     * @throws IllegalArgumentException if the job has no such state
     */
    StateStyle of(String state) {
        StateStyle found = styles.get(state);
        if (found == null) {
            throw new IllegalArgumentException("no state " + state);
        }
        return found;
    }

    /** Some states in the sheet's order. */
    List<String> inOrder(Set<String> states) {
        return styles.keySet().stream().filter(states::contains).toList();
    }

    /** Legend entries of some states, in the sheet's order. */
    List<LegendEntry> entries(Set<String> states, Function<StateStyle, LegendEntry> entry) {
        return inOrder(states).stream().map(s -> entry.apply(of(s))).toList();
    }
}
