package clipwitness.quantity;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Units as they are written by hand, with SI prefix: {@code kΩ}, {@code kohm}, {@code µs} with either mu, {@code us}.
 *
 * @param unit     unit without prefix
 * @param exponent power of ten of the prefix, 0 where there is none
 */
record UnitText(Unit unit, int exponent) {
    private static final Map<String, Unit> WITH_PREFIX = Map.ofEntries(
            Map.entry("V", Unit.VOLT),
            Map.entry("A", Unit.AMPERE),
            Map.entry("s", Unit.SECOND),
            Map.entry("Hz", Unit.HERTZ),
            Map.entry("\u03a9", Unit.OHM), // Greek capital omega
            Map.entry("\u2126", Unit.OHM), // ohm sign
            Map.entry("ohm", Unit.OHM),
            Map.entry("Ohm", Unit.OHM),
            Map.entry("ohms", Unit.OHM));

    private static final Map<String, Unit> WITHOUT_PREFIX = Map.ofEntries(
            Map.entry("", Unit.ONE),
            Map.entry("%", Unit.PERCENT),
            Map.entry("dB", Unit.DECIBEL),
            Map.entry("dBc", Unit.DBC),
            Map.entry("deg", Unit.DEGREE),
            Map.entry("\u00b0", Unit.DEGREE),
            Map.entry("K", Unit.KELVIN),
            Map.entry("C", Unit.CELSIUS),
            Map.entry("degC", Unit.CELSIUS),
            Map.entry("\u00b0C", Unit.CELSIUS), // degree sign
            Map.entry("\u00baC", Unit.CELSIUS), // ordinal indicator, next to it on many keyboards
            Map.entry("\u2103", Unit.CELSIUS)); // both in one character

    /** Prefixes after the SI brochure, 9th edition, table 7, femto to giga; K for k as on many a knob and label. */
    private static final Map<Character, Integer> PREFIXES = Map.ofEntries(
            Map.entry('f', -15),
            Map.entry('p', -12),
            Map.entry('n', -9),
            Map.entry('u', -6),
            Map.entry('\u00b5', -6), // micro sign
            Map.entry('\u03bc', -6), // Greek small mu
            Map.entry('m', -3),
            Map.entry('k', 3),
            Map.entry('K', 3),
            Map.entry('M', 6),
            Map.entry('G', 9));

    private static final Map<String, UnitText> ALL = all();

    /** The unit that a text names, the empty text being a pure number; nothing where no unit is called so. */
    static Optional<UnitText> of(String text) {
        return Optional.ofNullable(ALL.get(text));
    }

    private static Map<String, UnitText> all() {
        Map<String, UnitText> all = new HashMap<>();
        WITHOUT_PREFIX.forEach((text, unit) -> all.put(text, new UnitText(unit, 0)));
        WITH_PREFIX.forEach((text, unit) -> {
            all.put(text, new UnitText(unit, 0));
            PREFIXES.forEach((prefix, exponent) -> all.put(prefix + text, new UnitText(unit, exponent)));
        });
        return all;
    }
}
