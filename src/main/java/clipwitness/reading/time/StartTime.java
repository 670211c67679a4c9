package clipwitness.reading.time;

import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Heading;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.layout.Units;
import clipwitness.reading.number.ValueText;
import clipwitness.reading.number.WrittenUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Time of the first sample as the preamble states it. */
final class StartTime {
    private static final Set<String> KEYS = Set.of(
            "start",
            "first",
            "origin",
            "start time",
            "time start",
            "t0",
            "x0",
            "x origin",
            "xorigin",
            "xzero",
            "x zero",
            "time offset",
            "time of first sample",
            "x at 0",
            "t start",
            "x start",
            "horizontal start");

    private StartTime() {}

    /** In s; empty where the preamble has none. */
    static OptionalDouble of(Preamble preamble) {
        for (Statement fact : preamble.facts()) {
            Heading key = Heading.of(fact.key());
            boolean named = KEYS.contains(new Statement(key.name(), fact.values(), fact.line()).words());
            Optional<ValueText> value = named ? ValueText.parse(fact.value()) : Optional.empty();
            Optional<WrittenUnit> unit = value.flatMap(ValueText::unit)
                    .or(fact::unitBeside)
                    .or(key::unit)
                    .or(() -> Units.ofTime(preamble));
            if (value.isPresent() && unit.map(u -> u.unit() == Unit.SECOND).orElse(true)) {
                double written = value.get().value();
                return OptionalDouble.of(unit.map(u -> u.resolve(written)).orElse(written));
            }
        }
        return OptionalDouble.empty();
    }
}
