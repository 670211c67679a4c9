package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Units that the preamble states for the whole file. */
public final class Units {
    private static final Pattern UNIT = Pattern.compile(
            ".*\\b(?:unit|units|einheit|einheiten|unité|unités|unità|unidad|unidades|xunits?|yunits?)\\b.*");

    /** Words of a key whose unit is that of a setting, not of the samples. */
    private static final Pattern NO_AXIS =
            Pattern.compile(".*(?:sampl|rate|freq|clock|bandwidth|trig|filter|generator).*");

    private Units() {}

    /** Unit of the time, or empty. */
    public static Optional<WrittenUnit> ofTime(Preamble preamble) {
        return preamble.facts().stream()
                .filter(Units::isUnitFact)
                .flatMap(f -> f.values().stream())
                .map(WrittenUnit::parse)
                .flatMap(Optional::stream)
                .filter(u -> u.unit() == Unit.SECOND)
                .findFirst();
    }

    /**
     * Unit of a channel's values, or empty.
     *
     * @param channel  number of the channel among the channels, from 0
     * @param channels number of channels
     */
    public static Optional<WrittenUnit> ofValues(Preamble preamble, int channel, int channels) {
        for (Statement fact : preamble.facts()) {
            List<WrittenUnit> units = fact.values().stream()
                    .map(v -> WrittenUnit.parse(v.substring(v.lastIndexOf(':') + 1)))
                    .flatMap(Optional::stream)
                    .filter(u -> u.unit() == Unit.VOLT || u.unit() == Unit.AMPERE)
                    .toList();
            if (isUnitFact(fact) && (units.size() == channels || units.size() == 1)) {
                return Optional.of(units.get(units.size() == 1 ? 0 : channel));
            }
        }
        return Optional.empty();
    }

    /** The statement that what the samples stand over is a frequency, or empty. */
    public static Optional<Statement> overFrequency(Preamble preamble) {
        return preamble.facts().stream()
                .filter(f -> isUnitFact(f) && !NO_AXIS.matcher(f.words()).matches())
                .filter(f -> WrittenUnit.parse(f.value())
                        .filter(u -> u.unit() == Unit.HERTZ)
                        .isPresent())
                .findFirst();
    }

    /** The statement that all values are levels in decibels, or empty. */
    public static Optional<Statement> inDecibels(Preamble preamble) {
        return preamble.facts().stream()
                .filter(Units::isUnitFact)
                .filter(f -> f.values().stream()
                        .allMatch(v -> WrittenUnit.parse(v)
                                .filter(u -> u.unit() == Unit.DECIBEL)
                                .isPresent()))
                .findFirst();
    }

    /** Whether a key names a unit. */
    static boolean isKey(String key) {
        return UNIT.matcher(new Statement(key, List.of(), 0).words()).matches();
    }

    private static boolean isUnitFact(Statement fact) {
        return isKey(fact.key());
    }
}
