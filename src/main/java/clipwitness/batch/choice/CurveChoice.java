package clipwitness.batch.choice;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.IvCurve;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which columns of an export are voltage and current of a traced device: those that are named to it, else the first in volts and the first in
 * amperes, else by their names, else the first two. A column called as one of them with a letter for uncertainty before it
 * ({@code dU}, {@code sigma I}) holds its standard uncertainty.
 *
 * @param voltage voltage
 * @param current current
 * @param curve   the points
 * @param unused  columns in volts or amperes that are neither, nor their uncertainty, though nobody chose
 */
public record CurveChoice(Channel voltage, Channel current, IvCurve curve, List<Channel> unused) {
    private static final Pattern UNCERTAINTY = Pattern.compile("(sigma|delta|err|error|unc|[sduσδ])[ _(]*");
    private static final List<String> VOLTAGE_NAMES = List.of("v", "u");
    private static final List<String> CURRENT_NAMES = List.of("i", "a");

    public CurveChoice {
        unused = List.copyOf(unused);
    }

    /**
     * Chooses the columns of an export that nobody says more about.
     *
     * @throws InputException where voltage or current is not there
     */
    public static CurveChoice of(Export export) throws InputException {
        return of(export, Optional.empty(), Optional.empty());
    }

    /**
     * Chooses the columns for a row: its input is the voltage, its output the current.
     *
     * @throws InputException where a column is not there
     */
    public static CurveChoice of(CaptureRow row, Export export) throws InputException {
        return of(export, named(row, "input", row.input(), export), named(row, "output", row.output(), export));
    }

    private static Optional<Channel> named(CaptureRow row, String column, Optional<String> wanted, Export export)
            throws InputException {
        return wanted.isEmpty()
                ? Optional.empty()
                : Optional.of(NamedChannel.of(
                        export.channels(), wanted.get(), export.file(), ChannelChoice.where(row, column)));
    }

    private static CurveChoice of(Export export, Optional<Channel> wanted, Optional<Channel> wantedCurrent)
            throws InputException {
        Optional<Channel> current = wantedCurrent
                .or(() -> first(export, c -> isIn(c, Unit.AMPERE) && !same(wanted, c)))
                .or(() -> first(export, c -> isCalled(c, CURRENT_NAMES) && !same(wanted, c)));
        Optional<Channel> voltage = wanted.or(() -> first(export, c -> isIn(c, Unit.VOLT) && !same(current, c)))
                .or(() -> first(export, c -> isCalled(c, VOLTAGE_NAMES) && !same(current, c)))
                .or(() -> first(export, c -> !isIn(c, Unit.AMPERE) && !same(current, c)));
        Optional<Channel> second = current.or(() -> first(export, c -> !isIn(c, Unit.VOLT) && !same(voltage, c)));
        if (voltage.isEmpty() || second.isEmpty()) {
            throw new InputException(
                    ErrorCode.NO_CURVE,
                    Origin.of(export.file()),
                    "a traced device needs a column of voltage and one of current, but the columns are "
                            + NamedChannel.names(export.channels()),
                    "Export both, with their units in the heading");
        }
        return chosen(export, voltage.get(), second.get(), wantedCurrent.isPresent());
    }

    private static CurveChoice chosen(Export export, Channel voltage, Channel current, boolean named) {
        Optional<Channel> ofVoltage = uncertainty(export, voltage);
        Optional<Channel> ofCurrent = uncertainty(export, current);
        List<Channel> used = Stream.of(Optional.of(voltage), Optional.of(current), ofVoltage, ofCurrent)
                .flatMap(Optional::stream)
                .toList();
        List<Channel> unused = export.channels().stream()
                .filter(c -> !named
                        && (isIn(c, Unit.VOLT) || isIn(c, Unit.AMPERE))
                        && used.stream().noneMatch(u -> u.column() == c.column()))
                .toList();
        IvCurve curve = new IvCurve(
                voltage.samples(), current.samples(), ofVoltage.map(Channel::samples), ofCurrent.map(Channel::samples));
        return new CurveChoice(voltage, current, curve, unused);
    }

    /** What is said of columns that might be another device's curve; empty where there are none. */
    public Optional<Remark> more() {
        return unused.isEmpty()
                ? Optional.empty()
                : Optional.of(Remark.of(
                        unused.size() == 1 ? LayoutRemark.CURVE_COLUMN : LayoutRemark.CURVE_COLUMNS,
                        Argument.name(voltage.name()),
                        Argument.name(current.name()),
                        Argument.name(NamedChannel.names(unused))));
    }

    private static Optional<Channel> uncertainty(Export export, Channel of) {
        String name = folded(of);
        return first(
                export,
                c -> c.unit().equals(of.unit())
                        && folded(c).endsWith(name)
                        && UNCERTAINTY
                                .matcher(folded(c).substring(0, folded(c).length() - name.length()))
                                .matches());
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
}
