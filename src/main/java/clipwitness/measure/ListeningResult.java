package clipwitness.measure;

import clipwitness.reason.Doubt;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A recording of playing, as it is.
 *
 * @param channel index of the loudest channel, from 0: that of the figures
 * @param lasts   length, s
 * @param values  figures; volts only where the file or the user states them, levels only where it states full scale
 * @param doubts  doubts about the recording
 */
public record ListeningResult(int channel, double lasts, Map<ListeningFigure, Measured> values, List<Doubt> doubts) {
    /** Copies what it is given. */
    public ListeningResult {
        EnumMap<ListeningFigure, Measured> copy = new EnumMap<>(ListeningFigure.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
        doubts = List.copyOf(doubts);
    }
}
