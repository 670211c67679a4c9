package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tells A as the unit ampere from A as the name of a channel, and ADC as direct current from a converter. */
final class Ampere {
    private static final Pattern LETTER = Pattern.compile("(?i)a|amp");
    private static final Pattern CONVERTER = Pattern.compile("(?i)adc");
    private static final Pattern BRACKETS = Pattern.compile("[()\\[\\]{}<>\\s]");
    private static final Pattern OTHER_CHANNEL = Pattern.compile("(?i)[b-d]");
    /** Units as meters write them, with the coupling behind. */
    private static final Pattern OF_METER = Pattern.compile("(?i)[mµu]?(?:v|a)(?:dc|ac)");

    private static final Pattern CHANNEL_WORD = Pattern.compile(
            "(?i)(?:ch|chan|channel|kanal|canal|canale|voie|trace|probe|"
                    + "math|ref|in|out|input|output|eingang|ausgang|adc|sensor|port|analog|data|signal|value|raw|c)[ ._-]*");

    private Ampere() {}

    /** Whether a cell may be ampere or a name. */
    static boolean isDoubtful(String cell) {
        return LETTER.matcher(cell).matches() || CONVERTER.matcher(cell).matches();
    }

    /**
     * Whether a cell that may be ampere or a name is the unit.
     *
     * @param row all cells of the row that it stands in
     */
    static boolean isUnit(String cell, List<String> row) {
        if (CONVERTER.matcher(cell).matches()) {
            return row.stream()
                    .anyMatch(c -> !CONVERTER.matcher(c).matches()
                            && OF_METER.matcher(c).matches());
        }
        return row.stream().noneMatch(c -> OTHER_CHANNEL.matcher(c).matches())
                && row.stream().anyMatch(Ampere::isVolts);
    }

    /** The unit in a cell of a row of units; a converter's counts are none. */
    static Optional<WrittenUnit> unitIn(List<String> row, int cell) {
        String text = row.get(cell);
        boolean counts = CONVERTER.matcher(text).matches() && !isUnit(text, row);
        return counts ? Optional.empty() : WrittenUnit.parse(text);
    }

    /**
     * Whether what follows a name is its unit, where it may be ampere.
     *
     * @param name  what stands before it
     * @param unit  the text that may be the unit
     * @param clear whether brackets, a slash or a word set it apart
     */
    static boolean follows(String name, String unit, boolean clear) {
        String bare = BRACKETS.matcher(unit).replaceAll("");
        boolean current = ColumnRole.of(name) == ColumnRole.CURRENT;
        if (!isDoubtful(bare) || current) {
            return true;
        }
        boolean numbered = !name.isEmpty() && Character.isDigit(name.charAt(name.length() - 1));
        boolean told = clear || bare.length() < unit.length();
        return !CONVERTER.matcher(bare).matches()
                && (told ? !CHANNEL_WORD.matcher(name).matches() : numbered);
    }

    private static boolean isVolts(String cell) {
        return WrittenUnit.parse(cell).filter(u -> u.unit() == Unit.VOLT).isPresent();
    }
}
