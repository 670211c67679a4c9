package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Units that the preamble states for the whole file. */
public final class Units {
    private static final Pattern UNIT =
            Pattern.compile(".*\\b(?:[xyhvt]?units?|einheit|einheiten|unité|unités|unità|unidad|unidades)\\b.*");

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
     * Unit of a channel's values, or empty. A statement whose key names a channel holds for that one alone; several that name none are
     * for the channels in order.
     *
     * @param names   names of all channels
     * @param channel number of the channel among them, from 0
     */
    public static Optional<WrittenUnit> ofValues(Preamble preamble, List<String> names, int channel) {
        List<Statement> facts = preamble.facts().stream()
                .filter(f -> isUnitFact(f)
                        && f.values().stream().anyMatch(v -> vertical(v).isPresent()))
                .toList();
        Optional<Statement> own =
                facts.stream().filter(f -> ChannelOfKey.of(f, names) == channel).findFirst();
        if (own.isPresent()) {
            return vertical(own.get().value());
        }
        List<Statement> common = facts.stream()
                .filter(f -> ChannelOfKey.of(f, names) == ChannelOfKey.NONE)
                .toList();
        boolean single = common.stream().allMatch(f -> f.values().size() == 1);
        boolean repeated = common.stream().map(Statement::words).distinct().count() == 1;
        if (single && repeated && common.size() == names.size()) {
            return vertical(common.get(channel).value());
        }
        boolean alike = common.stream().map(f -> vertical(f.value())).distinct().count() <= 1;
        Optional<WrittenUnit> beside = besideName(preamble, names, channel);
        if (beside.isPresent()) {
            return beside;
        }
        return single && !alike
                ? Optional.empty()
                : common.stream()
                        .map(f -> ofChannel(f, names.size(), channel))
                        .flatMap(Optional::stream)
                        .findFirst();
    }

    /** A row of a table that gives each channel its unit: the name, then the unit and nothing else. Two names, {@code I,V}, are no such row. */
    private static Optional<WrittenUnit> besideName(Preamble preamble, List<String> names, int channel) {
        return preamble.facts().stream()
                .filter(f -> f.key().strip().equalsIgnoreCase(names.get(channel))
                        && f.values().size() == 1)
                .filter(f -> names.stream().noneMatch(n -> n.equalsIgnoreCase(f.value())))
                .filter(f -> !f.value().equalsIgnoreCase("a"))
                .flatMap(f -> vertical(f.value()).stream())
                .findFirst();
    }

    private static Optional<WrittenUnit> ofChannel(Statement fact, int channels, int channel) {
        List<String> values = fact.values().stream()
                .filter(v -> WrittenUnit.parse(v)
                        .filter(u -> u.unit() == Unit.SECOND || u.unit() == Unit.HERTZ)
                        .isEmpty())
                .toList();
        if (values.size() == 1) {
            return vertical(values.get(0));
        }
        return values.size() == channels ? vertical(values.get(channel)) : Optional.empty();
    }

    private static Optional<WrittenUnit> vertical(String value) {
        return WrittenUnit.parse(value.substring(value.lastIndexOf(':') + 1))
                .filter(u -> u.unit() == Unit.VOLT || u.unit() == Unit.AMPERE);
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
