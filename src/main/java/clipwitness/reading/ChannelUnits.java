package clipwitness.reading;

import clipwitness.quantity.ColumnUnits;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Heading;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Units;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds the unit of each channel: from its heading, from the preamble, from the user. */
final class ChannelUnits {
    private final List<Column> columns;
    private final List<String> names;
    private final Preamble preamble;
    private final ReadingOptions options;
    private final Notes notes;
    private final boolean curve;

    /**
     * A search for the units of one file.
     *
     * @param curve whether they are channels of a curve, which are no counts of a converter
     */
    ChannelUnits(
            List<Column> columns,
            List<String> names,
            Preamble preamble,
            ReadingOptions options,
            Notes notes,
            boolean curve) {
        this.curve = curve;
        this.columns = columns;
        this.names = names;
        this.preamble = preamble;
        this.options = options;
        this.notes = notes;
    }

    /** The unit of each channel; the written values help to tell volts from counts of a converter. */
    List<ChannelUnit> find(List<double[]> written) {
        List<Optional<ChannelUnit>> stated = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            stated.add(stated(i, written.get(i)));
        }
        noteTwice();
        boolean open = stated.stream().anyMatch(Optional::isEmpty);
        boolean said = options.unit().filter(ColumnUnits::forAll).isPresent()
                || options.scale().isPresent();
        if (open && !said) {
            assumeByName(stated, written);
            noteOpen(stated);
        }
        List<ChannelUnit> units = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            boolean users = said && (!open || stated.get(i).isEmpty());
            units.add(users ? users(i, stated.get(i)) : stated.get(i).orElse(ChannelUnit.asWritten()));
        }
        return units;
    }

    private Optional<ChannelUnit> stated(int i, double[] written) {
        Heading above = columns.get(i).heading();
        Optional<WrittenUnit> heading = above.unit().filter(u -> !above.fromPreamble());
        Optional<WrittenUnit> unit =
                above.fromPreamble() ? above.unit() : heading.or(() -> Units.ofValues(preamble, names, i));
        Optional<Double> factor = ScaleFactors.of(preamble, i, columns.size());
        boolean prefixed = unit.filter(u -> u.exponent() != 0).isPresent();
        boolean counts = heading.isEmpty() && factor.isEmpty() && !prefixed && counts(i, written);
        if (counts) {
            return ofCounts(i, unit);
        }
        unit.ifPresent(u -> notes.evidence(
                options.unit().isPresent()
                                && heading.isPresent()
                                && !options.unit().get().forAll()
                        ? LayoutRemark.UNIT_OF_USER
                        : heading.isPresent() ? LayoutRemark.UNIT_OF_HEADING : LayoutRemark.UNIT_OF_PREAMBLE,
                Argument.name(names.get(i)),
                Argument.name(u.symbol())));
        factor.ifPresent(f ->
                notes.evidence(LayoutRemark.SCALE_FACTOR, Argument.name(names.get(i)), Argument.written(f, Unit.ONE)));
        return unit.map(u -> ChannelUnit.of(u, factor.orElse(1.0)));
    }

    /** Heading and preamble name two prefixes of a unit, or, of an only channel, two units; what the user states settles it. */
    private void noteTwice() {
        Map<List<WrittenUnit>, List<String>> doubtful = new LinkedHashMap<>();
        for (int i = 0; i < columns.size() && options.unit().isEmpty(); i++) {
            Heading above = columns.get(i).heading();
            Optional<WrittenUnit> heading = above.unit().filter(u -> !above.fromPreamble());
            Optional<WrittenUnit> other = Units.ofValues(preamble, names, i)
                    .filter(u -> heading.filter(h -> contradict(h, u)).isPresent());
            if (other.isPresent()) {
                List<WrittenUnit> pair = List.of(heading.orElseThrow(), other.get());
                doubtful.computeIfAbsent(pair, k -> new ArrayList<>()).add(names.get(i));
            }
        }
        doubtful.forEach((pair, channels) -> notes.doubt(
                Severity.WARNING,
                DoubtReason.UNIT_ASSUMED_TWICE,
                Argument.names(channels),
                Argument.name(pair.get(0).symbol()),
                Argument.name(pair.get(1).symbol())));
    }

    /** A common statement of volts says nothing about a column of amperes beside others. */
    private boolean contradict(WrittenUnit heading, WrittenUnit other) {
        return !other.equals(heading) && (columns.size() == 1 || other.unit() == heading.unit());
    }

    private boolean counts(int i, double[] written) {
        return new Counts(preamble, columns.get(i).whole()).like(written, names.get(i), i, columns.size());
    }

    /** Columns that are called as a voltage or a current are taken as volts and amperes, unless they look like counts. */
    private void assumeByName(List<Optional<ChannelUnit>> stated, List<double[]> written) {
        List<String> assumed = new ArrayList<>();
        for (int i = 0; i < stated.size(); i++) {
            Optional<Unit> unit = columns.get(i).heading().unitByName();
            if (stated.get(i).isEmpty() && unit.isPresent() && (curve || !counts(i, written.get(i)))) {
                stated.set(i, Optional.of(ChannelUnit.of(new WrittenUnit(unit.get(), 0), 1)));
                assumed.add(names.get(i));
            }
        }
        if (!assumed.isEmpty()) {
            notes.doubt(Severity.WARNING, DoubtReason.UNIT_ASSUMED_NAMES, Argument.names(assumed));
        }
    }

    /** Whole numbers that would leave the screen as volts: the preamble states what a count is worth, or it is not known. */
    private Optional<ChannelUnit> ofCounts(int i, Optional<WrittenUnit> unit) {
        Optional<CodeScale> scale = CodeScale.of(preamble, i, columns.size());
        scale.ifPresent(s -> notes.evidence(
                LayoutRemark.COUNTS_SCALED,
                Argument.name(names.get(i)),
                Argument.written(s.increment(), Unit.ONE),
                Argument.written(s.reference(), Unit.ONE)));
        if (scale.isEmpty()) {
            unit.ifPresent(
                    u -> notes.evidence(LayoutRemark.COUNTS, Argument.name(names.get(i)), Argument.name(u.symbol())));
        }
        return scale.map(
                s -> new ChannelUnit(Optional.of(unit.map(WrittenUnit::unit).orElse(Unit.VOLT)), s::volts));
    }

    private ChannelUnit users(int i, Optional<ChannelUnit> stated) {
        Unit byName = columns.get(i).heading().unitByName().orElse(Unit.VOLT);
        WrittenUnit unit = options.unit()
                .map(u -> new WrittenUnit(u.first().unit(), u.first().exponent()))
                .orElseGet(
                        () -> new WrittenUnit(stated.flatMap(ChannelUnit::unit).orElse(byName), 0));
        double scale = options.scale().orElse(1);
        notes.evidence(usersEvidence(i, unit, scale, stated.isPresent()));
        return ChannelUnit.of(unit, scale);
    }

    private Remark usersEvidence(int i, WrittenUnit unit, double scale, boolean overFile) {
        Argument name = Argument.name(names.get(i));
        Argument symbol = Argument.name(unit.symbol());
        return scale == 1
                ? Remark.of(overFile ? LayoutRemark.UNIT_OVER_FILE : LayoutRemark.UNIT_OF_USER, name, symbol)
                : Remark.of(
                        overFile ? LayoutRemark.SCALE_OVER_FILE : LayoutRemark.SCALE_OF_USER,
                        name,
                        symbol,
                        Argument.written(scale, Unit.ONE));
    }

    private void noteOpen(List<Optional<ChannelUnit>> stated) {
        List<String> open = IntStream.range(0, stated.size())
                .filter(i -> stated.get(i).isEmpty())
                .mapToObj(names::get)
                .toList();
        if (!open.isEmpty()) {
            notes.doubt(Severity.WARNING, DoubtReason.UNIT_ASSUMED, Argument.names(open));
        }
    }
}
