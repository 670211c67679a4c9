package clipwitness.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The units that a user states for the columns of an export, as {@code V}, {@code mV} or {@code mV,mA}.
 *
 * @param units one unit for every channel, or one for each column in order: V or A with any prefix, and s where there are several
 */
public record ColumnUnits(List<Prefixed> units) {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;/]\\s*|\\s+");

    /**
     * A unit with its prefix.
     *
     * @param unit     unit without prefix
     * @param exponent power of ten of the prefix, -3 for milli, 0 for none
     */
    public record Prefixed(Unit unit, int exponent) {}

    /** Refuses what {@link #parse} does not make. */
    public ColumnUnits {
        units = List.copyOf(units);
        boolean several = units.size() > 1;
        if (units.isEmpty() || units.stream().anyMatch(u -> !fits(u.unit(), several))) {
            throw new IllegalArgumentException("unit must be V or A but is "
                    + units.stream().map(u -> u.unit().symbol()).collect(Collectors.joining(", ")));
        }
    }

    /** One unit without prefix for every channel. */
    public static ColumnUnits of(Unit unit) {
        return new ColumnUnits(List.of(new Prefixed(unit, 0)));
    }

    /** Reads units that stand between commas, semicolons, slashes or blanks; empty where one is none of these. */
    public static Optional<ColumnUnits> parse(String text) {
        String[] words = BETWEEN.split(text.strip(), -1);
        List<Prefixed> units = new ArrayList<>();
        for (String word : words) {
            Optional<UnitText> unit = UnitText.of(word).filter(u -> fits(u.unit(), words.length > 1));
            if (unit.isEmpty()) {
                return Optional.empty();
            }
            units.add(new Prefixed(unit.get().unit(), unit.get().exponent()));
        }
        return Optional.of(new ColumnUnits(units));
    }

    /** Whether one unit is stated for all channels. */
    public boolean forAll() {
        return units.size() == 1;
    }

    /** Whether one unit without prefix is stated: then a scale in it makes sense. */
    public boolean takesScale() {
        return forAll() && first().exponent() == 0;
    }

    /** The first of the units. */
    public Prefixed first() {
        return units.get(0);
    }

    private static boolean fits(Unit unit, boolean several) {
        return unit == Unit.VOLT || unit == Unit.AMPERE || (several && unit == Unit.SECOND);
    }
}
