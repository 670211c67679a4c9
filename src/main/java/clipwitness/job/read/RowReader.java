package clipwitness.job.read;

import clipwitness.capture.Condition;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.Nearest;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Instrument;
import clipwitness.quantity.ColumnUnits;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Turns a row of the captures table into a capture. */
final class RowReader {
    private static final List<String> KINDS =
            Stream.of(CaptureKind.values()).map(CaptureKind::code).toList();

    private static final List<String> COUPLINGS = List.of("dc", "ac");

    private static final AllowedRange GAIN =
            AllowedRange.from(0, Unit.PERCENT).to(100).orBare();
    private static final AllowedRange FREQUENCY = AllowedRange.FREQUENCY.orBare();
    private static final AllowedRange LEVEL = AllowedRange.LEVEL.orBare();
    private static final AllowedRange INTERVAL = AllowedRange.INTERVAL.orBare();
    private static final AllowedRange PROBE = AllowedRange.PROBE.orBare();

    private final SheetReader.Terms terms;
    private final JobFiles files;

    RowReader(SheetReader.Terms terms, JobFiles files) {
        this.terms = terms;
        this.files = files;
    }

    /** The capture, or nothing where file or kind are missing or wrong. */
    Optional<CaptureRow> read(TableRow row) {
        Optional<String> file = row.required(TableColumn.FILE, "Write the path of the export, from the job folder")
                .flatMap(files::file);
        Optional<CaptureKind> kind = row.required(TableColumn.KIND, "Write " + NameWords.either(KINDS))
                .flatMap(f -> f.choice(List.of(CaptureKind.values()), CaptureKind::code, "kind"));
        Optional<String> state = state(row);
        Optional<String> device = row.isJunction()
                ? row.required(TableColumn.DEVICE, "Write the name of the device, for example D1")
                        .map(Field::text)
                : row.text(TableColumn.DEVICE);
        CaptureRow capture = capture(row, file.orElse(""), state, kind.orElse(CaptureKind.WAVEFORM), device);
        return file.isPresent() && kind.isPresent() ? Optional.of(capture) : Optional.empty();
    }

    private CaptureRow capture(
            TableRow row, String file, Optional<String> state, CaptureKind kind, Optional<String> device) {
        RowChannels channels = RowChannels.of(row, files);
        Optional<ColumnUnits> unit = row.field(TableColumn.UNIT).flatMap(RowReader::unit);
        return new CaptureRow(
                row.line(),
                file,
                state,
                kind,
                condition(row, kind),
                row.field(TableColumn.RUN).map(f -> f.whole(1, 9999).orElse(1)).orElse(1),
                channels.input(),
                channels.output(),
                channels.inputFile(),
                number(row, TableColumn.INPUT_PROBE, PROBE).orElse(1),
                number(row, TableColumn.OUTPUT_PROBE, PROBE).orElse(1),
                number(row, TableColumn.INTERVAL, INTERVAL),
                unit,
                scale(row, unit),
                device,
                number(row, TableColumn.TEMPERATURE, BenchSection.TEMPERATURE.orBare()),
                row.field(TableColumn.DATE).flatMap(Field::date),
                row.field(TableColumn.INSTRUMENT).flatMap(this::instrument),
                row.field(TableColumn.COUPLING).flatMap(RowReader::coupling),
                row.field(TableColumn.ACQUISITION).flatMap(Acquisition::of),
                row.text(TableColumn.NOTE).orElse(""));
    }

    private Condition condition(TableRow row, CaptureKind kind) {
        OptionalDouble gain = number(row, TableColumn.GAIN, GAIN);
        OptionalDouble frequency = number(row, TableColumn.FREQUENCY, FREQUENCY);
        OptionalDouble level = row.field(TableColumn.LEVEL)
                .map(f -> PeakLevel.of(f, LEVEL, terms.stimulus().shape()))
                .orElse(OptionalDouble.empty());
        return new Condition(
                gain,
                frequency(kind, frequency),
                level(kind, frequency, level),
                row.field(TableColumn.SETTING)
                        .map(this::setting)
                        .orElse(terms.settings().stream().findFirst()));
    }

    /** A wave has the job's frequency unless the row states another; a response without a frequency is a sweep or noise. */
    private OptionalDouble frequency(CaptureKind kind, OptionalDouble stated) {
        return switch (kind) {
            case WAVEFORM -> or(stated, terms.stimulus().frequency());
            case RESPONSE -> stated;
            default -> OptionalDouble.empty();
        };
    }

    /** Waves and steady sines have the job's level unless the row states another. */
    private OptionalDouble level(CaptureKind kind, OptionalDouble frequency, OptionalDouble stated) {
        return switch (kind) {
            case WAVEFORM -> or(stated, terms.stimulus().level());
            case RESPONSE -> frequency.isPresent() ? or(stated, terms.stimulus().level()) : stated;
            default -> OptionalDouble.empty();
        };
    }

    private Optional<String> state(TableRow row) {
        Optional<Field> field = row.isJunction()
                ? row.field(TableColumn.STATE)
                : row.required(
                        TableColumn.STATE,
                        terms.states().isEmpty()
                                ? "Write the name that the job sheet gives the state under states"
                                : "Write " + NameWords.either(terms.states()));
        return field.flatMap(
                f -> terms.states().contains(f.text()) || !terms.open().asks(f)
                        ? f.oneOf(terms.states(), "state")
                        : Optional.empty());
    }

    private Optional<String> setting(Field field) {
        if (terms.settings().isEmpty()) {
            field.fault(
                    ErrorCode.UNKNOWN_NAME,
                    "the job sheet has no settings",
                    "Leave the cell empty, or describe the setting on the sheet");
            return Optional.empty();
        }
        return field.oneOf(terms.settings(), "setting");
    }

    /** A name that no instrument of the sheet has is refused only where it looks like a slip: the sheet need not list all. */
    private Optional<String> instrument(Field field) {
        List<String> names = terms.instruments().stream().map(Instrument::name).toList();
        return Nearest.slipOf(field.text(), names).isPresent()
                ? field.oneOf(names, "instrument")
                : Optional.of(field.text());
    }

    private static Optional<String> coupling(Field field) {
        return field.choice(COUPLINGS, c -> c, "coupling");
    }

    private static Optional<ColumnUnits> unit(Field field) {
        Optional<ColumnUnits> units = ColumnUnits.parse(field.text());
        if (units.isEmpty()) {
            field.fault(
                    field.quoted() + " is not the unit of an export",
                    "Write V or A, with a prefix where there is one, or a unit for each column: mV mA");
        }
        return units;
    }

    private static OptionalDouble scale(TableRow row, Optional<ColumnUnits> unit) {
        boolean meant = unit.map(ColumnUnits::takesScale).orElse(true);
        if (!meant) {
            row.field(TableColumn.SCALE)
                    .ifPresent(f -> f.fault(
                            "a scale goes with one unit without a prefix",
                            "Write V or A in the column unit, and the volts or amperes of a count here"));
            return OptionalDouble.empty();
        }
        Unit one = unit.map(u -> u.first().unit()).orElse(Unit.VOLT);
        return number(row, TableColumn.SCALE, AllowedRange.scale(one).orBare());
    }

    private static OptionalDouble number(TableRow row, TableColumn column, AllowedRange range) {
        return row.field(column).map(f -> f.number(range)).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble or(OptionalDouble first, OptionalDouble second) {
        return first.isPresent() ? first : second;
    }
}
