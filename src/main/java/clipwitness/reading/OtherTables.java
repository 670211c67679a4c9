package clipwitness.reading;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.ColumnRole;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.layout.Units;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names tables that are neither records over time nor curves: spectra and other tables over frequency, histograms, tables over another quantity. */
final class OtherTables {
    private static final String WAVE = "Export the wave itself, its samples over time";
    private static final Pattern COUNTS = Pattern.compile(
            "(?i).*(?<!\\p{L})(?:counts?|hits|histogram|occurrences?|population|density|häufigkeit|anzahl|events)(?!\\p{L}).*");

    private final String file;
    private final Columns columns;
    private final Preamble preamble;

    private OtherTables(String file, Columns columns, Preamble preamble) {
        this.file = file;
        this.columns = columns;
        this.preamble = preamble;
    }

    /**
     * Refuses such a table by its name.
     *
     * @param sampled whether a sample interval is stated by the file or the user
     */
    static void refuse(String file, Columns columns, Preamble preamble, boolean sampled) throws InputException {
        if (columns.first(Column.Use.TIME).isEmpty()) {
            new OtherTables(file, columns, preamble).refuse(sampled);
        }
    }

    private void refuse(boolean sampled) throws InputException {
        refuseFrequency();
        refusePreamble();
        Column first = columns.all().get(0);
        if (columns.all().size() > 1 && !columns.looksLikeCurve() && !sampled) {
            refuseHistogram();
            Optional<Unit> unit = first.heading().unit().map(WrittenUnit::unit);
            boolean otherUnit =
                    unit.filter(u -> u != Unit.VOLT && u != Unit.AMPERE).isPresent();
            if (first.heading().role() == ColumnRole.OTHER || otherUnit) {
                throw refusal(
                        first, "this is a table over " + called(first) + ", neither a record over time nor a curve");
            }
        }
    }

    /** A frequency in front of all columns but an index, or anywhere where there is no curve. */
    private void refuseFrequency() throws InputException {
        List<Column> beside = columns.all().stream()
                .filter(c -> c.heading().role() != ColumnRole.INDEX)
                .toList();
        for (int i = 0; i < beside.size(); i++) {
            if (beside.get(i).isFrequency() && (i == 0 || !columns.looksLikeCurve())) {
                throw refusal(
                        beside.get(i),
                        "this is a table over frequency (" + called(beside.get(i)) + "), not a record over time");
            }
        }
    }

    private void refusePreamble() throws InputException {
        Optional<Statement> frequency = Units.overFrequency(preamble);
        boolean volts =
                columns.values().stream().anyMatch(c -> c.heading().unit().isPresent());
        Optional<Statement> decibels = volts ? Optional.empty() : Units.inDecibels(preamble);
        if (frequency.isPresent()) {
            throw new InputException(
                    ErrorCode.OTHER_TABLE,
                    Origin.of(file, frequency.get().line()),
                    "this is a table over frequency, not a record over time: '" + text(frequency.get()) + "'",
                    WAVE);
        }
        if (decibels.isPresent()) {
            throw new InputException(
                    ErrorCode.OTHER_TABLE,
                    Origin.of(file, decibels.get().line()),
                    "this is a table of levels, as a spectrum is, not of volts: '" + text(decibels.get()) + "'",
                    WAVE);
        }
    }

    private void refuseHistogram() throws InputException {
        boolean index = columns.all().stream().anyMatch(c -> c.heading().role() == ColumnRole.INDEX);
        for (Column column : columns.all().subList(1, columns.all().size())) {
            if (!index && COUNTS.matcher(column.heading().name()).matches()) {
                throw refusal(column, "this is a table of counts, as a histogram is, not a record over time");
            }
        }
    }

    private InputException refusal(Column column, String what) {
        return new InputException(ErrorCode.OTHER_TABLE, new Origin(file, 0, "column " + column.called()), what, WAVE);
    }

    private static String called(Column column) {
        String unit = column.heading().unit().map(u -> "in " + u.symbol()).orElse("");
        return (column.heading().name() + " " + unit).strip();
    }

    private static String text(Statement fact) {
        return fact.key() + ": " + String.join(", ", fact.values());
    }
}
