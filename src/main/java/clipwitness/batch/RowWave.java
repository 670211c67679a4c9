package clipwitness.batch;

import clipwitness.batch.choice.FileDoubts;
import clipwitness.capture.Channel;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.Waveform;
import clipwitness.job.Bench;
import clipwitness.job.CaptureRow;
import clipwitness.measure.VerticalAccuracy;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import java.util.Optional;
import java.util.stream.Stream;

/** Measures the chosen channels of a row as a wave, with the probes of the row and the vertical accuracy of its instrument. */
final class RowWave {
    private final CaptureRow row;
    private final Bench bench;

    RowWave(CaptureRow row, Bench bench) {
        this.row = row;
        this.bench = bench;
    }

    /**
     * The figures; refused where the doubts about a file forbid to measure it.
     *
     * @param record      with the output
     * @param output      channel of the output
     * @param input       channel of the input
     * @param inputRecord with the input, where that is another file
     */
    WaveformResult measured(
            TimeRecord record, Channel output, Optional<Channel> input, Optional<TimeRecord> inputRecord) {
        Optional<Reason> unfit = Stream.concat(Stream.of(record), inputRecord.stream())
                .map(FileDoubts::unfit)
                .flatMap(Optional::stream)
                .findFirst();
        return VerticalAccuracy.applied(measure(record, output, input, unfit), verticalAccuracy());
    }

    private double verticalAccuracy() {
        return bench.instruments().stream()
                .filter(i -> row.instrument().equals(Optional.of(i.name())))
                .flatMapToDouble(i -> i.verticalAccuracy().stream())
                .findFirst()
                .orElse(bench.verticalAccuracy());
    }

    private WaveformResult measure(TimeRecord record, Channel output, Optional<Channel> input, Optional<Reason> unfit) {
        Waveform out = wave(record, output, row.outputProbe());
        Optional<Waveform> in = input.map(c -> wave(record, c, row.inputProbe()));
        WaveformInput capture = new WaveformInput(
                out,
                in,
                row.condition().frequency(),
                output.vertical().map(s -> s.times(row.outputProbe())),
                input.flatMap(Channel::vertical).map(s -> s.times(row.inputProbe())),
                bench.mains());
        return unfit.map(reason -> WaveformMeasurement.refused(capture, reason))
                .orElseGet(() -> WaveformMeasurement.of(capture));
    }

    private static Waveform wave(TimeRecord record, Channel channel, double probe) {
        Samples samples = probe == 1 ? channel.samples() : channel.samples().map(v -> v * probe);
        return new Waveform(samples, record.sampleRate(), channel.unit().orElse(Unit.VOLT));
    }
}
