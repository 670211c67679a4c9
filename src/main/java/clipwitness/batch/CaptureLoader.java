package clipwitness.batch;

import clipwitness.batch.choice.ChannelChoice;
import clipwitness.batch.choice.CurveChoice;
import clipwitness.batch.choice.FileDoubts;
import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.Waveform;
import clipwitness.compare.judge.CaptureTemperature;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ExportFacts;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Bench;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.measure.VerticalAccuracy;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.quantity.Unit;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Reads and measures one row of the captures table. Holds nothing, so rows can be loaded side by side. */
final class CaptureLoader {
    /** Two records are of one interval where it agrees to this ratio: files round it differently. */
    private static final double SAME_INTERVAL = 1e-6;

    private final Job job;
    private final Progress progress;

    CaptureLoader(Job job, Progress progress) {
        this.job = job;
        this.progress = progress;
    }

    /**
     * Reads and measures.
     *
     * @throws InputException where an export cannot be read or does not fit its row
     * @throws IOException    where a file cannot be read at all
     */
    CaptureResult load(CaptureRow row) throws InputException, IOException {
        Export export = read(row, row.file());
        if (row.kind() == CaptureKind.JUNCTION) {
            CurveChoice choice = CurveChoice.of(row, export);
            JunctionResult junction = JunctionMeasurement.of(
                    choice.curve(), CaptureTemperature.of(row, job.sheet().bench()));
            return facts(
                            row,
                            export,
                            choice.current(),
                            Optional.of(choice.voltage()),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(junction))
                    .withEvidence(choice.more());
        }
        TimeRecord record = overTime(row, export);
        ChannelChoice choice = ChannelChoice.of(row, record);
        Optional<Channel> input = choice.input();
        Optional<TimeRecord> inputRecord = Optional.empty();
        if (row.inputFile().isPresent()) {
            TimeRecord other = overTime(row, read(row, row.inputFile().get()));
            requireSameRecord(row, record, other);
            input = Optional.of(ChannelChoice.ofInputFile(row, other));
            inputRecord = Optional.of(other);
        }
        Optional<Reason> unfit = Stream.concat(Stream.of(record), inputRecord.stream())
                .map(FileDoubts::unfit)
                .flatMap(Optional::stream)
                .findFirst();
        Optional<WaveformResult> waveform = row.kind() == CaptureKind.WAVEFORM
                ? Optional.of(VerticalAccuracy.applied(
                        measure(row, record, choice.output(), input, unfit), verticalAccuracy(row)))
                : Optional.empty();
        return facts(row, record, choice.output(), input, inputRecord, waveform, Optional.empty());
    }

    private Export read(CaptureRow row, String file) throws InputException {
        ReadingOptions options = new ReadingOptions(row.interval(), row.unit(), row.scale());
        return ExportReader.read(path(file), file, options, progress);
    }

    private Path path(String file) {
        return job.folder().resolve(file);
    }

    private static TimeRecord overTime(CaptureRow row, Export export) throws InputException {
        if (export instanceof TimeRecord record) {
            return record;
        }
        throw new InputException(
                new Origin(Job.TABLE_FILE, row.row(), "kind"),
                export.file() + " holds a curve of current against voltage, not a record over time, but kind is "
                        + row.kind().code(),
                "Write junction if it is a traced device; export the record with its time column or give its interval in"
                        + " column interval if it is a wave");
    }

    private static void requireSameRecord(CaptureRow row, TimeRecord output, TimeRecord input) throws InputException {
        boolean sameLength = output.size() == input.size();
        double ratio = output.sampleInterval() / input.sampleInterval();
        if (!sameLength || Math.abs(ratio - 1) > SAME_INTERVAL) {
            throw new InputException(
                    new Origin(Job.TABLE_FILE, row.row(), "input-file"),
                    input.file() + " (" + input.size() + " samples every " + input.sampleInterval() + " s) and "
                            + output.file() + " (" + output.size() + " samples every " + output.sampleInterval()
                            + " s) are not one record",
                    "Export both channels from the same acquisition");
        }
    }

    private double verticalAccuracy(CaptureRow row) {
        Bench bench = job.sheet().bench();
        return bench.instruments().stream()
                .filter(i -> row.instrument().equals(Optional.of(i.name())))
                .flatMapToDouble(i -> i.verticalAccuracy().stream())
                .findFirst()
                .orElse(bench.verticalAccuracy());
    }

    private static WaveformResult measure(
            CaptureRow row, TimeRecord record, Channel output, Optional<Channel> input, Optional<Reason> unfit) {
        Waveform out = wave(record, output, row.outputProbe());
        Optional<Waveform> in = input.map(c -> wave(record, c, row.inputProbe()));
        WaveformInput capture = new WaveformInput(
                out,
                in,
                row.condition().frequency(),
                output.vertical().map(s -> s.times(row.outputProbe())),
                input.flatMap(Channel::vertical).map(s -> s.times(row.inputProbe())));
        return unfit.map(reason -> WaveformMeasurement.refused(capture, reason))
                .orElseGet(() -> WaveformMeasurement.of(capture));
    }

    private static Waveform wave(TimeRecord record, Channel channel, double probe) {
        Samples samples = probe == 1 ? channel.samples() : channel.samples().map(v -> v * probe);
        return new Waveform(samples, record.sampleRate(), channel.unit().orElse(Unit.VOLT));
    }

    private CaptureResult facts(
            CaptureRow row,
            Export export,
            Channel output,
            Optional<Channel> input,
            Optional<TimeRecord> inputRecord,
            Optional<WaveformResult> waveform,
            Optional<JunctionResult> junction)
            throws IOException {
        List<Doubt> doubts = new ArrayList<>(export.doubts());
        if (row.coupling().equals(Optional.of("ac"))
                && doubts.stream().noneMatch(d -> d.code() == DoubtCode.AC_COUPLED)) {
            doubts.add(Doubt.of(Severity.NOTE, DoubtReason.AC_COUPLED_TABLE));
        }
        inputRecord.ifPresent(r -> doubts.addAll(r.doubts()));
        waveform.ifPresent(w -> doubts.addAll(FileDoubts.without(w.doubts(), doubts)));
        List<String> channels = new ArrayList<>();
        export.channels().forEach(c -> channels.add(c.name()));
        inputRecord.ifPresent(r -> r.channels().forEach(c -> channels.add(c.name())));
        Optional<String> inputSha = row.inputFile().isPresent()
                ? Optional.of(Sha256.of(path(row.inputFile().get())))
                : Optional.empty();
        ExportFacts facts = new ExportFacts(
                Sha256.of(path(row.file())),
                inputSha,
                output.name(),
                input.map(Channel::name),
                export.size(),
                export instanceof TimeRecord r ? OptionalDouble.of(r.sampleRate()) : OptionalDouble.empty(),
                channels,
                export.evidence());
        return new CaptureResult(row, facts, doubts.stream().distinct().toList(), waveform, junction);
    }
}
