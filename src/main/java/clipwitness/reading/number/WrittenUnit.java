package clipwitness.reading.number;

import clipwitness.quantity.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit as an export writes it: its unit without prefix, and the power of ten that the prefix stands for.
 *
 * @param unit     unit without prefix; {@link Unit#ONE} for watts, squares and rms values, which no result is given in
 * @param exponent power of ten, -3 for milli
 */
public record WrittenUnit(Unit unit, int exponent) {
    private static final Map<String, Unit> BASES = Map.ofEntries(
            Map.entry("v", Unit.VOLT),
            Map.entry("volt", Unit.VOLT),
            Map.entry("volts", Unit.VOLT),
            Map.entry("a", Unit.AMPERE),
            Map.entry("amp", Unit.AMPERE),
            Map.entry("amps", Unit.AMPERE),
            Map.entry("ampere", Unit.AMPERE),
            Map.entry("amperes", Unit.AMPERE),
            Map.entry("s", Unit.SECOND),
            Map.entry("sec", Unit.SECOND),
            Map.entry("secs", Unit.SECOND),
            Map.entry("second", Unit.SECOND),
            Map.entry("seconds", Unit.SECOND),
            Map.entry("sekunde", Unit.SECOND),
            Map.entry("sekunden", Unit.SECOND),
            Map.entry("seconde", Unit.SECOND),
            Map.entry("secondes", Unit.SECOND),
            Map.entry("secondi", Unit.SECOND),
            Map.entry("segundos", Unit.SECOND),
            Map.entry("hz", Unit.HERTZ),
            Map.entry("hertz", Unit.HERTZ),
            Map.entry("s/s", Unit.HERTZ),
            Map.entry("sa/s", Unit.HERTZ),
            Map.entry("sps", Unit.HERTZ),
            Map.entry("samples/s", Unit.HERTZ),
            Map.entry("samples/second", Unit.HERTZ),
            Map.entry("ohm", Unit.OHM),
            Map.entry("ohms", Unit.OHM),
            Map.entry("ω", Unit.OHM),
            Map.entry("db", Unit.DECIBEL),
            Map.entry("dbv", Unit.DECIBEL),
            Map.entry("dbm", Unit.DECIBEL),
            Map.entry("dbu", Unit.DECIBEL),
            Map.entry("dbfs", Unit.DECIBEL),
            Map.entry("dbc", Unit.DECIBEL),
            Map.entry("dbvrms", Unit.DECIBEL),
            Map.entry("degree", Unit.DEGREE),
            Map.entry("degrees", Unit.DEGREE),
            Map.entry("v/√hz", Unit.ONE),
            Map.entry("v/sqrt(hz)", Unit.ONE),
            Map.entry("v/rthz", Unit.ONE),
            Map.entry("v²/hz", Unit.ONE),
            Map.entry("v^2/hz", Unit.ONE),
            Map.entry("°c", Unit.CELSIUS),
            Map.entry("°", Unit.DEGREE),
            Map.entry("deg", Unit.DEGREE),
            Map.entry("%", Unit.PERCENT),
            Map.entry("w", Unit.ONE),
            Map.entry("vv", Unit.ONE),
            Map.entry("v²", Unit.ONE),
            Map.entry("v^2", Unit.ONE),
            Map.entry("va", Unit.ONE));
    private static final Map<String, Integer> PREFIXES = Map.ofEntries(
            Map.entry("p", -12),
            Map.entry("pico", -12),
            Map.entry("n", -9),
            Map.entry("nano", -9),
            Map.entry("u", -6),
            Map.entry("micro", -6),
            Map.entry("m", -3),
            Map.entry("milli", -3),
            Map.entry("k", 3),
            Map.entry("kilo", 3),
            Map.entry("mega", 6),
            Map.entry("g", 9),
            Map.entry("giga", 9));
    private static final Pattern COUPLING = Pattern.compile("(?i)\\s*[- ]?(?:dc|ac|peak|pk)$");
    /** Volts or amperes of a meter that squares and averages: such a reading is no sample of a wave. */
    private static final Pattern RMS =
            Pattern.compile("(?i)[munkµ]?(?:v|a|volts?|amps?)\\s*[-_ (]?(?:(?:ac|dc)[-_ ]?)?(?:rms|eff)\\)?");

    /** The only prefix outside ASCII is micro, so one or two such characters before a unit mean it on any page. */
    private static final Pattern MICRO = Pattern.compile("^[^\\x00-\\x7F]{1,2}(?=[sSvVaA])");

    /** Not picoampere, whose A is a capital. */
    private static final Pattern PASCAL = Pattern.compile("[hkM]?Pa");

    private static final String OHM_SIGN = "\u2126";

    /** Reads a text that is a unit and nothing else, brackets aside; empty where it is none. */
    public static Optional<WrittenUnit> parse(String text) {
        String bare = withoutBrackets(text.strip()).replace(OHM_SIGN, "Ω");
        Matcher micro = MICRO.matcher(bare);
        String word = micro.find() ? "u" + bare.substring(micro.end()) : bare;
        if (RMS.matcher(word).matches()) {
            return Optional.of(new WrittenUnit(Unit.ONE, 0));
        }
        return parseWord(word).or(() -> parseWord(COUPLING.matcher(word).replaceFirst("")));
    }

    /** A value in this unit, without the prefix: 1.5 mV is 0.0015 V. Rounded once. */
    public double resolve(double value) {
        return CellReader.scaled(value, exponent);
    }

    /** As it is written on paper, {@code mV}. */
    public String symbol() {
        String prefix = switch (exponent) {
            case -12 -> "p";
            case -9 -> "n";
            case -6 -> "µ";
            case -3 -> "m";
            case 3 -> "k";
            case 6 -> "M";
            case 9 -> "G";
            default -> "";
        };
        return prefix + unit.symbol();
    }

    private static Optional<WrittenUnit> parseWord(String word) {
        if (word.equals("Va")) {
            return Optional.empty(); // a voltage at a, where VA are volt-amperes
        }
        if (PASCAL.matcher(word).matches()) {
            return Optional.of(new WrittenUnit(Unit.ONE, 0));
        }
        String lower = word.toLowerCase(Locale.ROOT);
        if (BASES.containsKey(lower)) {
            return Optional.of(new WrittenUnit(BASES.get(lower), 0));
        }
        for (Map.Entry<String, Integer> prefix : PREFIXES.entrySet()) {
            Unit base = lower.startsWith(prefix.getKey())
                    ? BASES.get(lower.substring(prefix.getKey().length()).strip())
                    : null;
            if (base != null && word.charAt(0) == 'M' && prefix.getKey().length() == 1) {
                return base == Unit.HERTZ || base == Unit.OHM
                        ? Optional.of(new WrittenUnit(base, 6))
                        : capitalMilli(word, base);
            }
            if (base != null) {
                return Optional.of(new WrittenUnit(base, prefix.getValue()));
            }
        }
        return Optional.empty();
    }

    /** "MS" beside a time can only be milliseconds; "MV" may be anything and is no unit here. */
    private static Optional<WrittenUnit> capitalMilli(String word, Unit base) {
        return base == Unit.SECOND && word.length() <= 2 ? Optional.of(new WrittenUnit(base, -3)) : Optional.empty();
    }

    private static String withoutBrackets(String text) {
        int last = text.length() - 1;
        boolean bracketed = last > 0 && "([{<".indexOf(text.charAt(0)) >= 0 && ")]}>".indexOf(text.charAt(last)) >= 0;
        return bracketed ? text.substring(1, last).strip() : text;
    }
}
