package clipwitness.batch;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.InputException;
import clipwitness.capture.IvCurve;
import clipwitness.capture.Origin;
import clipwitness.capture.Samples;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Which columns of an export are voltage and current of a traced device: those that are named to it, else the first in volts and the first in
 * amperes, else by their names, else the first two. A column called as one of them with a letter for uncertainty before it
 * ({@code dU}, {@code sigma I}) holds its standard uncertainty.
 *
 * @param voltage voltage
 * @param current current
 * @param curve   the points
 */
record CurveChoice(Channel voltage, Channel current, IvCurve curve) {
    private static final Pattern UNCERTAINTY = Pattern.compile("(sigma|delta|err|error|unc|[sduσδ])[ _(]*");
    private static final List<String> VOLTAGE_NAMES = List.of("v", "u");
    private static final List<String> CURRENT_NAMES = List.of("i", "a");

    /**
     * Chooses the columns.
     *
     * @param voltageName name or 1-based number of the column of voltage
     * @param currentName name or 1-based number of the column of current
     * @throws InputException where a column is not there
     */
    static CurveChoice of(Export export, Optional<String> voltageName, Optional<String> currentName)
            throws InputException {
        Optional<Channel> wanted = named(export, voltageName);
        Optional<Channel> current = named(export, currentName)
                .or(() -> first(export, c -> isIn(c, Unit.AMPERE) && !same(wanted, c)))
                .or(() -> first(export, c -> isCalled(c, CURRENT_NAMES) && !same(wanted, c)));
        Optional<Channel> voltage = wanted.or(() -> first(export, c -> isIn(c, Unit.VOLT) && !same(current, c)))
                .or(() -> first(export, c -> isCalled(c, VOLTAGE_NAMES) && !same(current, c)))
                .or(() -> first(export, c -> !isIn(c, Unit.AMPERE) && !same(current, c)));
        Optional<Channel> second = current.or(() -> first(export, c -> !isIn(c, Unit.VOLT) && !same(voltage, c)));
        if (voltage.isEmpty() || second.isEmpty()) {
            throw new InputException(
                    Origin.of(export.file()),
                    "a traced device needs a column of voltage and one of current, but the columns are "
                            + names(export),
                    "Export both, with their units in the heading");
        }
        return new CurveChoice(voltage.get(), second.get(), curve(export, voltage.get(), second.get()));
    }

    private static IvCurve curve(Export export, Channel voltage, Channel current) {
        return new IvCurve(
                voltage.samples(), current.samples(), uncertainty(export, voltage), uncertainty(export, current));
    }

    private static Optional<Samples> uncertainty(Export export, Channel of) {
        String name = folded(of);
        return first(
                        export,
                        c -> c.unit().equals(of.unit())
                                && folded(c).endsWith(name)
                                && UNCERTAINTY
                                        .matcher(
                                                folded(c).substring(0, folded(c).length() - name.length()))
                                        .matches())
                .map(Channel::samples);
    }

    private static Optional<Channel> first(Export export, Predicate<Channel> test) {
        return export.channels().stream().filter(test).findFirst();
    }

    private static boolean same(Optional<Channel> a, Channel b) {
        return a.filter(c -> c.column() == b.column()).isPresent();
    }

    private static boolean isIn(Channel channel, Unit unit) {
        return channel.unit().filter(u -> u == unit).isPresent();
    }

    private static boolean isCalled(Channel channel, List<String> initials) {
        return channel.unit().isEmpty()
                && initials.stream().anyMatch(i -> folded(channel).startsWith(i));
    }

    private static String folded(Channel channel) {
        return channel.name().toLowerCase(Locale.ROOT);
    }

    private static Optional<Channel> named(Export export, Optional<String> wanted) throws InputException {
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        String name = wanted.get();
        Optional<Channel> found = first(export, c -> c.name().equals(name))
                .or(() -> first(
                        export,
                        c -> c.name().equalsIgnoreCase(name)
                                || Integer.toString(c.column()).equals(name)));
        if (found.isEmpty()) {
            throw new InputException(
                    Origin.of(export.file()),
                    "the export has no channel '" + name + "'",
                    "Its channels are " + names(export) + "; a number from 1 to "
                            + export.channels().size() + " serves too");
        }
        return found;
    }

    private static String names(Export export) {
        return String.join(", ", export.channels().stream().map(Channel::name).toList());
    }
}
