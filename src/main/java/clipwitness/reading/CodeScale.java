package clipwitness.reading;

import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.number.ValueText;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How counts of a converter become volts, where the preamble states it: volts = (count − reference) increment + origin.
 *
 * @param increment volts a count, not 0
 * @param reference count that stands for the origin
 * @param origin    volts at the reference
 */
record CodeScale(double increment, double reference, double origin) {
    private static final Set<String> INCREMENT = Set.of(
            "y increment",
            "yincrement",
            "y inc",
            "yinc",
            "y mult",
            "ymult",
            "volts per count",
            "volts/count",
            "v/count");
    private static final Set<String> REFERENCE = Set.of("y reference", "yreference", "y ref", "yref");
    private static final Set<String> ORIGIN = Set.of("y origin", "yorigin", "y zero", "yzero");

    /**
     * The scale of one channel, or empty.
     *
     * @param channel  number of the channel among the channels, from 0
     * @param channels number of channels
     */
    static Optional<CodeScale> of(Preamble preamble, int channel, int channels) {
        return value(preamble, INCREMENT, channel, channels)
                .filter(i -> i != 0)
                .map(i -> new CodeScale(
                        i,
                        value(preamble, REFERENCE, channel, channels).orElse(0.0),
                        value(preamble, ORIGIN, channel, channels).orElse(0.0)));
    }

    /** Volts for a count. */
    double volts(double count) {
        return (count - reference) * increment + origin;
    }

    private static Optional<Double> value(Preamble preamble, Set<String> keys, int channel, int channels) {
        for (Statement fact : preamble.facts()) {
            List<String> values = fact.values();
            if (keys.contains(fact.words()) && (values.size() == channels || values.size() == 1)) {
                Optional<ValueText> value = ValueText.parse(values.get(values.size() == 1 ? 0 : channel));
                return value.map(v -> v.unit().map(u -> u.resolve(v.value())).orElse(v.value()));
            }
        }
        return Optional.empty();
    }
}
