package clipwitness.reading;

import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.number.ValueText;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Factors that the preamble states for turning the written values into the stated unit; the scale of a screen is none. */
final class ScaleFactors {
    private static final Set<String> KEYS =
            Set.of("scale factor", "scaling factor", "multiplier", "value scale", "conversion factor");

    private ScaleFactors() {}

    /**
     * The factor for one channel; empty where none is stated or it is 1.
     *
     * @param channel  number of the channel among the channels, from 0
     * @param channels number of channels
     */
    static Optional<Double> of(Preamble preamble, int channel, int channels) {
        for (Statement fact : preamble.facts()) {
            List<String> values = fact.values();
            if (KEYS.contains(fact.words()) && (values.size() == channels || values.size() == 1)) {
                return ValueText.parse(values.get(values.size() == 1 ? 0 : channel))
                        .map(ValueText::value)
                        .filter(f -> f != 1 && f != 0);
            }
        }
        return Optional.empty();
    }
}
