package clipwitness.batch.load;

import clipwitness.batch.choice.ChannelChoice;
import clipwitness.batch.choice.ChannelOrder;
import clipwitness.batch.choice.CurveChoice;
import clipwitness.batch.choice.FileDoubts;
import clipwitness.batch.choice.ListeningChoice;
import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.compare.judge.CaptureTemperature;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ExportFacts;
import clipwitness.fault.InputException;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.measure.response.ResponseResult;
import clipwitness.reading.Progress;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Makes the result of one row of the captures table: reads, chooses the channels, measures, collects facts and doubts. Without state, so rows can be loaded in parallel. */
public final class CaptureLoader {
    private final Job job;
    private final Progress progress;

    public CaptureLoader(Job job, Progress progress) {
        this.job = job;
        this.progress = progress;
    }

    /**
     * Reads and measures.
     *
     * @throws InputException where an export cannot be read or does not fit its row
     */
    public CaptureResult load(CaptureRow row) throws InputException {
        RowFiles files = new RowFiles(row, job.folder(), progress);
        Export export = files.export();
        return switch (row.kind()) {
            case JUNCTION -> curve(row, files, export);
            case LISTENING -> playing(row, files, export);
            default -> record(row, files, export);
        };
    }

    private CaptureResult playing(CaptureRow row, RowFiles files, Export export) throws InputException {
        TimeRecord record = files.overTime(export);
        List<Channel> channels = ListeningChoice.of(row, record);
        Optional<TimeRecord> input = files.input(record);
        ListeningResult listening = new RowWave(row, job.sheet().bench()).listening(record, channels);
        ExportFacts facts = facts(files, record, channels.get(listening.channel()), Optional.empty(), input);
        List<Doubt> doubts = doubts(row, record, Optional.empty(), listening.doubts());
        return CaptureResult.unmeasured(row, facts, FileDoubts.ofPlaying(doubts))
                .withListening(listening);
    }

    private CaptureResult curve(CaptureRow row, RowFiles files, Export export) throws InputException {
        CurveChoice choice = CurveChoice.of(row, export);
        JunctionResult junction = JunctionMeasurement.of(
                choice.curve(), CaptureTemperature.of(row, job.sheet().bench()));
        ExportFacts facts = facts(files, export, choice.current(), Optional.of(choice.voltage()), Optional.empty());
        List<Doubt> doubts = doubts(row, export, Optional.empty(), List.of());
        return CaptureResult.unmeasured(row, facts, doubts)
                .withJunction(junction)
                .withEvidence(choice.more());
    }

    private CaptureResult record(CaptureRow row, RowFiles files, Export export) throws InputException {
        TimeRecord record = files.overTime(export);
        ChannelChoice choice = ChannelChoice.of(row, record);
        Optional<TimeRecord> inputRecord = files.input(record);
        Optional<Channel> input = inputRecord.isPresent()
                ? Optional.of(ChannelChoice.ofInputFile(row, inputRecord.get()))
                : choice.input();
        RowWave wave = new RowWave(row, job.sheet().bench());
        ExportFacts facts = facts(files, record, choice.output(), input, inputRecord);
        Function<List<Doubt>, CaptureResult> doubted =
                found -> CaptureResult.unmeasured(row, facts, doubts(row, record, inputRecord, found));
        return switch (row.kind()) {
            case NOISE -> {
                NoiseResult noise = wave.noise(record, choice.output());
                yield doubted.apply(noise.doubts()).withNoise(noise);
            }
            case RESPONSE -> {
                ResponseResult response = wave.response(record, choice.output(), input, inputRecord);
                yield doubted.apply(response.doubts()).withResponse(response);
            }
            default -> {
                WaveformResult measured = wave.measured(record, choice.output(), input, inputRecord);
                yield doubted.apply(measured.doubts()).withWaveform(measured);
            }
        };
    }

    private static List<Doubt> doubts(
            CaptureRow row, Export export, Optional<TimeRecord> inputRecord, List<Doubt> ofMeasuring) {
        List<Doubt> doubts = new ArrayList<>(export.doubts());
        if (row.coupling().equals(Optional.of("ac"))
                && doubts.stream().noneMatch(d -> d.code() == DoubtCode.AC_COUPLED)) {
            doubts.add(Doubt.of(Severity.NOTE, DoubtReason.AC_COUPLED_TABLE));
        }
        if (export instanceof TimeRecord record) {
            ChannelOrder.doubt(row, record).ifPresent(doubts::add);
        }
        inputRecord.ifPresent(r -> doubts.addAll(r.doubts()));
        if (row.kind() != CaptureKind.WAVEFORM) {
            doubts.removeIf(FileDoubts::isOfShape);
        }
        doubts.addAll(FileDoubts.without(ofMeasuring, doubts));
        return doubts.stream().distinct().toList();
    }

    private static ExportFacts facts(
            RowFiles files, Export export, Channel output, Optional<Channel> input, Optional<TimeRecord> inputRecord) {
        List<String> channels = new ArrayList<>();
        export.channels().forEach(c -> channels.add(c.name()));
        inputRecord.ifPresent(r -> r.channels().forEach(c -> channels.add(c.name())));
        return new ExportFacts(
                files.sha256(),
                files.inputSha256(),
                output.name(),
                input.map(Channel::name),
                export.size(),
                export instanceof TimeRecord r ? OptionalDouble.of(r.sampleRate()) : OptionalDouble.empty(),
                channels,
                export.evidence());
    }
}
