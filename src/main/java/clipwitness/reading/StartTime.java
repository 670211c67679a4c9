package clipwitness.reading;

import clipwitness.quantity.Unit;
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
        for (Fact fact : preamble.facts()) {
            Heading key = Heading.of(fact.key());
            boolean named = KEYS.contains(new Fact(key.name(), fact.values(), fact.line()).words());
            Optional<ValueText> value = named ? ValueText.parse(fact.value()) : Optional.empty();
            Optional<UnitText> unit = value.flatMap(ValueText::unit)
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
