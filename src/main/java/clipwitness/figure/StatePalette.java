package clipwitness.figure;

import clipwitness.job.State;
import java.awt.BasicStroke;
import java.awt.Color;
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
    private static final Color[] COLORS = {
        new Color(0x1A1A1A), new Color(0x0B5FA5), new Color(0xDD6B20),
        new Color(0x6A2C80), new Color(0x2A8A5A), new Color(0x4A2600)
    };
    private static final float[][] DASHES = {
        {}, {6, 3.5f}, {9, 2, 1.8f, 2}, {2, 1.5f}, {7, 2, 1.5f, 1.5f, 1.5f, 2}, {3.2f, 3}
    };
    private static final List<MarkerShape> MARKERS = List.of(MarkerShape.values());
    private static final float WIDTH = 1.15f;

    private final Map<String, StateStyle> styles = new LinkedHashMap<>();

    private StatePalette(List<State> states) {
        for (int i = 0; i < states.size(); i++) {
            State state = states.get(i);
            styles.put(state.name(), style(i, state.label()));
        }
    }

    /** The palette of a job: states in the sheet's order. */
    static StatePalette of(List<State> states) {
        return new StatePalette(states);
    }

    /** The style at a place in the palette. */
    static StateStyle style(int index, String label) {
        int hue = index % COLORS.length;
        int dash = (hue + index / COLORS.length) % DASHES.length;
        int marker = (hue + index / COLORS.length) % MARKERS.size();
        return new StateStyle(label, COLORS[hue], line(DASHES[dash]), MARKERS.get(marker));
    }

    private static BasicStroke line(float[] dashes) {
        return dashes.length == 0
                ? Ink.stroke(WIDTH)
                : new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, dashes, 0);
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
