package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.CurveTable;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.Notes;
import clipwitness.reading.file.SourceFile;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.rows.DataPass;
import clipwitness.reading.rows.RowPlan;
import clipwitness.reading.rows.Work;
import clipwitness.reading.time.ClockStamps;
import clipwitness.reading.time.Envelope;
import clipwitness.reading.time.Sampling;
import clipwitness.reading.time.Stamps;
import clipwitness.reading.time.TimeAxis;
import clipwitness.reading.time.TimeAxisFinder;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts a record over time or a curve together once the layout is known. */
final class ExportBuilder {
    private static final int LEAST_ROWS = 2;
    private static final int LEAST_ROWS_OF_STRETCH = 10;
    private static final int INDEX_DIGITS = 15;

    private final SourceFile file;
    private final ReadingOptions options;
    private final Preamble preamble;
    private final Optional<Sampling> sampling;
    private final Notes notes;

    ExportBuilder(
            SourceFile file, ReadingOptions options, Preamble preamble, Optional<Sampling> sampling, Notes notes) {
        this.file = file;
        this.options = options;
        this.preamble = preamble;
        this.sampling = sampling;
        this.notes = notes;
    }

    /** Reads all rows and builds the export. */
    Export build(Head head, DataBlock block, Columns columns, Work work) throws InputException {
        boolean curve = isCurve(columns);
        List<Column> kept = curve ? columns.keptOfCurve() : columns.kept();
        if (kept.stream().noneMatch(c -> c.use() == Column.Use.VALUE)) {
            throw new InputException(
                    ErrorCode.COLUMNS_UNKNOWN,
                    Origin.of(file.name()),
                    "no column holds volts or amperes",
                    "Export the channels beside the time");
        }
        boolean timed =
                columns.first(Column.Use.TIME).isPresent() || options.interval().isPresent();
        if (!curve && !timed && sampling.isEmpty()) {
            WithoutTime.refuse(file.name(), block, columns);
        }
        DataPass pass = DataPass.of(file, head, block, RowPlan.of(block, kept, curve), work, notes);
        if (pass.table().rows() < LEAST_ROWS) {
            throw new InputException(
                    ErrorCode.NOT_AN_EXPORT,
                    Origin.of(file.name()),
                    "it holds only one row of numbers",
                    "Export the whole record, not a single sample");
        }
        return curve ? curve(kept, pass) : record(kept, pass);
    }

    private boolean isCurve(Columns columns) {
        boolean axis = sampling.isPresent()
                && (columns.first(Column.Use.INDEX).isPresent()
                        || (sampling.get().clear() && !columns.namesCurve()));
        boolean curve = columns.looksLikeCurve() && !axis && options.interval().isEmpty();
        if (curve) {
            notes.evidence(LayoutRemark.CURVE_BY_NAMES);
        }
        return curve;
    }

    private Export curve(List<Column> kept, DataPass pass) throws InputException {
        CurvesBeside.refuse(file.name(), kept);
        StatedSamples.compare(preamble, (long) pass.table().rows() + pass.skipped(), notes);
        List<Channel> channels = channels(kept, pass, false, true);
        Sweeps.check(file.name(), channels, notes);
        return new CurveTable(file.name(), channels, notes.doubts(), notes.evidence());
    }

    private Export record(List<Column> kept, DataPass pass) throws InputException {
        TimeAxisFinder finder = new TimeAxisFinder(file.name(), preamble, sampling, options.interval(), notes);
        TimeAxis axis = axis(finder, kept, pass);
        StatedSamples.compare(preamble, held(axis, pass), notes);
        EnvelopeColumns.note(
                kept.stream().filter(c -> c.use() == Column.Use.VALUE).toList(), notes);
        List<Channel> channels = channels(kept, pass, axis.envelope(), false);
        HighAndLow.note(channels, notes);
        return new TimeRecord(file.name(), axis.start(), axis.interval(), channels, notes.doubts(), notes.evidence());
    }

    /** Samples that the rows stand for, as many between two rows as the stated interval says. */
    private long held(TimeAxis axis, DataPass pass) {
        long rows = (long) pass.table().rows() + pass.skipped();
        double step = sampling.map(s -> axis.interval() / s.interval()).orElse(1.0);
        return step > 1 ? Math.round(rows * step) : rows;
    }

    private TimeAxis axis(TimeAxisFinder finder, List<Column> kept, DataPass pass) throws InputException {
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).use() == Column.Use.TIME) {
                double[] times = pass.table().take(i);
                return finder.fromStamps(kept.get(i), times, joined(kept, pass, times));
            }
            if (kept.get(i).use() == Column.Use.INDEX) {
                double[] numbers = pass.table().take(i);
                requireAll(kept.get(i), numbers);
                return after(pass.skipped(), finder.fromIndex(Stamps.of(numbers, INDEX_DIGITS)));
            }
        }
        noteStretches(pass);
        return after(pass.skipped(), finder.fromPreamble(1));
    }

    private void requireAll(Column column, double[] numbers) throws InputException {
        if (Arrays.stream(numbers).anyMatch(Double::isNaN)) {
            throw new InputException(
                    ErrorCode.BAD_NUMBER,
                    new Origin(file.name(), 0, "column " + column.called()),
                    "a row has no number there",
                    "Is the row damaged? Export the capture again; no row is ever skipped");
        }
    }

    /** Adds fractions of a second that stand in a column of their own; most digits of a stamp. */
    private int joined(List<Column> kept, DataPass pass, double[] times) throws InputException {
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).use() == Column.Use.FRACTION) {
                double[] parts = pass.table().take(i);
                return ClockStamps.join(file.name(), times, pass.timeDigits(), kept.get(i), parts);
            }
        }
        return pass.timeDigits();
    }

    /** An axis whose first samples were left out. */
    private static TimeAxis after(int skipped, TimeAxis axis) {
        return new TimeAxis(axis.start() + skipped * axis.interval(), axis.interval(), axis.envelope());
    }

    /** Stretches of samples with neither time nor index beside them may be segments, each with a trigger of its own. */
    private void noteStretches(DataPass pass) {
        if (pass.stretches() > 1 && pass.table().rows() / pass.stretches() >= LEAST_ROWS_OF_STRETCH) {
            notes.doubt(Severity.REFUSAL, DoubtReason.UNEVEN_TIME_STRETCHES, Argument.count(pass.stretches()));
        }
    }

    private List<Channel> channels(List<Column> kept, DataPass pass, boolean envelope, boolean curve)
            throws InputException {
        List<Column> columns = new ArrayList<>();
        List<double[]> written = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).use() == Column.Use.VALUE) {
                columns.add(kept.get(i));
                double[] values = pass.table().take(i);
                written.add(envelope ? Envelope.middles(values) : values);
            }
        }
        return new Channels(file.name(), preamble, options, notes).of(columns, written, curve);
    }
}
