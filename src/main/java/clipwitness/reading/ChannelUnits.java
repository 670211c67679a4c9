package clipwitness.reading;

import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the unit of each channel: from its heading, from the preamble, from the user. */
final class ChannelUnits {
    private final List<Column> columns;
    private final List<String> names;
    private final Preamble preamble;
    private final ReadingOptions options;
    private final Notes notes;

    ChannelUnits(List<Column> columns, List<String> names, Preamble preamble, ReadingOptions options, Notes notes) {
        this.columns = columns;
        this.names = names;
        this.preamble = preamble;
        this.options = options;
        this.notes = notes;
    }

    /** The unit of each channel; the written values help to tell volts from counts of a converter. */
    List<ChannelUnit> find(List<double[]> written) {
        List<Optional<UnitText>> stated = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            stated.add(stated(i, written.get(i)));
        }
        boolean open = stated.stream().anyMatch(Optional::isEmpty);
        boolean said = options.unit().isPresent() || options.scale().isPresent();
        List<ChannelUnit> units = new ArrayList<>();
        if (open && !said) {
            noteOpen(stated);
        }
        for (int i = 0; i < columns.size(); i++) {
            boolean users = said && (!open || stated.get(i).isEmpty());
            units.add(users ? users(i, stated.get(i)) : files(i, stated.get(i)));
        }
        return units;
    }

    private Optional<UnitText> stated(int i, double[] written) {
        Optional<UnitText> heading = columns.get(i).heading().unit();
        if (heading.isPresent()) {
            notes.evidence(names.get(i) + " in " + symbol(heading.get()) + ", as its heading says");
            return heading;
        }
        Optional<UnitText> preambles = Units.ofValues(preamble, i, columns.size());
        boolean scaled = ScaleFactors.of(preamble, i, columns.size()).isPresent();
        if (preambles.filter(u -> u.exponent() == 0).isPresent()
                && !scaled
                && Counts.like(written, preamble, names.get(i), i, columns.size())) {
            notes.evidence(names.get(i) + " in counts of the converter: whole numbers, though the preamble speaks of "
                    + symbol(preambles.get()));
            return Optional.empty();
        }
        preambles.ifPresent(u -> notes.evidence(names.get(i) + " in " + symbol(u) + ", as the preamble says"));
        return preambles;
    }

    private ChannelUnit users(int i, Optional<UnitText> stated) {
        Unit byName = columns.get(i).heading().role() == Role.CURRENT ? Unit.AMPERE : Unit.VOLT;
        Unit unit = options.unit().or(() -> stated.map(UnitText::unit)).orElse(byName);
        double scale = options.scale().orElse(1);
        notes.evidence(names.get(i) + " in " + unit.symbol() + (scale == 1 ? "" : ", " + scale + " a count")
                + ", as the user states it");
        return new ChannelUnit(Optional.of(unit), scale, 0);
    }

    private ChannelUnit files(int i, Optional<UnitText> stated) {
        if (stated.isEmpty()) {
            return new ChannelUnit(Optional.empty(), 1, 0);
        }
        Optional<Double> factor = ScaleFactors.of(preamble, i, columns.size());
        factor.ifPresent(
                f -> notes.evidence(names.get(i) + " multiplied by the scale factor " + f + " of the preamble"));
        return new ChannelUnit(
                Optional.of(stated.get().unit()),
                factor.orElse(1.0),
                stated.get().exponent());
    }

    private void noteOpen(List<Optional<UnitText>> stated) {
        String open = IntStream.range(0, stated.size())
                .filter(i -> stated.get(i).isEmpty())
                .mapToObj(names::get)
                .collect(Collectors.joining(", "));
        notes.doubt(
                DoubtCode.UNIT_ASSUMED,
                Severity.WARNING,
                "The file does not state the unit of " + open + "; the values stand as they are written. "
                        + "The columns unit and scale of captures.csv, or the options --unit and --scale of look, settle it.");
    }

    private static String symbol(UnitText unit) {
        String prefix = switch (unit.exponent()) {
            case -12 -> "p";
            case -9 -> "n";
            case -6 -> "µ";
            case -3 -> "m";
            case 3 -> "k";
            case 6 -> "M";
            default -> "";
        };
        return prefix + unit.unit().symbol();
    }
}
