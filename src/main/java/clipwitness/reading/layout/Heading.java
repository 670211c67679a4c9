package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's heading, taken apart.
 *
 * @param name name without the unit, perhaps empty
 * @param unit unit, where the heading states one
 * @param role what the name says that the values are
 * @param fromPreamble whether a statement of the preamble gives the unit, so that the values may still be counts, or gives none
 */
public record Heading(String name, Optional<WrittenUnit> unit, ColumnRole role, boolean fromPreamble) {
    private static final int LONGEST = 200;
    /** How many of the forms set the unit apart so that a letter A can hardly name a channel. */
    private static final int CLEAR_FORMS = 3;

    private static final List<Pattern> NAME_AND_UNIT = List.of(
            Pattern.compile("(?<name>.*?)\\s*[(\\[{<]\\s*(?<unit>[^()\\[\\]{}<>]+)\\s*[)\\]}>]"),
            Pattern.compile("(?<name>(?:.*\\s)?)in\\s+(?<unit>\\S+)"),
            Pattern.compile("(?<name>.*?)\\s*/\\s*(?<unit>\\S+)"),
            Pattern.compile("(?<name>.*?)(?:,\\s*|\\s+-\\s+)(?<unit>\\S+)"),
            Pattern.compile("(?<name>.*[^_])_(?<unit>[^_]+)"),
            Pattern.compile("(?<name>.*\\S)\\s+(?<unit>(?![Aa]$)\\S+)"),
            Pattern.compile("(?<name>.*\\d)(?<unit>[mu]?V)"));

    /** A heading that states its unit itself, if any. */
    public Heading(String name, Optional<WrittenUnit> unit, ColumnRole role) {
        this(name, unit, role, false);
    }

    /** Takes a heading apart. */
    public static Heading of(String text) {
        if (text.length() > LONGEST) {
            return named(text, Optional.empty());
        }
        String heading = Markup.stripped(text).strip();
        for (int form = 0; form < NAME_AND_UNIT.size(); form++) {
            Matcher m = NAME_AND_UNIT.get(form).matcher(heading);
            boolean fits = m.matches() && Ampere.follows(m.group("name"), m.group("unit"), form < CLEAR_FORMS);
            Optional<WrittenUnit> unit = fits ? WrittenUnit.parse(m.group("unit")) : Optional.empty();
            if (unit.isPresent() && !contradicts(m.group("name"), unit.get())) {
                return named(m.group("name"), unit);
            }
        }
        return SimulatedName.unit(heading)
                .map(u -> simulated(heading, u))
                .orElseGet(() -> named(heading, Optional.empty()));
    }

    private static Heading simulated(String heading, Unit unit) {
        ColumnRole role = switch (unit) {
            case VOLT -> ColumnRole.VOLTAGE;
            case AMPERE -> ColumnRole.CURRENT;
            default -> ColumnRole.UNKNOWN;
        };
        return new Heading(heading, Optional.of(new WrittenUnit(unit, 0)), role);
    }

    /** Volts or amperes where the name says voltage or current, though it states no unit; empty otherwise. */
    public Optional<Unit> unitByName() {
        return role == ColumnRole.VOLTAGE
                ? Optional.of(Unit.VOLT)
                : role == ColumnRole.CURRENT ? Optional.of(Unit.AMPERE) : Optional.empty();
    }

    /** The same heading with a unit from elsewhere, unless it states one itself. */
    Heading orUnit(Optional<WrittenUnit> other) {
        return new Heading(name, unit.or(() -> other), role);
    }

    /** The same heading with the unit that a statement of the preamble gives, unless that is no unit of an axis. */
    Heading orStated(Optional<WrittenUnit> other) {
        boolean axis = role == ColumnRole.TIME || role == ColumnRole.INDEX;
        Optional<WrittenUnit> fitting = other.filter(u -> !axis || u.unit() == Unit.SECOND);
        return unit.isPresent() ? this : new Heading(name, fitting, role, true);
    }

    /** The same heading over values in the unit that the user states. */
    Heading as(WrittenUnit stated) {
        return new Heading(name, Optional.of(stated), role);
    }

    /** The same heading over values in this unit, whatever it states. */
    Heading inUnit(Unit other) {
        return new Heading(name, Optional.of(new WrittenUnit(other, 0)), role);
    }

    private static Heading named(String name, Optional<WrittenUnit> unit) {
        String bare = name.strip();
        return new Heading(bare, unit, ColumnRole.of(bare));
    }

    private static boolean contradicts(String name, WrittenUnit unit) {
        ColumnRole role = ColumnRole.of(name);
        return (role == ColumnRole.VOLTAGE && (unit.unit() == Unit.AMPERE || unit.unit() == Unit.SECOND))
                || (role == ColumnRole.CURRENT && (unit.unit() == Unit.VOLT || unit.unit() == Unit.SECOND));
    }
}
